using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Parts.Catalogues;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Loops that would freeze, burst, boil or melt, each refused by the check that names it; and sound ones that pass every check.</summary>
public sealed class WaterDangersTests
{
    private static readonly string[] Antifreeze = ["freeze_protection=antifreeze-plate", "pipe=stainless-corrugated-16", "pipe_insulation=epdm-13"];

    /// <summary>Expected check, lowest outside [°C], part ids left out of the catalogue, choices.</summary>
    public static TheoryData<string, double, string, string[]> Dangers => new()
    {
        // A plate good for -20 °C, and nothing on the shelf but 30 % glycol, which freezes at -12.8 °C.
        { "collector-freezing", -11, "antifreeze-40", Antifreeze },
        // 45 °C pipe behind four selective plates, and 55 °C pipe: their lock-out is below what a controller can be told.
        { "hot-start", -5, "", ["freeze_protection=drain-valves-spring", "pipe=ldpe-25", "pipe_insulation=foam-pe-13-large", "tank=cylinder-150-used"] },
        { "hot-start", -5, "", ["pipe=hdpe-25"] },
        // No controller with a lock-out to be had.
        { "hot-start", -5, "controller-solar", [] },
        // A pressurised tank lets no air into a loop that is to run empty.
        { "open-tank", -5, "", ["tank=closed-300", "tank_jacket=none", "freeze_protection=drain-back-simple"] },
        { "open-tank", -5, "", ["tank=closed-300", "tank_jacket=none", "freeze_protection=drain-valves-spring"] },
        // Folds keep water.
        { "drain-fall", -5, "", ["pipe=stainless-corrugated-16", "pipe_insulation=epdm-13", "freeze_protection=drain-valves-spring"] },
        { "drain-fall", -5, "", ["pipe=stainless-corrugated-16", "pipe_insulation=epdm-13"] },
        // Steam of a standing closed loop in plastic pipe, and in plastic foam.
        { "pipe-rating", -5, "", ["freeze_protection=antifreeze-plate"] },
        { "insulation-heat", -5, "", ["freeze_protection=antifreeze-plate", "pipe=copper-22", "pipe_insulation=foam-pe-13-small"] },
        // A box of twin-wall sheet under three bars.
        { "bears-running", -5, "", [.. Antifreeze, "collector=box-twinwall-2m"] },
        // Only six-bar valves for a tank of three bars; and only vessels there are none of.
        { "bears-running", -5, "valve-relief-3bar", [.. Antifreeze, "tank=closed-300", "tank_jacket=none"] },
        { "parts", -5, "vessel-expansion-18 vessel-expansion-35 vessel-expansion-80", Antifreeze },
        // Valves without the sensor that shuts them at dusk, the relay that changes them over, the place that the water goes to.
        { "parts", -5, "light-sensor", ["freeze_protection=drain-valves-spring"] },
        { "parts", -5, "relay-changeover-24v", ["freeze_protection=drain-valves-spring"] },
        { "parts", -5, "drain-point", ["freeze_protection=drain-valves-spring"] },
        // A sensor with a cable for 180 °C at a collector of 190 °C; plastic clips there.
        { "bears-standing", -5, "sensor-cable-hot", [] },
        { "bears-standing", -5, "clip-metal", [] },
        // The top is above the tank's water and the lower edge is not: what stays in the lower corner bursts in the first hard night. And too little fall.
        { "drain-fall", -5, "", ["freeze_protection=drain-back-simple", "@lift=-0.4"] },
        { "drain-fall", -5, "", ["freeze_protection=drain-back-simple", "@lift=0.2"] },
        // A cut-out is not to be had: with a dead sensor nothing would stop the pump.
        { "parts", -5, "cutout-tank-24v", [] },
        // Hot water on a mountain boils at the pump's inlet.
        { "pump-inlet", -5, "", ["tank=store-500", "tank_jacket=none", "release=radiator-used", "pump=circulator-70w-old", "pipe=copper-22", "pipe_insulation=epdm-13", "@elevation=5200"] },
    };

    /// <summary>Lowest outside [°C], choices.</summary>
    public static TheoryData<double, string[]> Sound => new()
    {
        // 16 mm inside runs empty by itself; what was asked before, 18 and 20 mm, is a maker's comfort.
        { -18, ["pipe=multilayer-20", "pipe_insulation=foam-pe-20-small"] },
        { -18, ["pipe=pex-20", "pipe_insulation=foam-pe-20-small"] },
        { -18, ["pipe=multilayer-20", "pipe_insulation=foam-pe-20-small", "freeze_protection=drain-back-vessel"] },
        // A vessel two metres up leaves little to lift.
        { -18, ["freeze_protection=drain-back-vessel", "pump=solar-pump-10w", "@lift=2.7"] },
        // A rubber mat and plastic pipe may freeze: whatever protects them, the frost does not burst them.
        { -18, ["collector=mat-rubber-3m", "collector_count=1", "pipe=pex-20", "pipe_insulation=foam-pe-20-small", "freeze_protection=drain-valves-mains"] },
        { -18, [.. Antifreeze.Take(1), "collector=mat-rubber-3m", "collector_count=1", "pipe=pex-20", "pipe_insulation=foam-pe-20-small"] },
        // A coil keeps the loop of the vessel apart from a tank under pressure.
        { -18, ["freeze_protection=drain-back-vessel", "tank=closed-300", "tank_jacket=none", "release=radiator-used"] },
    };

    [Theory]
    [MemberData(nameof(Dangers))]
    public void A_loop_that_would_fail_is_refused(string check, double lowestC, string leftOut, string[] choices)
    {
        var failing = Failing(lowestC, leftOut, choices);
        Assert.Contains(failing, c => c.Id == check && c.Margin < 0 && c.Sentence.Length > 20);
    }

    [Theory]
    [MemberData(nameof(Sound))]
    public void A_sound_loop_passes(double lowestC, string[] choices) => Assert.Empty(Failing(lowestC, "", choices).Select(c => $"{c.Id}: {c.Sentence}"));

    private static List<Check> Failing(double lowestC, string leftOut, string[] choices)
    {
        using var small = new SmallScenario(("mains_at_greenhouse = false", "mains_at_greenhouse = true"));
        var scenario = small.Read();
        var gone = leftOut.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        scenario = scenario with { Catalogue = Catalogue.Of(scenario.Catalogue.All.Where(p => !gone.Contains(p.Id))) };
        foreach (var choice in choices.Where(c => c[0] == '@').Select(c => c.Split('=')))
        {
            var value = double.Parse(choice[1], System.Globalization.CultureInfo.InvariantCulture);
            scenario = choice[0] == "@lift"
                ? scenario with { Site = scenario.Site with { CollectorAboveTankM = value } }
                : scenario with { Place = scenario.Place with { ElevationM = value } };
        }

        var layout = SmallScenario.Solar(scenario, [.. choices.Where(c => c[0] != '@').Select(c => c.Split('=')).Select(c => (c[0], Parsed(c[1])))]);
        return [.. Checked.Of(scenario, LayoutBuilder.Build(scenario, layout), 0, 0, lowestC, []).Where(c => !c.Passed)];
    }

    private static object Parsed(string value) =>
        double.TryParse(value, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : value;
}
