using System.Globalization;
using System.Text.RegularExpressions;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Barrels;
using DesignSearch.Parts.Benches;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Compost;
using DesignSearch.Parts.DayStore;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Heaters;
using DesignSearch.Parts.HeatPumps;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Skin;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>What is bought is tried, and nothing else is; figures on the papers are those of the plant.</summary>
public sealed class PapersTests
{
    private const int Draws = 500;

    private static readonly Scenario Wide = ScenarioReader.Read(Repository.At("runs", "frost-hollow"));

    // What keeps a plant safe or runs it: each of these on a bill is tried where it is.
    private static readonly HashSet<SmallPartRole> Tried =
    [
        SmallPartRole.Thermostat, SmallPartRole.ProbeThermostat, SmallPartRole.HighLimit, SmallPartRole.TankCutOut, SmallPartRole.LimitSwitch,
        SmallPartRole.ResidualCurrentDevice, SmallPartRole.Isolator, SmallPartRole.EarthRod, SmallPartRole.ReversingInterlock, SmallPartRole.HandSwitch,
        SmallPartRole.LightSensor, SmallPartRole.Timer, SmallPartRole.DelayRelay, SmallPartRole.SunClock, SmallPartRole.Contactor,
        SmallPartRole.TemperatureRelay, SmallPartRole.ChangeoverRelay, SmallPartRole.DrainPoint, SmallPartRole.MakeUpValve, SmallPartRole.FreeOutlet,
        SmallPartRole.FillSet, SmallPartRole.CheckValve, SmallPartRole.CoverMotor, SmallPartRole.DifferenceController,
    ];

    private static readonly Dictionary<string, Func<IReadOnlyList<IPart>, bool>> Dangers = new()
    {
        ["Mains voltage"] = p => Has(p, SmallPartRole.ResidualCurrentDevice),
        ["Low voltage"] = p => p.Any(x => x is PowerSupply),
        ["Hot water and steam"] = p => p.Any(x => x is Collector),
        ["Legionella"] = p => p.Any(x => x is Collector),
        ["Lifting collectors"] = p => p.Any(x => x is Collector),
        ["Snow on the collectors"] = p => p.Any(x => x is Collector),
        ["Wind"] = p => p.Any(x => x is CollectorMount),
        ["Pressure"] = p => p.Any(x => x is ReliefValve),
        ["Turned by hand"] = p => p.Any(x => x is CollectorMount { Turning: not TurningKind.Fixed }) && !p.Any(x => x is Drive),
        ["Frost in the ground"] = p => Wide.Site.FrostDepthM is null && p.Any(x => x is CollectorMount { Founding: Founding.Feet or Founding.Post }),
        ["Glass"] = p => p.Any(x => x is Collector { IsGlazed: true }) || (IsUnderRoof(p) && Wide.Greenhouse.CoverLayers == 1),
        ["Weight and drowning"] = p => p.Any(x => x is Tank or Barrel),
        ["Full barrels in a house given up"] = p => p.Any(x => x is Barrel),
        ["Fire"] = p => p.Any(x => x is Heater),
        ["Heated bench"] = p => p.Any(x => x is Bench { WattsPerM2: > 0 }),
        ["Fleece over heat"] = p => p.Any(x => x is Bench { WattsPerM2: > 0 }),
        ["Refrigerant"] = p => p.Any(x => x is HeatPump),
        ["Heat pump's current"] = p => p.Any(x => x is HeatPump),
        ["Melt water"] = p => p.Any(x => x is HeatPump),
        ["Warm air stream"] = p => p.Any(x => x is HeatPump),
        ["Compost gas"] = p => p.Any(x => x is CompostMix),
        ["Compost fire and spores"] = p => p.Any(x => x is CompostMix),
        ["Heat from compost"] = p => p.Any(x => x is CompostMix),
        ["Hot pipe of the heap"] = p => p.Any(x => x is CompostMix),
        ["Digging"] = p => p.Any(x => x is EarthPipe),
        ["Air from the ground"] = p => p.Any(x => x is EarthPipe),
        ["Water in the pipes"] = p => p.Any(x => x is EarthPipe),
        ["Mains fan"] = p => p.Any(x => x is StoreFan { Volts: > 100 }),
        ["Snow on the house"] = IsUnderRoof,
        ["Film and cover"] = IsUnderRoof,
        ["Moving cover"] = p => p.Any(x => x is NightCover { IsAutomatic: true }),
        ["Damp"] = p => p.Any(x => x is Lining or NightCover or Sealing),
        ["Carbon monoxide from a makeshift flame"] = p => p.Any(x => x is Lining or Sealing or Heater or HeatPump or Bench { WattsPerM2: > 0 }),
        ["Working at height"] = p => IsUnderRoof(p) || p.Any(x => x is Collector),
    };

