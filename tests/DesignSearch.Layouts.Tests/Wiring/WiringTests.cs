using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Heaters;
using DesignSearch.Parts.Small;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class WiringTests
{
    private static readonly (string, object)[] Turning = [("mount", "two-position-rocker"), ("drive", "slew-200nm"), ("limit_deg", 30), ("switch_hours", 5.5), ("shaft_seal", "cheapest")];

    // A cable of no length is none to buy: rounded up it once was a zero with a minus, which no price may have.
    [Theory]
    [InlineData("0")]
    [InlineData("-0.0")]
    public void A_cable_of_no_length_costs_nothing(string metres)
    {
        using var small = new SmallScenario(("mains_cable_m = 85", "mains_cable_m = " + metres));
        var scenario = small.Read();
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario));
        var bill = assessor.Bill(assessor.Price(SmallScenario.Of(scenario, ("heater", "fan-heater-2kw"), ("heater_set_c", 4))));
        Assert.All(bill, l => Assert.False(decimal.IsNegative(l.Quantity), l.Name));
    }

    [Fact]
    public void Each_device_has_its_row_and_no_fuse_is_above_its_cable()
    {
        using var small = new SmallScenario(("mains_cable_m = 85", "mains_cable_m = 20"));
        var scenario = small.Read();
        var built = LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario, [.. Turning, ("heater", "fan-heater-2kw"), ("heater_set_c", 4)]));
        var wires = WireWriter.Of(built);
        Assert.Equal(
            ["mains to the greenhouse's mains box", "stand-by heater", "supply of 12 V", "supply of 24 V", "12 V supply to the control box", "fan of the heat release", "24 V supply to the control box", "collector pump", "pump of the heat release", "drive of the frame"],
            wires.Where(w => !built.Parts.Any(p => p.Part.Name == w.Device)).Select(w => w.Device));
        Assert.All(wires.Where(w => !w.IsSignal), w => Assert.True(w.FuseA >= w.CurrentA - 0.01 && (w.CableBearsA == 0 || w.FuseA <= w.CableBearsA), w.ToString()));
        Assert.All(wires, w => Assert.True(w.DropPercent <= 5, w.ToString()));
        var drive = wires.Single(w => w.Device.StartsWith("drive", StringComparison.Ordinal));
        Assert.Contains("limit switch", drive.Stops, StringComparison.Ordinal);
        Assert.Contains("never be on together", drive.Stops, StringComparison.Ordinal);
        Assert.Equal((24, 7.0), (drive.Volts, drive.StartA));
        // 2000 W at 230 V: 8.70 A.
        Assert.Equal(8.7, wires.Single(w => w.Device == "stand-by heater").CurrentA);
    }

    [Fact]
    public void Loss_in_the_cables_is_that_of_the_standard()
    {
        // 4 mm² of class 5 is 5.92 Ω/km at 70 °C; 5 A, 20 m: 1.184 V or 4.94 % of 24 V.
        foreach (var (section, amperes, metres, percent) in new[] { (4.0, 5.0, 20.0, 4.936), (6, 8, 15, 3.949), (1.5, 2, 40, 10.61) })
        {
            var cable = Load().Catalogue.Of<Cable>().First(c => c.SectionMm2 == section && c.ConductorClass == 5 && c.MaxVolts < 400);
            var line = new LowLine(24, metres, [new Circuit("lamp", 24, 24 * amperes, 0, "", "")]) { Feeder = cable };
            Validation.Equal(FormattableString.Invariant($"wiring loss in {section} mm2 at {amperes} A over {metres} m"), "share of 24 V, copper at 70 °C [%]", percent, 100 * line.WorstDrop, 0.01, "IEC 60228 resistances, 2 L I R'", "LowLine");
        }
    }

    [Fact]
    public void A_fuse_lies_between_load_and_thinnest_cable()
    {
        var thin = Load().Catalogue.Of<Cable>().First(c => c.Id == "cable-2x1-5");
        LowLine Line(double amperes) => new(24, 1, [new Circuit("lamp", 24, 24 * amperes, 0, "", "")]) { Feeder = thin };
        // A quarter above the load; 10 A of cable bear a fuse of 6.9 A until it melts.
        Assert.Equal([1.0, 5, 6.3], new[] { 0.5, 4, 5 }.Select(a => Line(a).MainFuseA));
        Assert.True(Line(5).WorstFuseShare < 1);
        Assert.True(Line(5.2).WorstFuseShare > 1);
        Assert.Equal(double.PositiveInfinity, Line(33).WorstFuseShare);
    }

    [Fact]
    public void A_supply_is_strong_enough_while_a_drive_starts()
    {
        using var small = new SmallScenario(("mains_cable_m = 85", "mains_cable_m = 10"));
        var scenario = small.Read();
        LowLine Line(string drive, double volts) => LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario, [.. Turning, ("drive", drive)])).Supply!.Lines.Single(l => l.Volts == volts);
        // 24 V: pumps 19 + 10 W, controls 9 W, drive 40 W: 78 W or 3.3 A; the drive starts with 7 A instead of 1.67: 8.5 A or 206 W.
        var line = Line("slew-200nm", 24);
        Assert.Equal(78, line.Watts, 1e-9);
        Assert.Equal(78 / 24.0 + 7 - 40 / 24.0, line.StartA, 1e-9);
        Assert.Equal("supply-24v-240w", line.Supply!.Id);
        // A motor from a breaker starts with 18 A at 12 V, beside a fan of 18 W: 19.5 A or 234 W.
        Assert.Equal("supply-12v-250w", Line("wiper-motor-worm", 12).Supply!.Id);
    }

    [Theory]
    [InlineData("supply_w", 60.0, "start-current")]
    [InlineData("cable_mm2", 1.5, "cable-drop")]
    public void What_is_asked_for_and_too_weak_is_taken_and_refused(string key, double value, string check)
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var layout = SmallScenario.Solar(scenario, [.. Turning, ("mount", "two-position-rocker")]);
        List<string> Failing(Layout of) => [.. Checked.Of(scenario, LayoutBuilder.Build(scenario, of), 0, 0, -18, []).Where(c => !c.Passed).Select(c => c.Id)];
        Assert.DoesNotContain(check, Failing(layout));
        Assert.Contains(check, Failing(layout.With(scenario, key, value)));
    }

    [Fact]
    public void The_dwelling_must_bear_the_heater()
    {
        foreach (var (limit, passes) in new[] { ("10", true), ("8", false) })
        {
            using var small = new SmallScenario(("mains_at_greenhouse = false", "mains_at_greenhouse = false\nmains_limit_a = " + limit));
            var scenario = small.Read();
            var built = LayoutBuilder.Build(scenario, SmallScenario.Of(scenario, ("heater", "fan-heater-2kw"), ("heater_set_c", 4)));
            Assert.Equal(passes, Checked.Of(scenario, built, 0, 0, -18, []).Single(c => c.Id == "mains-current").Passed);
        }
    }

    [Fact]
    public void A_heater_above_every_thermostat_gets_a_contactor_with_a_coil_on_low_voltage()
    {
        using var small = new SmallScenario(("mains_cable_m = 85", "mains_cable_m = 10"));
        var scenario = small.Read();
        var strong = scenario.Catalogue.Of<Heater>().First(h => h.Id == "tube-heater-500") with { Watts = 4200 };
        var with = scenario with { Catalogue = Catalogue.Of(scenario.Catalogue.All.Select(p => p.Id == strong.Id ? strong : p)) };
        var built = LayoutBuilder.Build(with, SmallScenario.Of(with, ("heater", strong.Id), ("heater_set_c", 4)));
        Assert.Contains(built.Parts, p => p.Part is SmallPart { Role: SmallPartRole.Contactor });
        Assert.Contains(WireWriter.Of(built), w => w.Device == "stand-by heater" && w.SwitchedBy.StartsWith("contactor", StringComparison.Ordinal));
        Assert.Contains(WireWriter.Of(built), w => w.Volts == 24);
    }

    private static Scenario Load()
    {
        using var small = new SmallScenario();
        return small.Read();
    }
}
