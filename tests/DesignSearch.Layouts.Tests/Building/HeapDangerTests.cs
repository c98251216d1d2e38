using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Parts.Money;
using DesignSearch.Parts.Small;
using DesignSearch.Season.Compost;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Heaps that were dangerous or wrongly told, and sound ones beside them. Which of them an earlier version let pass is in the log.</summary>
public sealed class HeapDangerTests : IDisposable
{
    private const double ColdNightC = -18.5;

    private readonly SmallScenario small = new();

    public void Dispose() => small.Dispose();

    private static Layout Heap(Scenario scenario, params (string Key, object Value)[] changes) => SmallScenario.Of(scenario,
    [
        ("compost_mix", "chips-manure"), ("compost_m3", 12), ("compost_wrap", "wrap-fleece-film"), ("compost_coil", "coil-pex-20"),
        ("compost_coil_m", 100), ("compost_pump", "solar-pump-19w"), ("compost_set_c", 5), ("compost_rest_c", 40),
        ("compost_glycol_percent", 48), .. changes,
    ]);

    private static IReadOnlyList<string> Failed(Scenario scenario, Layout layout, double lowestC = ColdNightC)
    {
        var built = LayoutBuilder.Build(scenario, layout);
        return [.. Checked.Of(scenario, built, 0, 0, lowestC, []).Where(c => !c.Passed).Select(c => c.Id)];
    }

    private static decimal Bought(BuiltLayout built, SmallPartRole role) =>
        built.Parts.Where(p => p.Part is SmallPart s && s.Role == role && p.Purpose.System == "compost heap").Sum(p => p.Quantity);

    private static Scenario Read(params (string From, string To)[] changes)
    {
        using var other = new SmallScenario(changes);
        return other.Read();
    }

    [Fact]
    public void A_sound_heap_passes_with_either_wrap_or_none()
    {
        var scenario = small.Read();
        Assert.All(new[] { "wrap-fleece-film", "wrap-straw-bales", "none" }, wrap => Assert.Empty(Failed(scenario, Heap(scenario, ("compost_wrap", wrap)))));
        Assert.Empty(Failed(scenario, Heap(scenario, ("compost_pump", "circulator-25w"))));
    }

    // Insulated or not, water that stands takes the air's cold: 0 °C for water; −12.8, −20.6 and −30 °C for 30, 40 and 48 % (Melinder 2010).
    [Theory]
    [InlineData(0, -0.5, false)]
    [InlineData(0, -18.5, false)]
    [InlineData(30, -8.7, true)]
    [InlineData(30, -8.9, false)]
    [InlineData(40, -16.5, true)]
    [InlineData(40, -16.7, false)]
    [InlineData(48, -25.5, true)]
    public void Outdoor_pipes_that_freeze_while_the_pump_stands_are_refused(double percent, double lowestC, bool holds)
    {
        var scenario = small.Read();
        Assert.Equal(holds, !Failed(scenario, Heap(scenario, ("compost_glycol_percent", percent)), lowestC).Contains("compost-frost"));
    }

    [Fact]
    public void A_power_cut_on_the_coldest_night_asks_no_less_of_the_outdoor_pipes()
    {
        var scenario = Read(("kind = \"hard\"", "kind = \"hard\"\npower_cut_hours = 12"));
        var judge = new Judge(new LayoutAssessor(scenario, WinterSet.Make(scenario)));
        Assert.Contains(judge.Of(Heap(scenario, ("compost_glycol_percent", 0))).Checks, c => c.Id == "compost-frost" && !c.Passed && c.Sentence.Contains("current cut", StringComparison.Ordinal));
        Assert.Contains(judge.Of(Heap(scenario)).Checks, c => c.Id == "compost-frost" && c.Passed);
    }

    [Fact]
    public void Every_thing_that_makes_a_heap_work_is_on_the_bill()
    {
        var scenario = small.Read();
        var built = LayoutBuilder.Build(scenario, Heap(scenario));
        SmallPartRole[] one =
        [
            SmallPartRole.HeapHire, SmallPartRole.HeaderTank, SmallPartRole.AirVent, SmallPartRole.Strainer, SmallPartRole.HeapFittings,
            SmallPartRole.ProbeThermometer,
        ];
        Assert.All(one, role => Assert.Equal(1, Bought(built, role)));
        Assert.Equal(2, Bought(built, SmallPartRole.BallValve));
        // A round heap of 12 m³, 0.6 as high as wide: 2.942 m wide, 1.765 m high.
        Assert.Equal(2.942 * 1.765 * Math.PI * 1.05, (double)Bought(built, SmallPartRole.HeapCage), 0.1);
        Assert.Equal(2.942 * 2.942 * Math.PI / 4 * 1.05, (double)Bought(built, SmallPartRole.HeapTray), 0.1);
        // 5 m out and as much back, cuts included, besides 100 m in the heap and as much in the house.
        Assert.Equal([210m, 10.5m], built.Parts.Where(p => p.Part.Id == "coil-pex-20").Select(p => p.Quantity));
        Assert.Equal(10.5m, built.Parts.Single(p => p.Part.Id == "epdm-13").Quantity);
        // 210 m of 16 mm bore hold 42.2 L; 48 % by mass are 47.1 % by volume, and a tenth more is bought.
        Assert.Equal(Math.PI / 4 * 0.16 * 0.16 * 2100 * 0.4712 * 1.1, (double)Bought(built, SmallPartRole.AntifreezeConcentrate), 0.1);
    }

