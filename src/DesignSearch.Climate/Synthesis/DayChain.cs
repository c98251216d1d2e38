using DesignSearch.Climate.Stations;
using MathNet.Numerics.LinearAlgebra;

namespace DesignSearch.Climate.Synthesis;

/// <summary>
/// Day-to-day chain of mean temperature, depth of the lowest hour under it, and clearness, as standardised residuals: each remembers itself,
/// and all three are tied as the place ties them (after Richardson, Water Resources Research 17 (1981)).
/// </summary>
internal sealed class DayChain
{
    private const double DepthMemory = 0.42;
    private const double ClearMemory = 0.41;

    // A night lies between two days and is clear where either is: the depth of a day's lowest hour is tied to the clearness of the day before by some 0.77 of its
    // tie to the day's own (3.8/5.1 over ten open winters), the daily mean by all of it.
    private const double DepthDayBefore = 0.8;

    // Deep nights are clear ones: tied by 0.43 to 0.72 in five of seven open station files, by 0.1 in the two whose winters stay about or
    // below freezing, where air masses alone decide.
    private const double LeastDepthClearTie = 0.1;
    private const double MostDepthClearTie = 0.8;
    private const double MostTie = 0.8;
    private const int DaysOfMonth = 30;
    private readonly Matrix<double> memory;
    private readonly Matrix<double> shock;

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
        (memory, shock) = Process([Lag(spread.MeanLag), DepthMemory, ClearMemory], meanDepth, meanClear, depthClear);
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
        var e = Vector<double>.Build.Dense([random.NextNormal(), random.NextNormal(), random.NextNormal()]);
        var next = memory * Vector<double>.Build.Dense([x.Mean, x.Depth, x.Clear]) + shock * e;
        return (next[0], next[1], next[2]);
    }

    // Within one month the correlation with the day before comes out too low by about (1 + 4 r)/n (Marriott and Pope, Biometrika 41 (1954)).
    private static double Lag(double lagInMonth) => Math.Clamp((lagInMonth + 1.0 / DaysOfMonth) / (1 - 4.0 / DaysOfMonth), 0, 0.9);

    // A process of first order that keeps the ties of a day and of a day with the one before; ties that contradict each other are loosened until they do not.
    private static (Matrix<double> Memory, Matrix<double> Shock) Process(double[] own, double meanDepth, double meanClear, double depthClear)
    {
        for (var hold = 1.0; ; hold *= 0.95)
        {
            var (md, mc, dc) = (hold * meanDepth, hold * meanClear, hold * depthClear);
            var same = Matrix<double>.Build.DenseOfArray(new[,] { { 1, md, mc }, { md, 1, dc }, { mc, dc, 1 } });
            var before = Matrix<double>.Build.DenseOfDiagonalArray(own) * same;
            (before[0, 2], before[1, 2]) = (mc, DepthDayBefore * dc);
            if (!IsPositive(same))
                continue;
            var memory = before * same.Inverse();
            var rest = same - memory * before.Transpose();
            if (IsPositive(rest))
                return (memory, rest.Cholesky().Factor);
        }
    }

    private static bool IsPositive(Matrix<double> m) =>
        m[0, 0] > 0 && m.SubMatrix(0, 2, 0, 2).Determinant() > 0 && m.Determinant() > 0;
}
