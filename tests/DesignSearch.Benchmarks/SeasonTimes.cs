using System.Diagnostics;
using DesignSearch.Season;
using DesignSearch.Season.Tests;

namespace DesignSearch.Benchmarks;

/// <summary>Time of the season kernel per layout and winter of 151 days, by lanes and batches, on 64 random layouts. Processor time of one thread: other load on the machine counts only as far as it slows the core.</summary>
internal static class SeasonTimes
{
    // Lane operations of one step, + − × ÷ min max and select counted once each, fifteen of them divisions.
    private const int Operations = 407;

    public static void Run(int rounds)
    {
        var winter = TestWinter.Make(days: 151, warmUpDays: 0);
        var forcing = TestWinter.Forcing(winter);
        var plane = TestWinter.Plane(winter, 60);
        var random = new Random(64);
        var layouts = Enumerable.Range(0, 64).Select(_ => TestLayout.Random(random)).Select(l => new LayoutCase(l, l.Collector.AreaM2 > 0 ? plane : null)).ToArray();
        var outcomes = new Outcome[64];
        (string Name, int Width, int Take)[] forms = [("4 batches of 8", 8, 32), ("4 batches of 4", 4, 16), ("4 batches of 1", 1, 4), ("1 batch of 8", 8, 8), ("1 batch of 4", 4, 4), ("1 batch of 1", 1, 1)];
        var times = forms.Select(_ => new List<double>()).ToArray();
        using var self = Process.GetCurrentProcess();
        for (var round = -1; round < rounds; round++)
        {
            for (var f = 0; f < forms.Length; f++)
            {
                var (_, width, take) = forms[f];
                // As many layouts as take a good while, and no more.
                var count = Math.Min(64, take * Math.Max(1, 16 / take));
                self.Refresh();
                var start = self.UserProcessorTime;
                for (var done = 0; done < count; done += take)
                    SeasonSimulator.Run(forcing, layouts.AsSpan(done, take), outcomes, null, 300, width);
                self.Refresh();
                if (round >= 0)
                    times[f].Add((self.UserProcessorTime - start).TotalMicroseconds / count);
            }
        }

        for (var f = 0; f < forms.Length; f++)
        {
            var steps = 151.0 * 288;
            Console.WriteLine($"{forms[f].Name,-16} best {times[f].Min(),8:0} median {Table.Median([.. times[f]]),8:0} us per layout-winter, {1e3 * times[f].Min() / steps / Operations:0.000} ns per operation and layout at best");
        }
    }
}
