using System.Globalization;
using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>What is said of the season, in plain sentences.</summary>
internal static class SeasonWords
{
    public static string LeavesOut(SeasonDates season, int month, double meanC) => Written.Sentence(
        $"The season counts {Day(season.StartMonth, season.StartDay)} to {Day(season.EndMonth, season.EndDay)} and leaves out",
        $"{Name(month)}, the coldest month here ({meanC:0.0} °C on average), so nothing here tells how the house fares in winter.");

    private static string Day(int month, int day) => Written.Number(day) + " " + Name(month);

    private static string Name(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);
}
