namespace DesignSearch.Climate;

/// <summary>Asks the sun when the radiation of a file was measured.</summary>
internal static class SunFitter
{
    private const int MostSamples = 9000;

    /// <summary>The shift of the stamps [min] at which global irradiance goes best with the sun above the atmosphere.</summary>
    /// <returns>The shift in steps of 5 within ±12 h, and the correlation there.</returns>
    public static (double ShiftMin, double Correlation) Find(SampleGrid grid, double[] global, SunTrack sun, double zoneHours)
    {
        var stride = Math.Max(1, global.Length / MostSamples) | 1;
        var slots = Enumerable.Range(0, global.Length).Where(i => i % stride == 0 && !double.IsNaN(global[i])).ToArray();
        var light = slots.Select(i => global[i]).ToArray();
        var utc = slots.Select(i => grid.Stamp(i).AddHours(-zoneHours)).ToArray();
        double Fit(double shift) => Correlation(light, [.. utc.Select(t => sun.Horizontal(t.AddMinutes(shift)))]);
        var coarse = Enumerable.Range(-24, 48).Select(s => s * 30.0).MaxBy(Fit);
        var best = Enumerable.Range(-8, 17).Select(s => coarse + s * 5.0).MaxBy(Fit);
        return (best, Fit(best));
    }

    private static double Correlation(double[] a, double[] b)
    {
        var (meanA, meanB) = (a.Average(), b.Average());
        var (ab, aa, bb) = (0.0, 0.0, 0.0);
        for (var i = 0; i < a.Length; i++)
        {
            var (x, y) = (a[i] - meanA, b[i] - meanB);
            (ab, aa, bb) = (ab + x * y, aa + x * x, bb + y * y);
        }

        return aa > 0 && bb > 0 ? ab / Math.Sqrt(aa * bb) : 0;
    }
}