    [Fact]
    public void Whatever_keeps_the_plant_safe_is_tried_where_it_is_and_nothing_is_tried_that_is_not_bought()
    {
        var seen = new HashSet<SmallPartRole>();
        for (var seed = 0; seed < Draws; seed++)
        {
            var built = LayoutBuilder.Build(Wide, Drawn(seed));
            var steps = PlantPapers.Of(Wide, built).Steps;
            var bought = built.Parts.Select(p => p.Part.Id).ToHashSet();
            Assert.All(steps, s => Assert.True(s.PartIds.Count > 0 && s.PartIds.All(bought.Contains), $"seed {seed}: {s.Thing} is tried and not bought"));
            Assert.All(steps, s => Assert.True(s.Try.Length > 10 && s.Wanted.Length > 3 && !s.Wanted.Contains('–', StringComparison.Ordinal), s.ToString()));
            foreach (var need in built.Parts.Where(p => IsTried(p.Part)))
            {
                var names = steps.Any(s => s.PartIds.Contains(need.Part.Id) && s.Thing.EndsWith(": " + need.Purpose.Where, StringComparison.Ordinal));
                Assert.True(names, $"seed {seed}: {need.Part.Id} {need.Purpose.Where} is bought and not tried");
                if (need.Part is SmallPart small)
                    seen.Add(small.Role);
            }
        }

        // A clock is bought only where the catalogue lacks a relay that counts from dawn.
        Assert.Equal([SmallPartRole.Timer], Tried.Except(seen));
    }

    [Fact]
    public void Each_caution_stands_where_its_thing_is_on_the_bill_and_nowhere_else()
    {
        var seen = new HashSet<string>();
        for (var seed = 0; seed < Draws; seed++)
        {
            var built = LayoutBuilder.Build(Wide, Drawn(seed));
            // What the catalogue could not give is refused anyway.
            if (built.Missing.Count > 0)
                continue;
            IReadOnlyList<IPart> parts = [.. built.Parts.Select(p => p.Part)];
            var said = built.Systems.SelectMany(s => s.Cautions).Select(c => c.Topic).ToHashSet();
            Assert.Empty(said.Except(Dangers.Keys));
            foreach (var (topic, isThere) in Dangers)
                Assert.True(isThere(parts) == said.Contains(topic), $"seed {seed}: {topic} {(said.Contains(topic) ? "is told and its thing is not" : "is not told and its thing is")} there");
            seen.UnionWith(said);
        }

        // The bench wants a scenario that names one that is enough; the roomy one gives a depth of frost and always offers a drive.
        Assert.Subset(new HashSet<string> { "Heated bench", "Fleece over heat", "Frost in the ground", "Turned by hand" }, Dangers.Keys.Except(seen).ToHashSet());
    }

    // A closed store of 3 bar with a valve of 3 bar works at 2.5: half as much again would be 3.75 bar and burst it.
    [Fact]
    public void Nothing_is_tried_above_the_pressure_that_it_is_made_for()
    {
        var tried = 0;
        for (var seed = 0; seed < Draws; seed++)
        {
            var built = LayoutBuilder.Build(Wide, Drawn(seed));
            foreach (var step in PlantPapers.Of(Wide, built).Steps.Where(s => s.Wanted.Contains("bar hold", StringComparison.Ordinal)))
            {
                var bar = double.Parse(Regex.Match(step.Wanted, @"^[\d.]+").Value, CultureInfo.InvariantCulture);
                var isTank = step.Thing.Contains("tank's fill point", StringComparison.Ordinal);
                var weakest = built.Parts.Select(p => p.Part).Where(p => p is ExpansionVessel || (isTank ? p is Tank : p is Collector)).Min(p => p.Bears(Rating.PressureBar) ?? double.PositiveInfinity);
                Assert.True(bar <= weakest + 1e-9, $"seed {seed}: {step.Thing} at {bar} bar, {weakest} bear");
                tried++;
            }
        }

        Assert.True(tried > Draws / 20, $"only {tried}");
    }

    // 85 m of 2.5 mm², class 1 or 2: 7.41 mΩ/m, out and back 1.26 Ω. Type B, 6 A: 230 V·0.95/30 A = 7.28 Ω warm, four fifths of it cold 5.83 Ω. Sources: IEC 60228, IEC 60898.
    [Fact]
    public void Mains_are_measured_against_the_figures_of_their_cable_and_breaker()
    {
        var papers = Of([("night_cover", "none"), ("heater", "fan-heater-1kw"), ("heater_set_c", 4)]);
        var steps = papers.Steps;
        Assert.Contains(steps, s => s.Try.Contains("continuity", StringComparison.Ordinal) && s.Wanted.StartsWith("no more than 1.26 Ω at 20 °C", StringComparison.Ordinal) && s.IsLicensed);
        Assert.Contains(steps, s => s.Try.Contains("500 V d.c.", StringComparison.Ordinal) && s.Wanted == "at least 1 MΩ" && s.Unit == "MΩ");
        Assert.Contains(steps, s => s.Try.Contains("loop impedance", StringComparison.Ordinal) && s.Wanted.StartsWith("cold no more than 5.83 Ω", StringComparison.Ordinal));
        Assert.Contains(steps, s => s.Try == "live: trip time at 30 mA and at 150 mA" && s.Wanted.StartsWith("within 300 ms and 40 ms; not at 15 mA", StringComparison.Ordinal));
        Assert.Contains(steps, s => s.PartIds.Contains("earth-rod") && s.Wanted.StartsWith("under 1667 Ω", StringComparison.Ordinal));
        // A band of 1 K about 4 °C.
        Assert.Contains(steps, s => s.PartIds.Contains("cutout-high-limit"));
        var asked = papers.Enquiry;
        Assert.All(asked, f => Assert.Equal(Trade.Electrician, f.Trade));
        Assert.Contains(asked, f => f.Value.Contains("4.3 A running", StringComparison.Ordinal));
        Assert.Contains(asked, f => f.What == "Cable" && f.Value.StartsWith("85 m of Mains cable 3 x 2.5", StringComparison.Ordinal));
        Assert.Contains(asked, f => f.What == "Hours reckoned" && f.Value.StartsWith("7.5 h", StringComparison.Ordinal));
    }

