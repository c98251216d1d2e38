using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Makes the light of hours whose cover of the sky is known.</summary>
internal static class CloudLight
{
    private const int HoursOfDay = 24;
    private const double LeastFactor = 0.5;
    private const double MostFactor = 1.5;

    /// <summary>Global and diffuse irradiance on the level, hour by hour [W/m²]; 0 where the cover is not known.</summary>
    /// <param name="sinAltitude">Sine of the sun's altitude at mid-hour.</param>
    /// <param name="cover">0 to 1, or NaN.</param>
    public static (double[] Global, double[] Diffuse) Of(double[] sinAltitude, double[] cover)
    {
        var (global, diffuse) = (new double[cover.Length], new double[cover.Length]);
        for (var h = 0; h < cover.Length; h++)
        {
            if (double.IsNaN(cover[h]) || sinAltitude[h] <= 0)
                continue;
            global[h] = CloudSky.GlobalWPerM2(sinAltitude[h], cover[h]);
            diffuse[h] = global[h] * CloudSky.DiffuseShare(cover[h]);
        }

        return (global, diffuse);
    }

    /// <summary>Scales every month of the year by one factor, 0.5 to 1.5, so that over all its years it has the monthly mean; dull and bright years stay apart.</summary>
    /// <param name="days">Of the hours.</param>
    /// <param name="global">Scaled in place.</param>
    /// <param name="diffuse">Scaled in place.</param>
    /// <param name="monthly">The means.</param>
    /// <param name="known">Days whose light counts.</param>
    public static void ScaleToMonths(SyntheticDays days, double[] global, double[] diffuse, MonthlyClimate monthly, bool[] known)
    {
        var (sum, count) = (new double[13], new int[13]);
        for (var d = 0; d < days.Count; d++)
        {
            if (!known[d])
                continue;
            count[days.Month(d)]++;
            for (var h = HoursOfDay * d; h < HoursOfDay * (d + 1); h++)
                sum[days.Month(d)] += global[h];
        }

        for (var h = 0; h < global.Length; h++)
        {
            var month = days.Month(h / HoursOfDay);
            var factor = sum[month] > 0
                ? Math.Clamp(monthly.Months[month - 1].GhiKwhPerM2Day * 1000 * count[month] / sum[month], LeastFactor, MostFactor)
                : 1;
            (global[h], diffuse[h]) = (global[h] * factor, diffuse[h] * factor);
        }
    }
}
