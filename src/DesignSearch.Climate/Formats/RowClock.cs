namespace DesignSearch.Climate;

/// <summary>Reads the stamps of a file row by row, with the memory that some quirks need.</summary>
internal sealed class RowClock(FormatMap map)
{
    private DateTime lastDay;
    private int lastMinutes;

    /// <summary>Reads a stamp. Typical years land in the nominal year, whatever year each month came from.</summary>
    public bool TryRead(string text, out DateTime stamp)
    {
        stamp = default;
        if (!StampPattern.TryRead(map.TimePattern, text, out var day, out var minutes))
            return false;
        if (minutes == 0 && day == lastDay && lastMinutes >= 23 * 60)
            minutes = 24 * 60;
        (lastDay, lastMinutes) = (day, minutes);
        if (map.TypicalYear)
            day = new DateTime(TableReader.NominalYear, day.Month, day is { Month: 2, Day: 29 } ? 28 : day.Day, 0, 0, 0, DateTimeKind.Unspecified);
        stamp = day.AddMinutes(minutes);
        return true;
    }
}
