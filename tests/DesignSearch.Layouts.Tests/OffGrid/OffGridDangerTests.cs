using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.OffGrid;
using DesignSearch.Parts.Small;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Plants without mains that would go dark, burn or burst: each is refused by a check that names what is wrong.</summary>
public sealed class OffGridDangerTests : IDisposable
{
    private const double LowestC = -9.5;

    private static readonly string[] Own = ["no-mains", "darkest-run", "sun-refill", "battery-cold", "battery-charge"];

    private readonly LonelyHouse house = new();
    private readonly Scenario scenario;

    public OffGridDangerTests() => scenario = house.Read();

    public void Dispose() => house.Dispose();

    [Fact]
    public void A_sound_plant_passes()
    {
        var checks = Checks(scenario);
        Assert.All(Own, id => Assert.True(checks.Single(c => c.Id == id).Passed, id));
        Assert.All(checks.Where(c => c.Id is "bears-running" or "bears-gale" or "bears-design-night" or "parts" or "voltages-apart"),
            c => Assert.True(c.Passed, c.Sentence));
    }

    [Theory]
    [InlineData("heater", "fan-heater-2kw", "stand-by heater")]
    [InlineData("heater", "tube-heater-500", "stand-by heater")]
    [InlineData("heat_pump", "heat-pump-2k6", "heat pump")]
    [InlineData("pump", "circulator-25w", "collector pump")]
    [InlineData("release", "fan-coil-300-mains", "fan of the heat release")]
    [InlineData("freeze_protection", "drain-valves-mains", "valve")]
    public void What_needs_mains_is_refused_and_named(string key, string part, string device)
    {
        var pump = part == "heat-pump-2k6" ? scenario.Catalogue.All.First(p => p.Kind.Name == "heat-pump").Id : part;
        var checks = Checks(scenario, SmallScenario.Solar(scenario, (key, pump)));
        var refused = checks.Single(c => c.Id == "no-mains");
        Assert.False(refused.Passed);
        Assert.Contains(device, refused.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_battery_too_small_is_refused() => Refused("darkest-run", Weak<Battery>(b => b with { AmpHours = b.AmpHours / 20 }), "A·h");

    [Fact]
    public void A_battery_that_may_give_little_is_refused() => Refused("darkest-run", Weak<Battery>(b => b with { UsableDepth = 0.02 }), "A·h");

    [Fact]
    public void Panels_too_small_are_refused()
    {
        Refused("sun-refill", Weak<SunPanel>(p => p with { Watts = p.Watts / 20 }), "darkest thirty days");
        Refused("sun-refill", Weak<ChargeController>(c => c with { Efficiency = 0.05 }), "Charge controller");
    }

    [Fact]
    public void Lithium_that_must_not_be_charged_in_frost_is_refused()
    {
        var alone = Only<Battery>(b => b.Id == "battery-lithium-24v-50");
        Refused("battery-cold", alone, "may be charged down to 0 °C");
        // Where there is a choice it is not taken.
        Assert.NotEqual("battery-lithium-24v-50", Build(scenario).Supply!.Battery!.Battery.Id);
    }

    [Fact]
    public void A_battery_whose_acid_would_freeze_keeps_charge_for_it()
    {
        var lead = Only<Battery>(b => b.Chemistry == BatteryChemistry.SealedLead);
        var plan = Build(lead).Supply!.Battery!;
        var needed = BatterySize.AmpHours(plan.RunWh, 0.5, 0.8, BatterySize.ColdFactor(BatteryChemistry.SealedLead, plan.LowestC), 24);
        Assert.Equal(needed, plan.NeededAmpHours, 6);
        // At 40 below, 73 % must stay in it, and a quarter is left to take out.
        using var colder = new LonelyHouse("", ("return_years = 10", "lowest_c = -40"));
        var cold = colder.Read();
        cold = cold with { Catalogue = Catalogue.Of(lead.Catalogue.All.Select(p => p is Battery b ? b with { LeastChargeC = -45, LeastC = -45 } : p)) };
        var frozen = Build(cold).Supply!.Battery!;
        Assert.Equal(-40, frozen.LowestC, 1);
        var left = BatterySize.ChargeAgainstFrost(BatteryChemistry.SealedLead, frozen.LowestC);
        Assert.InRange(left, 0.72, 0.75);
        var factor = BatterySize.ColdFactor(BatteryChemistry.SealedLead, frozen.LowestC);
        Assert.Equal(BatterySize.AmpHours(frozen.RunWh, 1 - left, 0.8, factor, 24), frozen.NeededAmpHours, 6);
    }

    [Fact]
    public void A_panel_that_breaks_its_controller_on_a_cold_morning_is_refused()
    {
        // The plate's voltage would pass; that of the coldest morning does not.
        var plan = Build(scenario).Supply!.Battery!;
        var plate = plan.InSeries * plan.Panel.OpenV;
        Assert.True(plate < plan.ColdOpenV - 2, $"{plate} {plan.ColdOpenV}");
        var between = (plate + plan.ColdOpenV) / 2;
        var one = Only<SunPanel>(p => p.Id == plan.Panel.Id, Weak<ChargeController>(c => c with { MostV = between }));
        Refused("bears-design-night", one, "Charge controller");
    }

    [Fact]
    public void No_string_of_panels_exceeds_sixty_volts_in_the_cold()
    {
        var high = Weak<SunPanel>(p => p with { OpenV = 59, WorkingV = 48 });
        Assert.Contains(Checks(high), c => c is { Id: "parts", Passed: false } && c.Sentence.Contains("60 V", StringComparison.Ordinal));
    }

    [Fact]
    public void A_fuse_of_glass_at_the_battery_is_refused()
    {
        // Sheet 3 of IEC 60127-2: glass breaks 35 A.
        Refused("bears-running", Weak<BatteryFuse>(f => f with { BreaksA = 35 }), "Battery fuse");
        Refused("bears-running", Weak<BatteryFuse>(f => f with { MostV = 12.5 }), "Battery fuse");
        Refused("bears-running", Weak<BatteryFuse>(f => f with { RatedA = 3 }), "Battery fuse");
    }

    [Fact]
    public void A_battery_without_a_fuse_is_refused() => Refused("parts", Only<BatteryFuse>(_ => false), "fuse at the battery");

    [Theory]
    [InlineData(SmallPartRole.LowVoltageDisconnect)]
    [InlineData(SmallPartRole.PanelSwitch)]
    [InlineData(SmallPartRole.BatteryBox)]
    public void Guard_switch_and_box_are_asked_for(SmallPartRole role) => Refused("parts", Only<SmallPart>(p => p.Role != role), "catalogue");

    [Fact]
    public void A_guard_too_weak_for_the_start_is_refused() =>
        Refused("bears-running", Weak<SmallPart>(p => p.Role == SmallPartRole.LowVoltageDisconnect ? p with { RatedA = 0.5 } : p), "Battery guard");

    [Fact]
    public void A_bracket_too_weak_for_the_storm_is_refused() =>
        Refused("bears-gale", Weak<PanelBracket>(b => b with { HoldsN = 60 }), "panel");

    [Fact]
    public void A_battery_that_is_charged_too_fast_is_refused() =>
        Refused("battery-charge", Weak<Battery>(b => b with { MostChargeA = 0.5 }), "charge with up to");

    [Fact]
    public void Licensed_hours_and_all_of_the_mains_are_gone_from_the_bill()
    {
        var built = Build(scenario);
        SmallPartRole[] mains =
        [
            SmallPartRole.LicensedHour, SmallPartRole.ResidualCurrentDevice, SmallPartRole.EarthRod, SmallPartRole.CircuitBreaker,
            SmallPartRole.Isolator, SmallPartRole.SocketOutlet, SmallPartRole.WarningTape, SmallPartRole.Conduit,
            SmallPartRole.SurgeProtection,
        ];
        Assert.DoesNotContain(built.Parts, p => p.Part is SmallPart s && mains.Contains(s.Role));
        var said = built.Systems.SelectMany(s => s.Upkeep).Select(u => u.What)
            .Concat(built.Systems.SelectMany(s => s.Cautions).Select(c => c.Text));
        Assert.DoesNotContain(said, s => s.Contains("residual-current", StringComparison.Ordinal));
    }

    [Fact]
    public void What_can_hurt_is_told_of_each_kind_of_battery()
    {
        var lead = Build(Only<Battery>(b => b.Chemistry == BatteryChemistry.OpenLead));
        var lithium = Build(Only<Battery>(b => b.Chemistry == BatteryChemistry.Lithium));
        string[] Topics(BuiltLayout built) => [.. built.Systems.SelectMany(s => s.Cautions).Select(c => c.Topic)];
        Assert.All(new[] { "Battery", "Panels", "Empty battery" }, t => Assert.Contains(t, Topics(lead)));
        Assert.Contains("Hydrogen and acid", Topics(lead));
        Assert.DoesNotContain("Hydrogen and acid", Topics(lithium));
        Assert.Contains("Lithium battery", Topics(lithium));
        Assert.Contains(lead.Systems.SelectMany(s => s.Upkeep), u => u.What.Contains("distilled", StringComparison.Ordinal));
        Assert.DoesNotContain(lithium.Systems.SelectMany(s => s.Upkeep), u => u.What.Contains("distilled", StringComparison.Ordinal));
        var dials = lithium.Settings(scenario).Select(s => s.What).ToList();
        Assert.Contains("Charge controller, least temperature", dials);
        Assert.Contains("Battery guard", dials);
    }

    private void Refused(string id, Scenario at, string said)
    {
        Assert.True(Checks(scenario).All(c => c.Id != id || c.Passed), "the sound plant fails it too");
        var refused = Checks(at).SingleOrDefault(c => c.Id == id);
        Assert.True(refused is { Passed: false }, $"{id} passes: {refused?.Sentence}");
        Assert.Contains(said, refused!.Sentence, StringComparison.OrdinalIgnoreCase);
    }

    private Scenario Weak<T>(Func<T, T> change)
        where T : Part => scenario with { Catalogue = Catalogue.Of(scenario.Catalogue.All.Select(p => p is T part ? change(part) : p)) };

    private Scenario Only<T>(Func<T, bool> keep, Scenario? of = null)
        where T : Part
    {
        var whole = of ?? scenario;
        return whole with { Catalogue = Catalogue.Of(whole.Catalogue.All.Where(p => p is not T part || keep(part))) };
    }

    private static BuiltLayout Build(Scenario scenario, Layout? layout = null) =>
        LayoutBuilder.Build(scenario, layout ?? SmallScenario.Solar(scenario));

    private static IReadOnlyList<Check> Checks(Scenario scenario, Layout? layout = null) =>
        Checked.Of(scenario, Build(scenario, layout), 0, 0, LowestC, []);
}
