using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Systems.Supply;
using DesignSearch.Layouts.Systems.Supply.OffGrid;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.OffGrid;
using DesignSearch.Parts.Small;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Each limit of a supply on either side: what meets it exactly passes with nothing to spare, a little more is refused by that little.</summary>
public sealed class SupplyLimitsTests : IDisposable
{
    private readonly SmallScenario small = new();
    private readonly Scenario scenario;
    private readonly BuiltLayout built;
    private readonly SupplyPlan plan;
    private readonly LowLine line;

    public SupplyLimitsTests()
    {
        scenario = small.Read();
        built = LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario, ("heater", "fan-heater-1kw"), ("heater_set_c", 4)));
        plan = built.Supply!;
        line = plan.Lines.Single(l => l.Volts == 24);
    }

    public void Dispose() => small.Dispose();

    [Theory]
    [InlineData(1, true, 0)]
    [InlineData(2, true, 0.5)]
    [InlineData(0.8, false, -0.25)]
    [InlineData(0.9999, false, -0.001)]
    public void The_power_of_a_supply(double times, bool passes, double margin) =>
        Held(line with { Supply = line.Supply! with { Watts = times * line.Watts } }, "supply-power", passes, margin);

    [Theory]
    [InlineData(1, true, 0)]
    [InlineData(2, true, 0.5)]
    [InlineData(0.8, false, -0.25)]
    [InlineData(0.9999, false, -0.001)]
    public void Its_current_at_a_start(double times, bool passes, double margin) =>
        Held(line with { Supply = line.Supply! with { Watts = times * 24 * line.StartA } }, "start-current", passes, margin);

    // A cable of a hundred times the section; of the feeder's own drop so much as the limits leave.
    [Theory]
    [InlineData("cable-drop", 0.05, 1, true, 0)]
    [InlineData("cable-drop", 0.05, 1.25, false, -0.25)]
    [InlineData("start-drop", 0.2, 1, true, 0)]
    [InlineData("start-drop", 0.2, 1.25, false, -0.25)]
    public void The_voltage_lost_on_the_way(string check, double limit, double times, bool passes, double margin)
    {
        LowLine At(double metres) => new(line.Volts, metres, [.. line.Circuits.Select(c => c with { Cable = null })]) { Supply = line.Supply, Feeder = line.Feeder };
        double Lost(LowLine l) => check == "cable-drop" ? l.WorstDrop : l.WorstStartDrop;
        Held(At(times * limit / Lost(At(1))), check, passes, margin);
    }

    [Fact]
    public void Of_two_lines_the_worse_is_told_and_one_that_lacks_a_part_is_left_out()
    {
        var (weak, strong) = (line with { Supply = line.Supply! with { Watts = 0.5 * line.Watts } }, line with { Supply = line.Supply! with { Watts = 4 * line.Watts } });
        Assert.Equal(-1, Of(plan with { Lines = [strong, weak] }, "supply-power").Margin, 1e-9);
        Assert.Equal(-1, Of(plan with { Lines = [weak, strong] }, "supply-power").Margin, 1e-9);
        Assert.Equal(0.75, Of(plan with { Lines = [strong, line with { Supply = null }] }, "supply-power").Margin, 1e-9);
        var lacking = Of(plan with { Lines = [line with { Supply = null }] }, "supply-power");
        Assert.Equal((true, 0), (lacking.Passed, lacking.Margin));
        Assert.Equal((true, 0), Found("cable-drop", line with { Feeder = null }));
        Assert.Equal((true, 0), Found("start-drop", line with { Feeder = null }));
        Assert.Equal((true, 0), Found("cable-fuse", line with { Feeder = null }));
        Assert.DoesNotContain(SupplyChecks.Of(plan with { Lines = [line with { IsBatterys = true }] }, built.Parts, scenario.Site), c => c.Id is "supply-power" or "start-current");
        Assert.DoesNotContain(SupplyChecks.Of(plan with { Lines = [] }, built.Parts, scenario.Site), c => c.Id is "cable-drop" or "voltages-apart" or "supply-power");
    }

    // A fuse of a certain size asks 2.1 / 1.45 times its rating of the cable (IEC 60364-4-43, 433.1).
    [Theory]
    [InlineData(1, true, 0)]
    [InlineData(2, true, 0.5)]
    [InlineData(0.8, false, -0.25)]
    public void The_cable_behind_its_fuse(double times, bool passes, double margin) => Held(
        new LowLine(line.Volts, line.FeederM, [.. line.Circuits.Select(c => c with { Cable = null })]) { Supply = line.Supply, Feeder = line.Feeder! with { RatedA = times * line.MainFuseA * 2.1 / 1.45 } },
        "cable-fuse", passes, margin);

    [Theory]
    [InlineData(1, true, 0)]
    [InlineData(2, true, 0.5)]
    [InlineData(0.8, false, -0.25)]
    public void What_the_dwelling_can_spare(double times, bool passes, double margin)
    {
        var check = SupplyChecks.Of(plan, built.Parts, scenario.Site with { MainsLimitA = times * plan.DwellingStartA }).Single(c => c.Id == "mains-current");
        Assert.Equal((passes, margin), (check.Passed, Math.Round(check.Margin, 9)));
        Assert.DoesNotContain(SupplyChecks.Of(plan, built.Parts, scenario.Site with { MainsLimitA = null }), c => c.Id == "mains-current");
        Assert.DoesNotContain(SupplyChecks.Of(plan, built.Parts, scenario.Site with { MainsLimitA = 1, HasNoMains = true }), c => c.Id == "mains-current");
    }

    [Theory]
    [InlineData(2, 2, true, 0)]
    [InlineData(1, 2, true, 0.5)]
    [InlineData(2.5, 2, false, -0.25)]
    [InlineData(1, 0, false, -1)]
    public void A_dead_short_at_the_end(double ohm, double largest, bool passes, double margin)
    {
        var check = Of(plan with { Loop = new("box", ohm, largest, 16) }, "loop-impedance");
        Assert.Equal((passes, margin), (check.Passed, check.Margin));
    }

    [Fact]
    public void Low_voltage_keeps_boxes_of_its_own()
    {
        List<NeededPart> parts = [.. built.Parts];
        Assert.Equal((true, 0.8), (Apart(plan, parts).Passed, Math.Round(Apart(plan, parts).Margin, 9)));
        foreach (var role in new[] { SmallPartRole.ControlBox, SmallPartRole.SupplyBox })
            Assert.False(Apart(plan, [.. parts.Where(p => p.Part is not SmallPart small || small.Role != role)]).Passed, role.ToString());
        // With mains there are two boxes for controls; without them one will do.
        List<NeededPart> one = [.. parts.Select(p => p.Part is SmallPart { Role: SmallPartRole.ControlBox } ? p with { Quantity = 0 } : p)];
        var box = parts.First(p => p.Part is SmallPart { Role: SmallPartRole.ControlBox }) with { Quantity = 1 };
        Assert.False(Apart(plan, [.. one, box]).Passed);
        Assert.True(Apart(plan with { MainsW = 0 }, [.. one, box]).Passed);
        Assert.Contains("no mains stands", Apart(plan with { MainsW = 0 }, parts).Sentence, StringComparison.Ordinal);
        // As many boxes of supplies as lines; 120 V is the last that is low.
        Assert.False(Apart(plan with { Lines = [line, line, line, line] }, parts).Passed);
        Assert.True(Apart(plan with { Lines = [new(120, 1, line.Circuits)] }, parts).Passed);
        Assert.False(Apart(plan with { Lines = [new(121, 1, line.Circuits)] }, parts).Passed);
    }

    // Of 10, 16, 25 A and curves B and C: between load and cable, half of what trips it above the start, its loop no larger than what trips it.
    [Fact]
    public void A_breaker_stands_between_load_and_cable()
    {
        var shelf = SupplyShelf.Of(PartShelf.Of(scenario.Catalogue, default));
        var all = scenario.Catalogue.Of<SmallPart>().Where(p => p.Role == SmallPartRole.CircuitBreaker).OrderBy(p => p.RatedA).ToList();
        var breaker = all.First(b => b.RatedA == 16 && b.TripsAt == 5);
        Assert.Equal(16, shelf.Breaker(16, 16, 16, 0)!.RatedA);
        Assert.True(shelf.Breaker(16.1, 16.1, 30, 0)!.RatedA > 16);
        Assert.Null(shelf.Breaker(16, 16, 15.9, 0));
        Assert.Equal(breaker, shelf.Breaker(16, 40, 16, 0));
        Assert.NotEqual(breaker, shelf.Breaker(16, 40.1, 16, 0));
        var largest = SupplyShelf.LargestLoopOhm(breaker);
        // 230 V · 0.95 / (5 · 16 A).
        Assert.Equal(230 * 0.95 / 80, largest, 1e-9);
        Assert.Equal(breaker, shelf.Breaker(16, 16, 16, largest));
        Assert.Equal(0, SupplyShelf.LargestLoopOhm(breaker with { TripsAt = null }));
        // Where none trips, the smallest all the same, so that the check can tell.
        Assert.Equal(16, shelf.Breaker(16, 16, 16, 50)!.RatedA);
    }

    [Fact]
    public void A_supply_gives_what_is_asked_and_no_less()
    {
        var shelf = SupplyShelf.Of(PartShelf.Of(scenario.Catalogue, default));
        foreach (var supply in scenario.Catalogue.Of<PowerSupply>())
        {
            var least = shelf.Supply(supply.Volts, supply.Watts, supply.IsOnBattery)!;
            Assert.True(least.Watts >= supply.Watts && least.Info.Price <= supply.Info.Price && least.IsOnBattery == supply.IsOnBattery && least.Volts == supply.Volts);
        }

        var most = scenario.Catalogue.Of<PowerSupply>().Where(s => s.Volts == 24 && !s.IsOnBattery).Max(s => s.Watts);
        Assert.NotNull(shelf.Supply(24, most, false));
        Assert.Null(shelf.Supply(24, most + 0.1, false));
        Assert.Null(shelf.Supply(23, 1, false));
    }

    // The size that bears exactly what is asked is enough; a part without a figure fits everything.
    [Fact]
    public void A_small_part_bears_what_it_is_rated_for()
    {
        var shelf = PartShelf.Of(scenario.Catalogue, default);
        foreach (var role in new[] { SmallPartRole.Relay, SmallPartRole.Contactor, SmallPartRole.Thermostat, SmallPartRole.ResidualCurrentDevice })
        {
            foreach (var part in shelf.Small(role))
            {
                var found = shelf.Cheapest(role, part.Volts, part.RatedA)!;
                Assert.True((found.RatedA == 0 || found.RatedA >= part.RatedA) && (found.Volts == 0 || part.Volts == 0 || found.Volts == part.Volts) && shelf.PriceOf(found) <= shelf.PriceOf(part), part.Id);
                if (part.Bears(Rating.CurrentA) is not { } bears)
                    continue;
                Assert.Equal(0, Duty.Current(PlantState.Running, bears).Margin(part));
                Assert.True(shelf.PriceOf(shelf.Bearing(role, [Duty.Current(PlantState.Running, bears)], part.Volts)!) <= shelf.PriceOf(part));
            }

            var most = shelf.Small(role).Max(p => p.RatedA);
            Assert.NotNull(shelf.Cheapest(role, 0, most));
            Assert.True(shelf.Small(role).Any(p => p.RatedA == 0) || shelf.Cheapest(role, 0, most + 0.01) is null);
        }
    }

    // End of charge, kept charged, cut off, given back, for 24 V; from memory.
    [Theory]
    [InlineData(BatteryChemistry.OpenLead, 28.8, 27.0, 23.6, 25.6)]
    [InlineData(BatteryChemistry.SealedLead, 28.4, 27.2, 23.6, 25.6)]
    [InlineData(BatteryChemistry.Lithium, 28.4, 27.0, 24.8, 26.4)]
    public void A_battery_is_charged_and_guarded_by_its_kind(BatteryChemistry chemistry, double most, double keep, double off, double on) =>
        Assert.Equal((most, keep, off, on), OffGridWords.Limits(chemistry));

    // Two cores of equal length: 24 V, 10 A in all, the pump takes 4 and starts at 12 with the fan that its control switches, 3 and 6.
    [Fact]
    public void A_line_adds_what_starts_together()
    {
        Circuit Of(string name, double watts, double start, string by, bool control = false) => new(name, 24, watts, 0, by, "") { StartA = start, IsControl = control };
        var sum = new LowLine(24, 10, [Of("pump", 96, 12, "a"), Of("fan", 72, 6, "a"), Of("valve", 72, 5, "b"), Of("relay", 24, 1, "c", true)]);
        Assert.Equal((264, 11), (sum.Watts, sum.RunningA));
        // 8 and 3 more of what switch a gives, 2 more of b.
        Assert.Equal((22, 22, 13, 11), (sum.StartA, sum.StartingA(sum.Circuits[0]), sum.StartingA(sum.Circuits[2]), sum.StartingA(sum.Circuits[3])));
        Assert.Equal(1.25, sum.ControlsFuseA);
        Assert.Equal((1.25, true), (sum.FuseBefore(sum.Circuits[3]), sum.HasControls));
        Assert.Equal(TimeLagFuse.SizeFor(4, 12), sum.FuseBefore(sum.Circuits[0]));
        Assert.Equal(TimeLagFuse.SizeFor(11, 22), sum.MainFuseA);
        Assert.False(new LowLine(24, 10, [sum.Circuits[0]]).HasControls);
        Assert.Equal((0, 0), (sum.WorstDrop, sum.WorstStartDrop));
        var cable = scenario.Catalogue.Of<Cable>().First(c => c.Id == line.Feeder!.Id);
        var laid = sum with { Feeder = cable, Circuits = [.. sum.Circuits.Select((c, i) => i == 1 ? c with { Cable = cable, CableM = 5 } : c)] };
        var perAmpere = CableDrop.Volts(cable, 1, 1);
        Assert.Equal(perAmpere * ((10 * 11) + (5 * 3)) / 24, laid.WorstDrop, 1e-12);
        Assert.Equal(perAmpere * ((10 * 22) + (5 * 6)) / 24, laid.WorstStartDrop, 1e-12);
        Assert.Equal(laid.MainFuseA * 2.1 / 1.45 / cable.RatedA, laid.WorstFuseShare, 1e-12);
    }

    private static Check Apart(SupplyPlan of, IReadOnlyList<NeededPart> parts) => SupplyChecks.Of(of, parts, new(0, 0, 0, true, 0, 0, 0, 0, [])).Single(c => c.Id == "voltages-apart");

    private Check Of(SupplyPlan of, string id) => SupplyChecks.Of(of, built.Parts, scenario.Site).Single(c => c.Id == id);

    private (bool, double) Found(string id, LowLine of) => Of(plan with { Lines = [of] }, id) is var check ? (check.Passed, check.Margin) : default;

    private void Held(LowLine of, string id, bool passes, double margin)
    {
        var check = Of(plan with { Lines = [of] }, id);
        Assert.Equal((passes, margin), (check.Passed, Math.Round(check.Margin, 6)));
    }
}
