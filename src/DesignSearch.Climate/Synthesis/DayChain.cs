using DesignSearch.Climate.Stations;

namespace DesignSearch.Climate.Synthesis;

/// <summary>
/// Day-to-day chain of mean temperature, depth of the lowest hour under it, and clearness, as standardised residuals: each remembers itself,
/// and all three are tied as the place ties them (after Richardson, Water Resources Research 17 (1981), with a diagonal memory).
/// </summary>
internal sealed class DayChain
{
    private const double DepthMemory = 0.40;
    private const double ClearMemory = 0.37;

    // Deep nights are clear ones: tied by 0.43 to 0.72 in five of seven open station files, by 0.1 in the two whose winters stay about or
    // below freezing, where air masses alone decide.
    private const double LeastDepthClearTie = 0.1;
    private const double MostDepthClearTie = 0.8;
    private const double MostTie = 0.8;
    private const int DaysOfMonth = 30;
    private readonly double[] memory;
    private readonly double[] shock;

    /// <summary>The chain of a month.</summary>
    /// <param name="spread">The place's figures.</param>
    /// <param name="month">0 to 11.</param>
    /// <param name="depthSdK">Spread of the depth of the lowest hour under the daily mean [K].</param>
    /// <param name="meanC">The month's mean [°C].</param>
    public DayChain(StationSpread spread, int month, double depthSdK, double meanC)
    {
        var depthClear = Math.Clamp(0.45 + 0.06 * meanC, LeastDepthClearTie, MostDepthClearTie);
        var (mean, low) = (spread.MeanSdK[month], spread.LowSdK[month]);
        var meanDepth = Math.Clamp((mean * mean + depthSdK * depthSdK - low * low) / (2 * mean * depthSdK), -0.5, 0.5);
        var meanClear = Math.Clamp((spread.ClearLowTie * low + depthClear * depthSdK) / mean, -MostTie, MostTie);
        memory = [Process(spread.MeanLag), DepthMemory, ClearMemory];
        shock = Shocks(meanDepth, meanClear, depthClear);
    }

    /// <summary>
    /// Spread of the depth of the lowest hour under the daily mean: at least what makes the lows stray more than the means, else from its
    /// mean and the spread of the daily mean, which fits seven open station files to 0.3 K.
    /// </summary>
    /// <param name="depthK">Mean depth [K].</param>
    /// <param name="meanSdK">Spread of the daily mean [K].</param>
    /// <param name="lowSdK">Spread of the daily lowest [K].</param>
    public static double DepthSdK(double depthK, double meanSdK, double lowSdK) =>
        Math.Max(0.4 + 0.22 * depthK + 0.12 * meanSdK, Math.Sqrt(Math.Max(0, lowSdK * lowSdK - meanSdK * meanSdK)));

    /// <summary>One day further.</summary>
    public (double Mean, double Depth, double Clear) Next((double Mean, double Depth, double Clear) x, XoshiroStream random)
    {
        var (e1, e2, e3) = (random.NextNormal(), random.NextNormal(), random.NextNormal());
        return (
            memory[0] * x.Mean + shock[0] * e1,
            memory[1] * x.Depth + shock[1] * e1 + shock[2] * e2,
            memory[2] * x.Clear + shock[3] * e1 + shock[4] * e2 + shock[5] * e3);
    }

    // Within one month the correlation with the day before comes out too low by about (1 + 4 r)/n (Marriott and Pope, Biometrika 41 (1954)).
    private static double Process(double lagInMonth) => Math.Clamp((lagInMonth + 1.0 / DaysOfMonth) / (1 - 4.0 / DaysOfMonth), 0, 0.9);

    // Lower triangle of the shocks that keep the ties; ties that contradict each other are loosened until they do not.
    private double[] Shocks(double meanDepth, double meanClear, double depthClear)
    {
        for (var hold = 1.0; ; hold *= 0.95)
        {
            double Tie(double tie, int i, int j) => hold * tie * (1 - memory[i] * memory[j]);
            var a = Math.Sqrt(1 - memory[0] * memory[0]);
            var (b, d) = (Tie(meanDepth, 0, 1) / a, Tie(meanClear, 0, 2) / a);
            var c = 1 - memory[1] * memory[1] - b * b;
            if (c > 0)
            {
                var e = (Tie(depthClear, 1, 2) - b * d) / Math.Sqrt(c);
                var f = 1 - memory[2] * memory[2] - d * d - e * e;
                if (f > 0)
                    return [a, b, Math.Sqrt(c), d, e, Math.Sqrt(f)];
            }
        }
    }
}
