using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Small;

/// <summary>A small thing that a layout needs for one of its tasks.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record SmallPart(PartInfo Info) : Part(Info)
{
    private static readonly PartUnit[] Units =
        [
            PartUnit.Piece, PartUnit.Metre, PartUnit.Litre, PartUnit.Set, PartUnit.SquareMetre, PartUnit.CubicMetre,
            PartUnit.Kilogram, PartUnit.Hour,
        ];

    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("small-part", "small-parts.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new(Role != SmallPartRole.Cement || Unit == PartUnit.CubicMetre, "unit", "m3 for cement: what makes a cubic metre of footing"),
        new(Role != SmallPartRole.Ballast || Unit == PartUnit.Kilogram, "unit", "kg for ballast"),
    ];

    /// <summary>The task that it serves.</summary>
    public required SmallPartRole Role { get; init; }

    /// <summary>Supply or switched voltage [V], 0 where there is none, from 0 to 400.</summary>
    public required double Volts { get; init; }

    /// <summary>Current that it carries or switches [A], 0 where it does not matter, from 0 to 200.</summary>
    public required double RatedA { get; init; }

    /// <summary>Power that it draws while it works [W], 0 where there is none, from 0 to 500.</summary>
    public required double Watts { get; init; }

    /// <summary>Hottest place or water that it stands [°C], 0 where it does not matter, from 0 to 300.</summary>
    public required double MaxTemperatureC { get; init; }

    /// <summary>A cover motor: area of screen that it draws [m²], from 1 to 500; null for other parts.</summary>
    public double? DrawsM2 { get; init; }

    /// <summary>An enclosure: its two digits after IEC 60529, from 0 to 69; null where none is stated.</summary>
    public double? Ip { get; init; }

    /// <summary>
    /// A circuit breaker: times its current at which it is sure to trip at once, 5 for curve B, 10 for C, 20 for D; null for other parts.
    /// </summary>
    public double? TripsAt { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating switch
    {
        Rating.TemperatureC when MaxTemperatureC > 0 => MaxTemperatureC,
        Rating.CurrentA when RatedA > 0 => RatedA,
        Rating.VoltageV when Volts > 0 => Volts,
        Rating.IpCode => Ip,
        _ => null,
    };

    internal static SmallPart Read(ICsvCells cells) => new(PartInfo.Read(cells, Units))
    {
        Role = cells.Word("role", Words.Of<SmallPartRole>(), "The task that it serves"),
        Volts = cells.Number("volts", 0, 400, "Supply or switched voltage [V], 0 where there is none"),
        RatedA = cells.Number("rated_a", 0, 200, "Current that it carries or switches [A], 0 where it does not matter"),
        Watts = cells.Number("watts", 0, 500, "Power that it draws while it works [W], 0 where there is none"),
        MaxTemperatureC = cells.Number("max_temperature_c", 0, 300, "Hottest place or water that it stands [°C], 0 where it does not matter"),
        DrawsM2 = cells.NumberIfAny("draws_m2", 1, 500, "A cover motor: area of screen that it draws [m²]"),
        Ip = cells.NumberIfAny("ip", 0, 69, "An enclosure: its two digits after IEC 60529"),
        TripsAt = cells.NumberIfAny(
            "trips_at",
            3,
            20,
            "A circuit breaker: times its current at which it is sure to trip at once, 5 for curve B, 10 for C, 20 for D"),
    };
}
