using System.Globalization;
using DesignSearch.Season.Kernel;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>Half the step must hardly move a result, for any layout. 20 layouts and three winters here; DESIGNSEARCH_HALVINGS=200 by hand.</summary>
public sealed class StepHalvingTests(Xunit.Abstractions.ITestOutputHelper output)
{
    private static int Layouts => int.TryParse(Environment.GetEnvironmentVariable("DESIGNSEARCH_HALVINGS"), CultureInfo.InvariantCulture, out var n) ? n : 20;

    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, -3)]
    [InlineData(3, 6)]
    public void Half_the_step_changes_little(int seed, double meanC)
    {
        var winter = TestWinter.Make(days: 151, warmUpDays: 30, meanC: meanC, seed: seed);
        var forcing = TestWinter.Forcing(winter);
        var plane = TestWinter.Plane(winter, 60);
        var random = new Random(8);
        var cases = Enumerable.Range(0, Layouts).Select(_ => TestLayout.RandomWithSources(random)).Select(l => new LayoutCase(l, l.Collector.AreaM2 > 0 ? plane : null)).ToArray();
        var (usual, half) = (new Outcome[cases.Length], new Outcome[cases.Length]);
        Parallel.Invoke(() => SeasonSimulator.Run(forcing, cases, usual), () => SeasonSimulator.Run(forcing, cases, half, 150));
        var wrong = new List<string>();
        var (frost, standby) = (0.0, 0.0);
        for (var i = 0; i < cases.Length; i++)
        {
            var (a, b, x) = (usual[i], half[i], cases[i].Installation);
            var (df, ds) = (Math.Abs(a.FrostDegreeHoursKh - b.FrostDegreeHoursKh), Math.Abs(a.StandbyKwh - b.StandbyKwh));
            frost = Math.Max(frost, df / Math.Max(50, b.FrostDegreeHoursKh));
            standby = Math.Max(standby, ds / Math.Max(50, b.StandbyKwh));
            if (df > Math.Max(0.5, 0.01 * b.FrostDegreeHoursKh) || ds > Math.Max(0.5, 0.01 * b.StandbyKwh))
                wrong.Add(FormattableString.Invariant($"layout {i}: frost {a.FrostDegreeHoursKh:0.00} and {b.FrostDegreeHoursKh:0.00} K·h, stand-by {a.StandbyKwh:0.00} and {b.StandbyKwh:0.00} kWh at 300 and 150 s; tank {x.Tank.WaterKg:0} kg for {x.Collector.AreaM2:0.0} m², release {x.Release.ConductanceWPerK:0} W/K {x.Release.FlowKgPerS:0.000} kg/s set {x.Release.SetPointC:0.0}, ceiling {x.Tank.CeilingC:0}, yields {a.CollectorYieldKwh:0} {b.CollectorYieldKwh:0}, released {a.ReleasedKwh:0.0} {b.ReleasedKwh:0.0}, pump {a.PumpHours:0} {b.PumpHours:0}, ex {x.Collector.ExchangerEffectiveness}, heater {x.Heater.PowerW:0} at {x.Heater.SetPointC:0.0}, sources {string.Join(' ', x.Sources.Select(s => s.GetType().Name))}"));
        }

        output.WriteLine(FormattableString.Invariant($"{cases.Length} layouts, winter of {meanC} °C: worst frost {100 * frost:0.00} %, worst stand-by {100 * standby:0.00} % (of at least 50)"));
        foreach (var line in wrong)
            output.WriteLine(line);
        Assert.Empty(wrong);
    }
}
