namespace DesignSearch.Climate.Formats;

/// <summary>Reads the stamps of a file row by row, with the memory that some quirks need.</summary>
internal sealed class RowClock
{
    private DateTime lastDay;
    private int lastMinutes;
    private int read;
    private int zoned;

    private RowClock(string pattern, bool isTypical)
    {
        (Pattern, IsTypical) = (pattern, isTypical);
    }

    /// <summary>The pattern that fits the rows.</summary>
    public string Pattern { get; }

    /// <summary>True when the months come from years of their own.</summary>
    public bool IsTypical { get; }

    /// <summary>True when every stamp read named its zone; they were all brought to UTC.</summary>
    public bool IsUtc => zoned > 0 && zoned == read;

    /// <summary>True when some stamps named their zone and others did not.</summary>
    public bool IsMixed => zoned > 0 && zoned < read;

    /// <summary>Years seen on the stamps.</summary>
    public SortedSet<int> Years { get; } = [];

    /// <summary>Chooses the pattern that reads most rows with the fewest steps back in time, and tells a typical year by its jumping years.</summary>
    public static RowClock For(FormatMap map, YearKind years, string[] stamps)
    {
        var pattern = map.TimePatterns[0];
        if (stamps.Length > 0 && StampPattern.LooksLikeEpoch(stamps[^1]) && !map.TimePatterns.Any(p => StampPattern.TryRead(p, stamps[^1], out _, out _, out _)))
            return new(StampPattern.Epoch, years == YearKind.Typical);
        if (map.TimePatterns.Count > 1)
            pattern = map.TimePatterns.MaxBy(p => Score(p, stamps))!;
        var typical = years == YearKind.Typical || (years == YearKind.AsTheyCome && YearsJump(pattern, stamps));
        return new(pattern, typical);
    }

    /// <summary>Reads a stamp. Typical years land in the nominal year, whatever year each month came from; their 29th of February is no stamp.</summary>
    /// <returns>False when the text is no stamp.</returns>
    public bool TryRead(string text, out DateTime? stamp)
    {
        stamp = null;
        if (!StampPattern.TryRead(Pattern, text, out var day, out var minutes, out var offsetMin))
            return false;
        read++;
        zoned += offsetMin is null ? 0 : 1;
        if (minutes == 0 && day == lastDay && lastMinutes >= 23 * 60)
            minutes = 24 * 60;
        (lastDay, lastMinutes) = (day, minutes);
        Years.Add(day.Year);
        if (!IsTypical)
            stamp = day.AddMinutes(minutes - (offsetMin ?? 0));
        else if (day is not { Month: 2, Day: 29 })
            stamp = new DateTime(TableReader.NominalYear, day.Month, day.Day, 0, 0, 0, DateTimeKind.Unspecified).AddMinutes(minutes - (offsetMin ?? 0));
        return true;
    }

    private static double Score(string pattern, string[] stamps)
    {
        var (read, back) = (0, 0);
        var last = DateTime.MinValue;
        var step = Math.Max(1, stamps.Length / 4000);
        for (var i = 0; i < stamps.Length; i += step)
        {
            if (!StampPattern.TryRead(pattern, stamps[i], out var day, out var minutes, out _))
                continue;
            var stamp = day.AddMinutes(minutes);
            back += stamp < last || (last > DateTime.MinValue && stamp > last.AddDays(20)) ? 1 : 0;
            (read, last) = (read + 1, stamp);
        }

        return read - 5.0 * back;
    }

    private static bool YearsJump(string pattern, string[] stamps)
    {
        var last = 0;
        for (var i = 0; i < stamps.Length; i += 12)
        {
            if (!StampPattern.TryRead(pattern, stamps[i], out var day, out _, out _))
                continue;
            if (last != 0 && (day.Year < last || day.Year > last + 1))
                return true;
            last = day.Year;
        }

        return false;
    }
}
