using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.Tests;

/// <summary>The season's own loop of one layout, carried on under light, air and tank that stay.</summary>
internal static class TestLoop
{
    /// <summary>A loop whose every temperature begins the same.</summary>
    public static LoopBlock<Lane1> At(double startC, LoopTerms<double> coefficients, double stepS = 30) =>
        new([coefficients], stepS, startC, SeasonAssumptions.Default);

    /// <summary>Some steps in a house and an outside air of one temperature, light square on the plane.</summary>
    public static void Run(ref LoopBlock<Lane1> loop, int steps, double airC, double beamWPerM2 = 0, double diffuseWPerM2 = 0, double releaseW = 0)
    {
        loop.Hour(new HourForcing(airC, 0, 0, 0, 0, 1200, 1), Lane1.Of(beamWPerM2), Lane1.Of(diffuseWPerM2), Lane1.Of(1));
        for (var k = 0; k < steps; k++)
        {
            loop.StandingLoss(Lane1.Of(airC));
            loop.Circulate();
            loop.Settle(Lane1.Of(releaseW), Lane1.Of(0));
            loop.Mix();
        }
    }
}