    [Fact]
    public void A_closed_store_asks_for_a_plumber_and_is_tried_at_no_more_than_its_own_3_bar()
    {
        var papers = OfSolar([("tank", "closed-300"), ("tank_jacket", "none"), ("freeze_protection", "antifreeze-plate"), ("pump", "circulator-25w"), ("release", "radiator-used"), ("pipe", "copper-22"), ("pipe_insulation", "epdm-13")]);
        Assert.Contains(papers.Enquiry, f => f.Trade == Trade.Plumber && f.What == "Closed tank");
        Assert.Contains(papers.Steps, s => s.Thing.Contains("tank's fill point", StringComparison.Ordinal) && s.Wanted.StartsWith("3.0 bar hold", StringComparison.Ordinal));
        Assert.Contains(papers.Log, c => c.What == "pressure, cold");
    }

    [Fact]
    public void What_runs_empty_is_laid_with_a_fall_and_watched_running_empty_and_wants_no_plumber()
    {
        var papers = OfSolar([]);
        Assert.DoesNotContain(papers.Enquiry, f => f.Trade == Trade.Plumber);
        Assert.Contains(papers.Steps, s => s.PartIds.Contains("pex-25") && s.Wanted.StartsWith("at least 2 %", StringComparison.Ordinal));
        Assert.Contains(papers.Steps, s => s.PartIds.Contains("drain-back-simple") && s.Unit == "min");
        Assert.Contains(papers.Steps, s => s.Try.StartsWith("try the lock-out", StringComparison.Ordinal));
        Assert.Contains(papers.Log, c => c.What == "tank, top");
    }

    [Fact]
    public void Without_mains_panel_battery_and_guard_are_tried_and_nobody_is_asked()
    {
        using var lonely = new LonelyHouse();
        var scenario = lonely.Read();
        var built = LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario));
        var papers = PlantPapers.Of(scenario, built);
        Assert.NotNull(built.Supply!.Battery);
        foreach (var kind in new[] { "sun-panel", "charge-controller", "battery" })
            Assert.Contains(papers.Steps, s => built.Parts.Any(p => p.Part.Kind.Name == kind && s.PartIds.Contains(p.Part.Id)));
        foreach (var role in new[] { SmallPartRole.LowVoltageDisconnect, SmallPartRole.PanelSwitch })
            Assert.Contains(papers.Steps, s => built.Parts.Any(p => p.Part is SmallPart small && small.Role == role && s.PartIds.Contains(small.Id)));
        Assert.Empty(papers.Enquiry);
        Assert.DoesNotContain(papers.Steps, s => s.Unit == "ms");
        Assert.Contains(papers.Log, c => c.What == "battery before sunrise");
    }

    [Fact]
    public void A_bare_house_has_no_papers_and_barrels_alone_ask_nobody()
    {
        Assert.Empty(Of([]).Log);
        var papers = Of([("barrel", "barrel-200-used"), ("barrel_count", 4)]);
        Assert.Empty(papers.Enquiry);
        Assert.Equal(3, papers.Log.Count);
    }

    private static PlantPapers Of((string, object)[] choices)
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        return PlantPapers.Of(scenario, LayoutBuilder.Build(scenario, SmallScenario.Of(scenario, choices)));
    }

    private static PlantPapers OfSolar((string, object)[] choices)
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        return PlantPapers.Of(scenario, LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario, choices)));
    }

    private static bool IsTried(IPart part) =>
        part is ReliefValve or ExpansionVessel or SolarController or FreezeProtection { Method: not FreezeMethod.Antifreeze } or Heater { HasThermostat: true }
        || (part is SmallPart small && Tried.Contains(small.Role));

    private static bool Has(IReadOnlyList<IPart> parts, SmallPartRole role) => parts.Any(p => p is SmallPart small && small.Role == role);

    private static bool IsUnderRoof(IReadOnlyList<IPart> parts) => parts.Any(p => p is NightCover or Lining { Transmittance: > 0 });

    private static Layout Drawn(int seed)
    {
        var random = new Random(seed);
        return Layout.Of([.. Wide.Choices.Select(c => c.Levels[random.Next(c.Levels.Count)])], Wide.Systems.Choices);
    }
}
