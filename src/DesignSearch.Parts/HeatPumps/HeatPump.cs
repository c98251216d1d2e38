using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;

namespace DesignSearch.Parts.HeatPumps;

/// <summary>A small air-source heat pump with one indoor unit that blows warm air.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
/// <remarks>Rated points are those of EN 14511, indoor air 20 °C; the +2 °C point holds its share of defrosting.</remarks>
public sealed record HeatPump(PartInfo Info) : Part(Info)
{
    private const double SameWithin = 1e-9;

    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("heat-pump", "heat-pumps.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Heat at full output, +12 °C outdoors [W], from 300 to 20000; null where the sheet has no such point.</summary>
    public double? HeatAt12W { get; init; }

    /// <summary>Heat over electricity at that point, from 1 to 9.</summary>
    public double? CopAt12 { get; init; }

    /// <summary>Heat at full output, +7 °C outdoors [W], from 300 to 20000: the usual rating.</summary>
    public required double HeatAt7W { get; init; }

    /// <summary>Heat over electricity at that point, from 1 to 9.</summary>
    public required double CopAt7 { get; init; }

    /// <summary>
    /// Heat at full output, +2 °C outdoors, defrosting included [W], from 300 to 20000; null where the sheet has no such point.
    /// </summary>
    public double? HeatAt2W { get; init; }

    /// <summary>Heat over electricity at that point, defrosting included, from 1 to 9.</summary>
    public double? CopAt2 { get; init; }

    /// <summary>Heat at full output, −7 °C outdoors [W], from 300 to 20000; null where the sheet has no such point.</summary>
    public double? HeatAtMinus7W { get; init; }

    /// <summary>Heat over electricity at that point, from 1 to 9.</summary>
    public double? CopAtMinus7 { get; init; }

    /// <summary>Heat at full output, −15 °C outdoors [W], from 300 to 20000; null where the sheet has no such point.</summary>
    public double? HeatAtMinus15W { get; init; }

    /// <summary>Heat over electricity at that point, from 1 to 9.</summary>
    public double? CopAtMinus15 { get; init; }

    /// <summary>Least heat while it runs, +7 °C outdoors [W], from 100 to 20000; the full output for one speed.</summary>
    public required double LeastW { get; init; }

    /// <summary>Heat over electricity at least output as a factor on that at full output, from 1 to 1.8; 1 for one speed.</summary>
    public required double CopGainAtLeast { get; init; }

    /// <summary>Share of efficiency lost when it runs hardly any of the time (Cd of EN 14825), from 0 to 0.5; 0.25 unless tested.</summary>
    public required double CyclingLoss { get; init; }

    /// <summary>Outdoor air below which it stops [°C], from −35 to 5.</summary>
    public required double LeastOutdoorC { get; init; }

    /// <summary>Taken while the compressor rests, stand-by and crankcase heating together [W], from 0 to 100.</summary>
    public required double IdleW { get; init; }

    /// <summary>Lowest indoor temperature that can be set for heating [°C], from 0 to 20.</summary>
    public required double LowestSetPointC { get; init; }

    /// <summary>Supply [V], from 100 to 400.</summary>
    public required double Volts { get; init; }

    /// <summary>Largest running current [A], from 0.5 to 40: what cable and breaker must bear.</summary>
    public required double MostA { get; init; }

    /// <summary>What its refrigerant can do to people.</summary>
    public required RefrigerantClass Refrigerant { get; init; }

    /// <summary>The points of the sheet from the coldest to the warmest: outdoor air [°C], heat [W], heat over electricity.</summary>
    public IReadOnlyList<(double OutdoorC, double HeatW, double Cop)> Points =>
    [
        .. new (double OutdoorC, double? HeatW, double? Cop)[]
        {
            (-15, HeatAtMinus15W, CopAtMinus15), (-7, HeatAtMinus7W, CopAtMinus7), (2, HeatAt2W, CopAt2), (7, HeatAt7W, CopAt7),
                (12, HeatAt12W, CopAt12),
        }.Where(p => p.HeatW is not null && p.Cop is not null).Select(p => (p.OutdoorC, p.HeatW!.Value, p.Cop!.Value)),
    ];

    /// <summary>Whether the points hold the defrosting, so that none is to be taken off.</summary>
    public bool IsFrostRated => HeatAt2W is not null;

    /// <inheritdoc/>
    public override bool RunsOnMains => !ExtraLowVoltage.Includes(Volts, false);

    internal static HeatPump Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        HeatAt12W = HeatIfAny(cells, "heat_at_12_w", "Heat at full output, +12 °C outdoors [W]; empty where the sheet has no such point"),
        CopAt12 = CopIfAny(cells, "cop_at_12"),
        HeatAt7W = cells.Number("heat_at_7_w", 300, 20000, "Heat at full output, +7 °C outdoors and 20 °C indoors (EN 14511) [W]"),
        CopAt7 = cells.Number("cop_at_7", 1, 9, "Heat over electricity at that point"),
        HeatAt2W = HeatIfAny(cells, "heat_at_2_w", "Heat at full output, +2 °C outdoors, defrosting included [W]; empty where the sheet "
            + "has no such point"),
        CopAt2 = CopIfAny(cells, "cop_at_2"),
        HeatAtMinus7W = HeatIfAny(cells, "heat_at_minus7_w", "Heat at full output, −7 °C outdoors [W]; empty where the sheet has no such "
            + "point"),
        CopAtMinus7 = CopIfAny(cells, "cop_at_minus7"),
        HeatAtMinus15W = HeatIfAny(cells, "heat_at_minus15_w", "Heat at full output, −15 °C outdoors [W]; empty where the sheet has no "
            + "such point"),
        CopAtMinus15 = CopIfAny(cells, "cop_at_minus15"),
        LeastW = cells.Number("least_w", 100, 20000, "Least heat while it runs, +7 °C outdoors [W]; the full output for one speed"),
        CopGainAtLeast = cells.Number("cop_gain_at_least", 1, 1.8, "Heat over electricity at least output as a factor on that at full "
            + "output; 1 for one speed"),
        CyclingLoss = cells.Number("cycling_loss", 0, 0.5, "Share of efficiency lost when it runs hardly any of the time (Cd of EN "
            + "14825); 0.25 unless tested"),
        LeastOutdoorC = cells.Number("least_outdoor_c", -35, 5, "Outdoor air below which it stops [°C]"),
        IdleW = cells.Number("idle_w", 0, 100, "Taken while the compressor rests, stand-by and crankcase heating together [W]"),
        LowestSetPointC = cells.Number("lowest_set_c", 0, 20, "Lowest indoor temperature that can be set for heating [°C]; most hold "
            + "none below 16"),
        Volts = cells.Number("volts", 100, 400, "Supply [V]"),
        MostA = cells.Number("most_a", 0.5, 40, "Largest running current [A]: what cable and breaker must bear"),
        Refrigerant = cells.Word("refrigerant", Words.Of<RefrigerantClass>(), "What its refrigerant can do to people, after ISO 817"),
    };

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules
    {
        get
        {
            yield return Pair(HeatAt12W, CopAt12, "cop_at_12");
            yield return Pair(HeatAt2W, CopAt2, "cop_at_2");
            yield return Pair(HeatAtMinus7W, CopAtMinus7, "cop_at_minus7");
            yield return Pair(HeatAtMinus15W, CopAtMinus15, "cop_at_minus15");
            var points = Points;
            yield return new(points.Count >= 3, "heat_at_7_w", "one of at least three points with heat and efficiency");
            for (var i = 1; i < points.Count; i++)
            {
                var (cold, warm) = (points[i - 1], points[i]);
                yield return new(
                    cold.HeatW <= warm.HeatW,
                    Column("heat", cold.OutdoorC) + "_w",
                    "at most the heat at the next warmer point; the sheet's figures at full output, not at part load");
                yield return new(cold.Cop <= warm.Cop, Column("cop", cold.OutdoorC), "at most the efficiency at the next warmer point");
            }

            foreach (var p in points)
            {
                yield return new(p.Cop > 1, Column("cop", p.OutdoorC), "more than 1, which any electric heater has");
                yield return new(
                    p.HeatW / p.Cop <= Volts * MostA,
                    "most_a",
                    "a current that bears the electricity of every point, heat over efficiency over volts");
            }

            yield return new(
                points.Count == 0 || LeastOutdoorC <= points[0].OutdoorC,
                "least_outdoor_c",
                "at most the outdoor air of the coldest point");
            yield return new(LeastW <= HeatAt7W, "least_w", "at most heat_at_7_w");
            yield return new(
                LeastW < HeatAt7W - SameWithin || CopGainAtLeast == 1,
                "cop_gain_at_least",
                "1 where the least output is the full one");

            static RowRule Pair(double? heat, double? cop, string column) =>
                new(heat is null == cop is null, column, "filled where the heat of the same point is, else empty");
        }
    }

    private static string Column(string what, double outdoorC) =>
        FormattableString.Invariant($"{what}_at_{(outdoorC < 0 ? "minus" : "")}{Math.Abs(outdoorC)}");

    private static double? HeatIfAny(ICsvCells cells, string column, string what) => cells.NumberIfAny(column, 300, 20000, what);

    private static double? CopIfAny(ICsvCells cells, string column) =>
        cells.NumberIfAny(column, 1, 9, "Heat over electricity at that point; empty where the sheet has no such point");
}
