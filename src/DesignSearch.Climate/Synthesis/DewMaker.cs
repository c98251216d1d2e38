using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Dew point of synthetic days: near the lowest temperature, so far off that each month meets its mean humidity.</summary>
internal static class DewMaker
{
    public static double[] Make(SyntheticDays days, double[] air, MonthlyClimate climate)
    {
        var dew = new double[air.Length];
        foreach (var month in days.Months())
        {
            int[] span = [.. month];
            var target = climate.Months[days.Month(span[0]) - 1].HumidityPercent;
            var (low, high) = (-20.0, 10.0);
            for (var pass = 0; pass < 40; pass++)
            {
                var offset = (low + high) / 2;
                foreach (var d in span)
                {
                    for (var h = 24 * d; h < 24 * d + 24; h++)
                        dew[h] = Math.Min(air[h], days.Low[d] + offset);
                }

                (low, high) = span.Average(d => Enumerable.Range(24 * d, 24).Average(h => Humidity.RelativePercent(air[h], dew[h]))) < target ? (offset, high) : (low, offset);
            }
        }

        return dew;
    }
}
