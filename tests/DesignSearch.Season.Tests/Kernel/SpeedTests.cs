using System.Diagnostics;
using Xunit;
using Xunit.Abstractions;

namespace DesignSearch.Season.Tests;

public sealed class SpeedTests(ITestOutputHelper output)
{
    [SkippableFact]
    public void A_winter_takes_milliseconds()
    {
        Skip.IfNot(Environment.GetEnvironmentVariable("DESIGNSEARCH_LONG") == "1", "Set DESIGNSEARCH_LONG=1 to measure.");
        var winter = MadeWinter.Of(181, 30);
        var (forcing, layout) = (MadeWinter.Forcing(winter), new LayoutCase(MadeLayout.Full, MadeWinter.Plane(winter)));
        var best = double.PositiveInfinity;
        for (var k = 0; k < 40; k++)
        {
            var watch = Stopwatch.StartNew();
            SeasonSimulator.Run(forcing, layout);
            best = Math.Min(best, watch.Elapsed.TotalMilliseconds);
        }

        output.WriteLine(FormattableString.Invariant($"{best:0.00} ms for {winter.Hours} hours"));
        Assert.InRange(best, 0, 40);
    }
}
