using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Benches;
using DesignSearch.Parts.DayStore;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Heaters;
using DesignSearch.Parts.HeatPumps;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;
using DesignSearch.Search.Space;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Over random layouts: what is wired is bought, and what is bought and electric is wired.</summary>
public sealed class WiringConsistencyTests
{
    private static readonly (SmallPartRole Role, string Word)[] Said =
    [
        (SmallPartRole.ReversingInterlock, "interlock"), (SmallPartRole.LightSensor, "light sensor"), (SmallPartRole.LimitSwitch, "limit switch at"),
        (SmallPartRole.Thermostat, "thermostat"), (SmallPartRole.DifferenceController, "difference controller"), (SmallPartRole.HighLimit, "cut-out in"),
        (SmallPartRole.Diode, "diode across"), (SmallPartRole.Contactor, "contactor"), (SmallPartRole.SunClock, "sun clock"), (SmallPartRole.DelayRelay, "delay relay"),
        (SmallPartRole.CircuitBreaker, "circuit breaker"), (SmallPartRole.ResidualCurrentDevice, "residual-current device and"), (SmallPartRole.Isolator, "isolator"),
    ];

    [Theory]
    [InlineData("mains_cable_m = 30")]
    [InlineData("mains_cable_m = 120")]
    [InlineData("mains_at_greenhouse = true")]
    public void Bill_and_wiring_say_the_same(string mains)
    {
        using var small = Free(mains);
        var scenario = small.Read();
        var layouts = new LayoutSpace(scenario);
        var space = new SearchSpace(layouts.Variables);
        var random = new Random(11);
        var (powered, faults) = (0, new List<string>());
        for (var i = 0; i < 400; i++)
        {
            var point = layouts.Variables.Select(v => (double)random.Next(v.Levels)).ToArray();
            space.Canonicalise(point);
            var built = LayoutBuilder.Build(scenario, layouts.At(point));
            if (built.Supply is null || built.Missing.Count > 0)
                continue;
            powered++;
            faults.AddRange(Faults(built, built.Supply).Select(f => $"{i}: {f}"));
        }

        Assert.True(powered > 90, $"{powered} layouts with current");
        Assert.True(faults.Count == 0, $"{faults.Count} faults:\n" + string.Join('\n', faults.Take(12)));
    }

