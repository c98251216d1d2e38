using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Small;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Every part bears what it meets: the rating is asked, the worst is named, and what the catalogue does not say is not taken for granted.</summary>
public sealed class DutyChecksTests
{
    private const double DryPlateC = 190;

    private static readonly Purpose Somewhere = new("pipe run", "A test.", "in a test");

    [Theory]
    [InlineData(DryPlateC, true)]
    [InlineData(DryPlateC - 0.1, false)]
    [InlineData(0, false)]
    public void A_rating_covers_what_is_met(double bearsC, bool holds)
    {
        using var small = new SmallScenario();
        var hose = small.Read().Catalogue.Of<SmallPart>().First(p => p.Role == SmallPartRole.HoseLoop) with { MaxTemperatureC = bearsC };
        var check = Assert.Single(Checks(new NeededPart(hose, 1, Somewhere, [Duty.Heat(PlantState.StandingInSun, DryPlateC)])));
        Assert.Equal((holds, "bears-standing"), (check.Passed, check.Id));
        Assert.Contains(hose.Name, check.Sentence, StringComparison.Ordinal);
        Assert.Contains(bearsC > 0 ? $"bears {bearsC:0.#} °C" : "does not say", check.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_state_tells_the_part_that_has_least_to_spare()
    {
        using var small = new SmallScenario();
        var parts = small.Read().Catalogue.Of<SmallPart>();
        var (vent, sensor) = (parts.First(p => p.Role == SmallPartRole.AirVent), parts.First(p => p.Role == SmallPartRole.TemperatureSensor));
        var checks = Checks(
            new NeededPart(vent, 1, Somewhere, [Duty.Heat(PlantState.Running, 90), Duty.Heat(PlantState.StandingInSun, 100)]),
            new NeededPart(sensor, 1, Somewhere, [Duty.Heat(PlantState.Running, 120)]));
        Assert.Equal(["bears-running", "bears-standing"], checks.Select(c => c.Id));
        Assert.Contains(sensor.Name, checks[0].Sentence, StringComparison.Ordinal);
        Assert.Equal(1 - (120 / sensor.MaxTemperatureC), checks[0].Margin, 1e-12);
    }

    /// <summary>Before, a hose of 40 °C at a plate that stands at 190 °C passed every check, and so did a vent and fittings.</summary>
    [Theory]
    [InlineData(SmallPartRole.HoseLoop)]
    [InlineData(SmallPartRole.AirVent)]
    [InlineData(SmallPartRole.Fittings)]
    public void What_melts_at_a_dry_collector_is_refused_by_name(SmallPartRole role)
    {
        using var small = new SmallScenario(("mains_cable_m = 85", "mains_cable_m = 20"));
        var scenario = small.Read();
        var layout = SmallScenario.Solar(scenario, ("mount", "two-position-rocker"), ("drive", "slew-200nm"), ("limit_deg", 30), ("switch_hours", 5.5), ("shaft_seal", "cheapest"));
        var weak = scenario with { Catalogue = Catalogue.Of(scenario.Catalogue.All.Select(p => p is SmallPart s && s.Role == role ? s with { MaxTemperatureC = 40 } : p)) };
        var sound = Standing(LayoutBuilder.Build(scenario, layout));
        var refused = Standing(LayoutBuilder.Build(weak, layout));
        Assert.True(sound.Passed, sound.Sentence);
        Assert.False(refused.Passed);
        Assert.Contains(LayoutBuilder.Build(weak, layout).Parts.First(p => p.Part is SmallPart s && s.Role == role).Part.Name, refused.Sentence, StringComparison.Ordinal);
    }

    private static Check Standing(BuiltLayout built) => Checks([.. built.Parts]).Single(c => c.Id == "bears-standing");

    private static List<Check> Checks(params NeededPart[] parts)
    {
        var checks = new List<Check>();
        DutyChecks.Add(parts, checks);
        return checks;
    }
}
