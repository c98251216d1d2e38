namespace DesignSearch.Climate.Winters;

/// <summary>Puts season dates into years.</summary>
internal static class SeasonCalendar
{
    /// <summary>First counted hour and first hour after the season, when the season starts in a year.</summary>
    public static (DateTime Start, DateTime End) InYear(SeasonDates season, int year)
    {
        var start = Day(year, season.StartMonth, season.StartDay);
        var crosses = (season.EndMonth, season.EndDay).CompareTo((season.StartMonth, season.StartDay)) < 0;
        return (start, Day(crosses ? year + 1 : year, season.EndMonth, season.EndDay).AddDays(1));
    }

    private static DateTime Day(int year, int month, int day) => new(year, month, Math.Min(day, DateTime.DaysInMonth(year, month)), 0, 0, 0, DateTimeKind.Unspecified);
}
