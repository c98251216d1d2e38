using System.Globalization;
using DesignSearch.Climate.Winters;
using DesignSearch.Files.Toml;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads [season].</summary>
internal static class SeasonReading
{
    private const int LeastDays = 14;

    public static SeasonDates Dates(TomlTable? table, double latitudeDeg)
    {
        var (start, end) = latitudeDeg >= 0 ? ((11, 1), (3, 31)) : ((5, 1), (9, 30));
        if (table is null)
            return new SeasonDates(start.Item1, start.Item2, end.Item1, end.Item2);
        start = Day(table, "start", start);
        end = Day(table, "end", end);
        var first = new DateTime(2001, start.Item1, start.Item2);
        var last = new DateTime(2001, end.Item1, end.Item2);
        var days = (int)((last < first ? last.AddYears(1) : last) - first).TotalDays + 1;
        if (days < LeastDays)
            table.FaultAt("end", FormattableString.Invariant($"{days} days"), FormattableString.Invariant($"a season of {LeastDays} days or more"));
        var dates = new SeasonDates(start.Item1, start.Item2, end.Item1, end.Item2, table.Whole("warm_up_days", 1, 60, 30));
        table.ReportUnknown();
        return dates;
    }

    private static (int Month, int Day) Day(TomlTable table, string key, (int, int) usual)
    {
        if (!table.Has(key))
            return usual;
        var text = table.Text(key, 20);
        if (DateTime.TryParseExact("2001-" + text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
            return (date.Month, date.Day);
        if (text.Length > 0)
            table.FaultAt(key, text, $"a day as month-day, for instance \"11-01\" for the first of November, for '{key}'");
        return usual;
    }
}