    private static IEnumerable<string> Faults(BuiltLayout built, SupplyPlan plan)
    {
        var wires = WireWriter.Of(built);
        List<Circuit> all = [.. plan.MainsCircuits, .. plan.Lines.SelectMany(l => l.Circuits), .. plan.Signals];
        decimal Pieces(SmallPartRole role) => built.Parts.Where(p => p.Part is SmallPart s && s.Role == role).Sum(p => p.Quantity);
        // Protection: one fuse behind each supply, one for each device, one for all controls; a fuse or breaker in every row that carries current.
        var fuses = plan.Lines.Sum(l => 1 + l.Circuits.Count(c => c is { IsControl: false, Watts: > 0 }) + (l.HasControls ? 1 : 0));
        if (Pieces(SmallPartRole.Fuse) != fuses)
            yield return $"{fuses} fuses wired, {Pieces(SmallPartRole.Fuse)} bought";
        foreach (var wire in wires.Where(w => !w.IsSignal && w.FuseA <= 0))
            yield return $"no fuse: {wire}";
        // Cables: as much as all the rows together, and 5 % for cuts.
        var feeders = plan.Lines.Select(l => (l.Feeder, l.FeederM)).Append((plan.MainsCable, plan.MainsCableM));
        foreach (var cable in all.Where(c => c.CableM > 0).Select(c => (c.Cable, c.CableM * c.Count)).Concat(feeders).Where(c => c.Item2 > 0).GroupBy(c => c.Item1?.Id))
        {
            var (bought, wired) = ((double)built.Parts.Where(p => p.Part.Id == cable.Key).Sum(p => p.Quantity), 1.05 * cable.Sum(c => c.Item2));
            if (bought < wired - 1e-9 || bought > wired + (0.1 * cable.Count()) + 1e-9)
                yield return $"{cable.Key}: {wired} m wired, {bought} bought";
        }

        foreach (var thin in all.Where(c => c.CableM > 0 && c.Cable is { } k && k.Cores < c.Cores))
            yield return $"too few cores: {thin.Device}";
        // Devices.
        var devices = built.Parts.Where(p => p.Part is Pump or Drive or Heater or HeatPump or StoreFan or SmallPart { Role: SmallPartRole.CoverMotor }).Sum(p => p.Quantity)
            + built.Parts.Count(p => p.Part is HeatRelease { FanWatts: > 0 } or Bench { Volts: > 0 } or FreezeProtection { Watts: > 0 });
        var supplies = built.Parts.Count(p => p.Part is PowerSupply);
        var rows = all.Count(c => !c.IsControl && !c.Device.StartsWith("supply of", StringComparison.Ordinal));
        if (devices != rows || supplies != plan.Lines.Count)
            yield return $"{devices} devices and {supplies} supplies bought, {rows} and {plan.Lines.Count} wired";
        // Controls: each that is bought is a row, and what the rows speak of is bought.
        foreach (var needed in built.Parts.Where(p => p.Part is SmallPart s && Controls.IsControl(s)))
        {
            if (!wires.Any(w => w.Device == needed.Part.Name && w.Stops == needed.Purpose.Why))
                yield return $"not wired: {needed.Part.Name}";
        }

        var text = string.Join('\n', wires.Select(w => $"{w.SwitchedBy}; {w.Stops}"));
        foreach (var (role, word) in Said)
        {
            if (text.Contains(word, StringComparison.Ordinal) && Pieces(role) == 0 && !(role == SmallPartRole.Thermostat && text.Contains("its own thermostat", StringComparison.Ordinal)))
                yield return $"wired and not bought: {word}";
        }

        // Boxes, glands, sockets.
        if (plan.Lines.Count > 0 && Pieces(SmallPartRole.SupplyBox) != plan.Lines.Count)
            yield return "supplies without a box";
        // Without low voltage a probe goes into the controller itself, which is boxed.
        var entering = all.Where(c => (c.CableM > 0 || c.BringsLead) && (c.Volts > 0 || plan.Lines.Count > 0)).Sum(c => c.Count) + plan.Lines.Count + (plan.MainsW > 0 ? 2 : 0);
        if (Pieces(SmallPartRole.Gland) != entering)
            yield return $"{entering} cables enter, {Pieces(SmallPartRole.Gland)} glands";
        if (Pieces(SmallPartRole.SocketOutlet) != plan.MainsCircuits.Count(c => c.BringsLead))
            yield return "sockets";
    }

    // Everything that needs current may be chosen.
    private static SmallScenario Free(string mains) => new(
        (mains.StartsWith("mains_cable", StringComparison.Ordinal) ? "mains_cable_m = 85" : "mains_at_greenhouse = false", mains),
        ("frost_limit_c = 2.0", "frost_limit_c = 2.0\nbench_enough_m2 = 2.4"),
        ("night_cover = [\"none\", \"aluminised-hand\"]", "night_cover = [\"none\", \"aluminised-motor\", \"double-motor\"]"),
        ("compost_mix = \"none\"", "# "),
        ("heat_pump = \"none\"", "# "),
        ("day_pipe = \"none\"", "# "),
        ("heater = [\"none\", \"fan-heater-1kw\", \"fan-heater-2kw\"]", "# "),
        ("mount = [\"stand-timber\", \"two-position-rocker\"]", "# "),
        ("drive = \"slew-600nm\"", "# "),
        ("freeze_protection = \"drain-back-simple\"", "# "),
        ("pump = \"solar-pump-19w\"", "# "),
        ("release = \"fan-coil-small\"", "# "),
        ("release_count = 1", "# "));
}
