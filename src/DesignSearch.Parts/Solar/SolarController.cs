using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;

namespace DesignSearch.Parts.Solar;

/// <summary>Runs a collector's pump by the difference of collector and tank.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record SolarController(PartInfo Info) : Part(Info), IControlPart
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("solar-controller", "solar-controllers.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new(LockOutFromC <= LockOutToC, "lock_out_from_c", "at most lock_out_to_c"),
    ];

    /// <summary>Supply and switched voltage [V], from 5 to 400.</summary>
    public required double Volts { get; init; }

    /// <summary>Current that its contact carries and switches [A], from 0.1 to 50.</summary>
    public required double RatedA { get; init; }

    /// <summary>What it draws itself [W], from 0 to 50.</summary>
    public required double Watts { get; init; }

    /// <summary>Sensors that it reads, from 2 to 12: collector and tank's bottom, and the tank's top where it keeps a ceiling.</summary>
    public required int Sensors { get; init; }

    /// <summary>Lowest collector temperature above which it can be told not to start the pump [°C], from 0 to 200.</summary>
    public required double LockOutFromC { get; init; }

    /// <summary>Highest such temperature [°C], 0 where it cannot be told so, from 0 to 300.</summary>
    public required double LockOutToC { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.CurrentA ? RatedA : base.Bears(rating);

    /// <inheritdoc/>
    public override bool RunsOnMains => !ExtraLowVoltage.Includes(Volts, false);

    internal static SolarController Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        Volts = cells.Number("volts", 5, 400, "Supply and switched voltage [V]"),
        RatedA = cells.Number("rated_a", 0.1, 50, "Current that its contact carries and switches [A]"),
        Watts = cells.Number("watts", 0, 50, "What it draws itself [W]"),
        Sensors = cells.Whole(
            "sensors", 2, 12, "Sensors that it reads: collector and tank's bottom, and the tank's top where it keeps a ceiling"),
        LockOutFromC = cells.Number(
            "lock_out_from_c", 0, 200, "Lowest collector temperature above which it can be told not to start the pump [°C]"),
        LockOutToC = cells.Number("lock_out_to_c", 0, 300, "Highest such temperature [°C], 0 where it cannot be told so"),
    };
}