    [Fact]
    public void The_control_is_one_thermostat_in_the_house_and_one_with_a_sensor_in_the_core_on_bill_wiring_and_settings()
    {
        var scenario = small.Read();
        foreach (var pump in new[] { "solar-pump-19w", "circulator-25w" })
        {
            var built = LayoutBuilder.Build(scenario, Heap(scenario, ("compost_pump", pump)));
            Assert.Equal(0, Bought(built, SmallPartRole.DifferenceController));
            Assert.Equal(1, Bought(built, SmallPartRole.Thermostat));
            Assert.Equal(1, Bought(built, SmallPartRole.ProbeThermostat));
            Assert.Equal(1, Bought(built, SmallPartRole.TemperatureSensor));
            Assert.Equal(8, built.Parts.Single(p => p.Part is SmallPart { Role: SmallPartRole.TemperatureSensor }).Lead.Metres);
            var heap = built.Systems.Single(s => s.Dials(scenario).Any(x => x.Setting.What == "Thermostat of the heap's core"));
            Assert.Equal("thermostat of the house and one in the core", heap.Circuits.First().SwitchedBy);
        }
    }

    [Fact]
    public void A_pump_for_60_degrees_stays_refused_on_a_hot_heap()
    {
        var scenario = small.Read();
        Assert.Contains("compost-heat", Failed(scenario, Heap(scenario, ("compost_pump", "solar-pump-5w"))));
        Assert.Contains("compost-heat", Failed(scenario, Heap(scenario, ("compost_coil", "coil-hdpe-25"))));
    }

    [Theory]
    [InlineData("header-tank-20", 95)]
    [InlineData("strainer-20", 110)]
    [InlineData("fittings-heap", 95)]
    [InlineData("valve-ball-20", 110)]
    [InlineData("thermometer-probe", 120)]
    public void A_small_part_that_does_not_bear_a_hot_heap_is_named(string id, double bears)
    {
        var scenario = small.Read();
        var built = LayoutBuilder.Build(scenario, Heap(scenario));
        var parts = built.Parts.Select(p => p.Part is SmallPart s && s.Id == id ? p with { Part = s with { MaxTemperatureC = 60 } } : p).ToList();
        Assert.Equal(bears, built.Parts.Select(p => p.Part).OfType<SmallPart>().First(s => s.Id == id).MaxTemperatureC);
        var failed = Assert.Single(Checked.Of(scenario, built with { Parts = parts }, 0, 0, ColdNightC, []), c => !c.Passed);
        Assert.Contains("(compost heap) meets 70 °C and bears 60 °C", failed.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Straw_round_a_heap_wants_it_clear_of_the_house_and_is_warned_of()
    {
        var near = Read(("design_wind_m_per_s = 30", "design_wind_m_per_s = 30\nheap_pipe_m = 3"));
        Assert.Equal(["compost-fire"], Failed(near, Heap(near, ("compost_wrap", "wrap-straw-bales"))));
        Assert.Empty(Failed(near, Heap(near)));
        string Said(string wrap) => LayoutBuilder.Build(near, Heap(near, ("compost_wrap", wrap))).Systems.SelectMany(s => s.Cautions).Single(c => c.Topic == "Compost fire and spores").Text;
        Assert.Contains("Its wrap burns when dry", Said("wrap-straw-bales"), StringComparison.Ordinal);
        Assert.DoesNotContain("wrap burns", Said("wrap-fleece-film"), StringComparison.Ordinal);
        Assert.DoesNotContain("straw stores", Said("wrap-straw-bales"), StringComparison.Ordinal);
    }

    // 60 m³ are 3.02 m high: the highest pipe at 2.52 m, its header tank at 2.82 m; the ridge of the house is at 2.7 m.
    [Fact]
    public void A_heap_higher_than_the_house_would_run_out_of_its_header_tank()
    {
        var scenario = small.Read();
        Assert.Equal(3.02, CompostHeap.HeightM(60), 2);
        Assert.Contains("compost-header", Failed(scenario, Heap(scenario, ("compost_m3", 60))));
        Assert.DoesNotContain("compost-header", Failed(scenario, Heap(scenario, ("compost_m3", 45))));
    }

    [Fact]
    public void A_heap_with_no_heater_behind_it_says_so()
    {
        var scenario = small.Read();
        var judge = new Judge(new LayoutAssessor(scenario, WinterSet.Make(scenario)));
        var alone = judge.Of(Heap(scenario)).Checks.Single(c => c.Id == "compost-alone");
        Assert.Contains("no heap can be foretold within a factor of two: keep a heater in reserve", alone.Sentence, StringComparison.Ordinal);
        Assert.DoesNotContain(judge.Of(Heap(scenario, ("heater", "fan-heater-1500"), ("heater_set_c", 4))).Checks, c => c.Id == "compost-alone");
    }

    // 190 a hire, 12 seasons, 3 %: 190 now and 190 at the end of each of years 1 to 11; Σ 1.03^−n for n = 1…11 is 9.25262.
    [Fact]
    public void Hire_comes_every_year_and_is_left_out_for_who_owns_the_machine()
    {
        var scenario = small.Read();
        var terms = new MoneyTerms("crowns", 10000, 12, 0.03, 0.42m, null);
        var hire = LayoutBuilder.Build(scenario, Heap(scenario)).Parts.Single(p => p.Part.Id == "heap-hire");
        Assert.Equal(1758.00m, Pricer.Replacements([hire], Stock.Empty, terms));
        Assert.Equal(0, Pricer.Replacements([hire], Stock.Of(("heap-hire", 1)), terms));
        Assert.Equal(0, Pricer.Bill([hire], Stock.Of(("heap-hire", 1))).Single().Total);
    }
}
