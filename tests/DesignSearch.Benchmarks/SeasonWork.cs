using DesignSearch.Season;
using DesignSearch.Season.Benches;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Tests;

namespace DesignSearch.Benchmarks;

/// <summary>What the kernel's times are taken on: 64 random layouts of the tests through 151 days in steps of 300 s.</summary>
internal sealed class SeasonWork
{
    public const double StepSeconds = 300;
    public const double Steps = 151.0 * 288;

    private readonly WinterForcing forcing;
    private readonly LayoutCase[] layouts;
    private readonly Outcome[] outcomes = new Outcome[64];

    /// <param name="withBenches">False leaves benches out of the layouts, which the yardstick has none of.</param>
    public SeasonWork(bool withBenches)
    {
        var winter = TestWinter.Make(days: 151, warmUpDays: 0);
        forcing = TestWinter.Forcing(winter);
        var plane = TestWinter.Plane(winter, 60);
        var random = new Random(64);
        layouts = [.. Enumerable.Range(0, 64).Select(_ => TestLayout.Random(random)).Select(l => withBenches ? l : l with { Sources = [.. l.Sources.Where(s => s is not BenchNumbers)] }).Select(l => new LayoutCase(l, l.Collector.AreaM2 > 0 ? plane : null))];
    }

    /// <summary>Simulates some of the layouts.</summary>
    /// <param name="count">How many, from the first.</param>
    /// <param name="take">How many at a time: batches times lanes.</param>
    /// <param name="width">Lanes: 1, 4 or 8.</param>
    public void Run(int count, int take, int width)
    {
        for (var done = 0; done < count; done += take)
            SeasonSimulator.Run(forcing, layouts.AsSpan(done, Math.Min(take, count - done)), outcomes, null, StepSeconds, width);
    }

    /// <summary>Operations of one step, and divisions among them; work done once an hour left out.</summary>
    public (double All, double Divisions) Operations()
    {
        (long All, long Divisions) Of(double step)
        {
            var before = CountedLane.Done;
            BatchRunner<CountedLane>.Run(forcing, layouts.AsSpan(0, 4), outcomes, null, step);
            return (CountedLane.Done.All - before.All, CountedLane.Done.Divisions - before.Divisions);
        }

        var (whole, half) = (Of(StepSeconds), Of(2 * StepSeconds));
        return ((whole.All - half.All) / (4 * Steps / 2), (whole.Divisions - half.Divisions) / (4 * Steps / 2));
    }
}
