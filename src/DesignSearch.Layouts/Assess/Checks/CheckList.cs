using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Sizing;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Barrels;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Compost;
using DesignSearch.Parts.Piping;
using DesignSearch.Season;
using DesignSearch.Season.Heaters;

namespace DesignSearch.Layouts.Assess.Checks;

/// <summary>The rules a layout must meet. Those that need no season are refused before any simulation.</summary>
public static class CheckList
{
    /// <summary>Name of the check that nothing is lacking, and by how much a layout misses it that lacks something.</summary>
    internal const string Parts = "parts";

    internal const double PartsMissed = 1;

    /// <summary>Names of all checks, in the order in which the search counts violations.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        "budget", "build-hours", "parts", "collector-space", "store-floor", "mount-area", "mount-wind", "turn-limit", "drive-torque", "drive-holding",
        "collector-freezing", "first-metres", "pipe-rating", "insulation-fit", "pump-lift", "pump-flow", "drain-fall", "tank-heat", "cable-drop", "cable-fuse", "supply-power", "start-current", "start-drop", "mains-current", "voltages-apart",
        "floor-load", "anchorage", "drive-locking", "turning-time", "insulation-heat", "pressure-safety", "compost-heat", "bench-enough", "faces-sun", "heater-band",
    ];

    /// <summary>Every check of a layout.</summary>
    /// <param name="scenario">Limits of site and money.</param>
    /// <param name="built">The layout worked out.</param>
    /// <param name="buildPrice">Its build price.</param>
    /// <param name="labourHours">Its hours of own work.</param>
    /// <param name="lowestOutsideC">Lowest outdoor hour of the design winters [°C].</param>
    /// <param name="outcomes">Outcomes of the winters; empty before the simulation.</param>
    /// <returns>The checks, the tightest first.</returns>
    public static IReadOnlyList<Check> Of(Scenario scenario, BuiltLayout built, decimal buildPrice, double labourHours, double lowestOutsideC, IReadOnlyList<Outcome> outcomes) =>
        [.. Unsorted(scenario, built, buildPrice, labourHours, lowestOutsideC, outcomes).OrderBy(c => c.Margin).ThenBy(c => c.Id, StringComparer.Ordinal)];

    /// <summary>The same checks as they come.</summary>
    internal static List<Check> Unsorted(Scenario scenario, BuiltLayout built, decimal buildPrice, double labourHours, double lowestOutsideC, IReadOnlyList<Outcome> outcomes)
    {
        var checks = BeforeTheList(scenario, built.Layout, built.Solar, built.StoreFloorM2, built.Installation.Heater, lowestOutsideC, outcomes);
        checks.Add(Budget(scenario.Money, buildPrice));
        if (scenario.Money.BuildHours is { } hours)
            checks.Add(Limit("build-hours", "hours of own work", labourHours, hours, "h", "The builder's own limit"));
        if (built.Missing.Count > 0)
            checks.Add(new Check(Parts, "parts in the catalogue", false, -PartsMissed, "The catalogue lacks " + string.Join(", and ", built.Missing) + ".", "The catalogue"));
        if (built.Solar is { } solar && PressureCheck.Of(built, solar) is { } pressure)
            checks.Add(pressure);
        if (built.Supply is { } supply)
            checks.AddRange(SupplyChecks.Of(scenario, built, supply));
        if (outcomes.Sum(o => o.PowerCutHours) is > 0 and var cut)
            checks.Add(PowerCut(scenario, outcomes, cut));
        return checks;
    }

    /// <summary>The checks that need neither list nor supply.</summary>
    internal static List<Check> BeforeTheList(Scenario scenario, Layout layout, SolarLoop? solar, double storeFloorM2, HeaterNumbers heater, double lowestOutsideC, IReadOnlyList<Outcome> outcomes)
    {
        var checks = new List<Check>(Names.Count);
        if (storeFloorM2 > 0)
        {
            checks.Add(Limit("store-floor", "floor for tank and barrels", storeFloorM2, scenario.Site.StoreFloorM2, "m²", "The site's own limit"));
            checks.Add(FloorLoad(scenario, layout, solar));
        }

        if (solar is not null)
        {
            checks.AddRange(MountChecks.Of(scenario, solar));
            checks.AddRange(LoopChecks.Of(scenario, solar, lowestOutsideC, outcomes));
            checks.Add(FacesSun(scenario.Place.LatitudeDeg, layout["azimuth_deg"].Number));
        }

        if (CompostHeat(scenario.Catalogue, layout) is { } heat)
            checks.Add(heat);
        if (!layout[ChoiceTable.BenchKey].IsNone)
            checks.Add(Bench(scenario.Greenhouse.BenchM2));
        else if (HeaterBand(scenario.Greenhouse.FrostLimitC, heater) is { } band)
            checks.Add(band);
        return checks;
    }

    /// <summary>Fills the violations of a layout by the order of <see cref="Names"/>: 0 where a check is met, else the share by which it is missed.</summary>
    public static void Violations(IReadOnlyList<Check> checks, Span<double> violations)
    {
        violations.Clear();
        foreach (var check in checks)
        {
            if (!check.Passed)
                violations[Place[check.Id]] = Math.Max(1e-6, -check.Margin);
        }
    }

    /// <summary>Place of a check in <see cref="Names"/>.</summary>
    internal static int PlaceOf(string id) => Place[id];

    private static readonly Dictionary<string, int> Place = Names.Select((n, i) => (n, i)).ToDictionary(p => p.n, p => p.i, StringComparer.Ordinal);

    // A fresh heap may reach this; what lies in it or takes its water must bear it.
    private const double HottestHeapC = 70;

    private static Check? CompostHeat(Catalogue parts, Layout layout)
    {
        if (layout["compost_mix"].IsNone || !parts.TryFind<CompostCoil>(layout["compost_coil"].Id, out var coil) || !parts.TryFind<Pump>(layout["compost_pump"].Id, out var pump))
            return null;
        var weakest = Math.Min(coil.MaxTemperatureC, pump.MaxTemperatureC);
        return Check.Of("compost-heat", "pipe and pump bear a hot heap", weakest >= HottestHeapC, weakest / HottestHeapC - 1, $"A fresh heap may reach {HottestHeapC:0} °C; pipe and pump bear {weakest:0} °C.", "Common practice, no source: hot heaps reach 60 to 70 °C");
    }

    // The season holds a heater's set point evenly; a real thermostat swings about it. One set below the limit anyhow shows its frost itself.
    private static Check? HeaterBand(double limitC, HeaterNumbers heater)
    {
        if (heater.PowerW <= 0 || heater.SetPointC < limitC)
            return null;
        var coldest = heater.SetPointC - (heater.BandK / 2);
        return Check.Of("heater-band", "heater's thermostat clear of the limit", coldest >= limitC - 1e-9, (coldest - limitC) / Math.Max(heater.BandK, 0.1), $"Set at {heater.SetPointC:0.#} °C, its band of {heater.BandK:0.#} K lets the air fall to {coldest:0.#} °C before it heats; the limit is {limitC:0.#} °C.", "The band in the catalogue; that a thermostat swings half a band to either side: common practice, no source");
    }

    // Between the tropics the noon sun stands on either side.
    private const double TropicDeg = 23.44;

    private static Check FacesSun(double latitudeDeg, double azimuthDeg)
    {
        var (noon, word) = latitudeDeg >= 0 ? (180.0, "south") : (0.0, "north");
        var off = Math.Abs((azimuthDeg - noon + 540) % 360 - 180);
        var serves = Math.Abs(latitudeDeg) <= TropicDeg || off <= 90;
        return Check.Of("faces-sun", "collector looks towards the noon sun", serves, serves ? Math.Max(0, 1 - off / 90) : Math.Min(-0.001, 1 - off / 90), $"It faces {azimuthDeg:0}° clockwise from true north, {off:0}° away from the noon sun, which stands in the {word} here ({noon:0}°).", "The sun's path: outside the tropics the noon sun is always on the side of the equator");
    }

    private static Check Bench(double areaM2) => Check.Of(
        "bench-enough",
        "a bench is enough",
        areaM2 > 0,
        areaM2 > 0 ? 1 : -1,
        areaM2 > 0 ? (FormattableString)$"All plants that must live stand on {areaM2:0.#} m² of bench." : $"The whole house must be held: the scenario names no bench that is enough.",
        "The builder's own word");

    // Told, not refused: frost in the cut counts as frost like any other.
    private static Check PowerCut(Scenario scenario, IReadOnlyList<Outcome> outcomes, int cut)
    {
        var above = cut - outcomes.Sum(o => o.PowerCutFrostHours);
        var lowest = outcomes.Where(o => o.PowerCutHours > 0).Min(o => o.PowerCutLowestAirC);
        return Check.Of("power-cut", "a power cut on the coldest night", true, (double)above / cut, $"Of {cut} h without mains it stays above {scenario.Greenhouse.FrostLimitC:0.#} °C for {above} h; the lowest is {lowest:0.0} °C.", "The season model; told, not refused: frost in the cut counts as frost");
    }

    internal static Check Limit(string id, string title, double value, double limit, string unit, string source) =>
        Check.Of(id, title, value <= limit + 1e-9, limit > 0 ? 1 - value / limit : value > 0 ? -1 : 0, $"It takes {value:0.#} of {limit:0.#} {unit}.", source);

    private static Check FloorLoad(Scenario scenario, Layout layout, SolarLoop? solar)
    {
        var (tank, barrel) = (0.0, 0.0);
        if (solar is { Tank: { } store })
            tank = (store.VolumeL + store.EmptyKg) / store.FootprintM2;
        if (scenario.Catalogue.TryFind<Barrel>(layout["barrel"].Id, out var one))
            barrel = (one.VolumeL + one.EmptyKg) / (Math.PI / 4 * one.DiameterM * one.DiameterM);
        var load = Math.Max(tank, barrel);
        var bears = scenario.Site.FloorBearsKgPerM2;
        return Check.Of("floor-load", "weight on the floor", load <= bears, 1 - load / bears, $"Full of water the {(tank >= barrel ? "tank" : "barrel")} weighs {load:0} kg on each square metre it stands on; the floor bears {bears:0}.", "A litre of water weighs a kilogram; what the floor bears is the builder's figure, 1500 kg/m² where none is given (own choice)");
    }

    private static Check Budget(MoneyTerms money, decimal price) =>
        Check.Of("budget", "build price", price <= money.Budget, money.Budget > 0 ? (double)(1 - price / money.Budget) : price > 0 ? -1 : 0, $"It costs {price:0} of {money.Budget:0} {money.Currency} to build.", "The builder's own limit");
}
