using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.OffGrid;

/// <summary>A battery that a panel charges.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Battery(PartInfo Info) : Part(Info)
{
    // A bank of 24 V is made of these in series.
    private const double BankV = 24;

    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("battery", "batteries.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new(Volts > 0 && BankV % Volts == 0, "volts", "a voltage of which one, two or more in series make 24 V"),
        new(LeastC <= LeastChargeC, "least_c", "no warmer than least_charge_c"),
    ];

    /// <summary>What it is made of.</summary>
    public required BatteryChemistry Chemistry { get; init; }

    /// <summary>Voltage of one [V], from 2 to 24.</summary>
    public required double Volts { get; init; }

    /// <summary>Charge of a new one when it is warm, over 20 hours or as the maker states it [A·h], from 1 to 1000.</summary>
    public required double AmpHours { get; init; }

    /// <summary>Share of it that may be taken out again and again [0…1], from 0.2 to 0.95.</summary>
    public required double UsableDepth { get; init; }

    /// <summary>Share of what is put in that comes out [0…1], from 0.6 to 0.99.</summary>
    public required double ChargeEfficiency { get; init; }

    /// <summary>Share of its charge that is left at the end of its life [0…1], from 0.5 to 1.</summary>
    public required double AgedShare { get; init; }

    /// <summary>Coldest at which it may be charged [°C], from -40 to 10.</summary>
    public required double LeastChargeC { get; init; }

    /// <summary>Coldest at which it may be used or kept charged [°C], from -50 to 10.</summary>
    public required double LeastC { get; init; }

    /// <summary>Largest charging current [A], from 1 to 500.</summary>
    public required double MostChargeA { get; init; }

    /// <summary>Largest current that it gives, a start included [A], from 1 to 2000.</summary>
    public required double MostA { get; init; }

    /// <summary>Current of a dead short across it [A], from 10 to 20000.</summary>
    public required double ShortA { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.CurrentA ? MostA : base.Bears(rating);

    internal static Battery Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        Chemistry = cells.Word("chemistry", Words.Of<BatteryChemistry>(), "What it is made of"),
        Volts = cells.Number("volts", 2, BankV, "Voltage of one [V]"),
        AmpHours = cells.Number("amp_hours", 1, 1000, "Charge of a new one when it is warm, as the maker states it [A·h]"),
        UsableDepth = cells.Number("usable_depth", 0.2, 0.95, "Share of it that may be taken out again and again [0…1]"),
        ChargeEfficiency = cells.Number("charge_efficiency", 0.6, 0.99, "Share of what is put in that comes out [0…1]"),
        AgedShare = cells.Number("aged_share", 0.5, 1, "Share of its charge that is left at the end of its life [0…1]"),
        LeastChargeC = cells.Number("least_charge_c", -40, 10, "Coldest at which it may be charged [°C]"),
        LeastC = cells.Number("least_c", -50, 10, "Coldest at which it may be used or kept charged [°C]"),
        MostChargeA = cells.Number("most_charge_a", 1, 500, "Largest charging current [A]"),
        MostA = cells.Number("most_a", 1, 2000, "Largest current that it gives, a start included [A]"),
        ShortA = cells.Number("short_a", 10, 20000, "Current of a dead short across it [A]"),
    };
}
