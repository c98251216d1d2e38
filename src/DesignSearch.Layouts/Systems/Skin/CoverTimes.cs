using DesignSearch.Climate;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Layouts.Systems.Skin;

/// <summary>When a timer closes and opens a night cover: the times that the season is reckoned with.</summary>
internal static class CoverTimes
{
    private const int MinutesPerHour = 60;
    private const int MonthsInYear = 12;

    /// <summary>One pair a month of the season, in minutes from midnight; months without a dawn are left out.</summary>
    /// <param name="place">Where the house stands.</param>
    /// <param name="season">The dates that count.</param>
    public static IReadOnlyList<(int Month, int Closes, int Opens)> Of(Place place, SeasonDates season)
    {
        var times = new List<(int, int, int)>();
        for (var month = season.StartMonth; ; month = (month % MonthsInYear) + 1)
        {
            if (Dawn.TimerHours(place, month) is var (opens, closes))
                times.Add((month, (int)Math.Round(closes * MinutesPerHour), (int)Math.Round(opens * MinutesPerHour)));
            if (month == season.EndMonth)
                return times;
        }
    }
}
