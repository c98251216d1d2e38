using DesignSearch.Climate;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>When a frame swings over, by the clock.</summary>
internal static class SwingTimes
{
    private const int TensPerHour = 6;
    private const int Ten = 10;
    private const int MonthsInYear = 12;

    /// <summary>One time a month of the season, in minutes from midnight, to the ten; months without a dawn are left out.</summary>
    /// <param name="place">Where it stands.</param>
    /// <param name="season">The dates that count.</param>
    /// <param name="hours">Hours from dawn to the swing [h].</param>
    public static IReadOnlyList<(int Month, int Minutes)> Of(Place place, SeasonDates season, double hours)
    {
        var times = new List<(int, int)>();
        for (var month = season.StartMonth; ; month = (month % MonthsInYear) + 1)
        {
            if (Dawn.ClockHour(place, month) is { } dawn)
                times.Add((month, Ten * (int)Math.Round((dawn + hours) * TensPerHour)));
            if (month == season.EndMonth)
                return times;
        }
    }
}
