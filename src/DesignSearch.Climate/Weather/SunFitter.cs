using DesignSearch.Climate.Sun;

namespace DesignSearch.Climate.Weather;

/// <summary>Asks the sun when the radiation of a file was measured.</summary>
/// <param name="grid">Stamps in local standard time.</param>
/// <param name="sun">The sun over the place.</param>
/// <param name="zoneHours">Local standard time minus UTC.</param>
internal sealed class SunFitter(SampleGrid grid, SunTrack sun, double zoneHours)
{
    private const int MostSamples = 9000;
    private const int CoarseSamples = 2000;

    /// <summary>The shift of the stamps [min] at which global irradiance goes best with the sun above the atmosphere.</summary>
    /// <param name="from">First slot.</param>
    /// <param name="to">Slot after the last.</param>
    /// <returns>The shift in steps of 5 within ±12 h, and the correlation there; NaN when there is too little light to tell.</returns>
    public (double ShiftMin, double Correlation) Find(int from, int to)
    {
        var coarse = Take(from, to, CoarseSamples);
        if (coarse.Light.Length < 48)
            return (double.NaN, 0);
        var near = Enumerable.Range(-24, 48).Select(s => s * 30.0).MaxBy(s => Fit(coarse, s));
        var fine = Take(from, to, MostSamples);
        var best = Enumerable.Range(-6, 13).Select(s => near + s * 5.0).MaxBy(s => Fit(fine, s));
        return (best, Fit(fine, best));
    }

    private (double[] Light, double[] Days) Take(int from, int to, int most)
    {
        var global = grid.Values[WeatherField.Global];
        var stride = Math.Max(1, (to - from) / most) | 1;
        var (light, days) = (new List<double>(), new List<double>());
        var first = sun.DaysAt(grid.Stamp(0).AddHours(-zoneHours));
        for (var i = from; i < to; i += stride)
        {
            if (double.IsNaN(global[i]))
                continue;
            light.Add(global[i]);
            days.Add(first + i * grid.StepMin / 1440.0);
        }

        return ([.. light], [.. days]);
    }

    private double Fit((double[] Light, double[] Days) samples, double shiftMin)
    {
        var (light, days) = samples;
        var n = light.Length;
        var (a, b, ab, aa, bb) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < n; i++)
        {
            var (x, y) = (light[i], sun.Horizontal(days[i] + shiftMin / 1440));
            (a, b, ab, aa, bb) = (a + x, b + y, ab + x * y, aa + x * x, bb + y * y);
        }

        var (varA, varB) = (aa - a * a / n, bb - b * b / n);
        return varA > 0 && varB > 0 ? (ab - a * b / n) / Math.Sqrt(varA * varB) : 0;
    }
}
