using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;
using DesignSearch.Physics;

namespace DesignSearch.Climate.Stations;

/// <summary>What twelve means, latitude and height say of a climate, as numbers that can be compared. South of the equator the year is turned by six months.</summary>
internal static class ClimateFeatures
{
    private static readonly int[] Cold = [10, 11, 0, 1, 2];
    private static readonly int[] Warm = [5, 6, 7];
    private static readonly double[] MiddleDay = [16, 46, 75, 105, 136, 166, 197, 228, 258, 289, 319, 350];

    /// <summary>Month of the calendar for a month of the northern year, both from 0.</summary>
    /// <param name="place">The place.</param>
    /// <param name="month">0 to 11.</param>
    public static int Calendar(Place place, int month) => place.LatitudeDeg < 0 ? (month + 6) % 12 : month;

    /// <summary>Fifteen figures of a climate, none of them scaled.</summary>
    /// <param name="place">The place.</param>
    /// <param name="months">Its twelve means.</param>
    public static double[] Of(Place place, IReadOnlyList<MonthMeans> months)
    {
        MonthMeans At(int month) => months[Calendar(place, month)];
        double Over(int[] span, Func<int, double> figure) => span.Average(figure);
        double Mean(int m) => At(m).MeanC;
        double Depth(int m) => At(m).MeanC - At(m).LowestHourC;
        double Clearness(int m) => At(m).GhiKwhPerM2Day * Energy.JoulesPerKwh
            / Math.Max(2e5, DailySun.ExtraterrestrialJPerM2(place.LatitudeDeg, MiddleDay[Calendar(place, m)]));
        return
        [
            Over(Cold, Mean), months.Max(m => m.MeanC) - months.Min(m => m.MeanC), Over(Cold, Depth), Over(Cold, Clearness),
            Over(Cold, m => At(m).HumidityPercent), Over(Cold, m => At(m).WindMPerS), Math.Abs(place.LatitudeDeg), place.ElevationM / 1000,
            Over(Warm, Depth), Over(Warm, Clearness), Over(Warm, m => At(m).HumidityPercent), Over([2, 3, 4], Mean) - Over([8, 9, 10], Mean),
            Over(Cold, m => Humidity.DewPointC(At(m).MeanC, At(m).HumidityPercent)), Over(Warm, m => At(m).WindMPerS), Over(Warm, Mean),
        ];
    }
}
