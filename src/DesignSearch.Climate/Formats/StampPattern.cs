namespace DesignSearch.Climate.Formats;

/// <summary>Reads stamps by a pattern of Y, M, D, h, m and literal characters.</summary>
/// <remarks>
/// A group that stands against another group has exactly its length; one against a literal may be shorter. Seconds at the end are let go;
/// AM and PM at the end are heeded.
/// </remarks>
internal static class StampPattern
{
    /// <summary>Reads a stamp as its day and the minutes since that day began; hour 24 is the end of the day.</summary>
    /// <returns>False when the text does not fit or names no real day.</returns>
    public static bool TryRead(string pattern, ReadOnlySpan<char> text, out DateTime day, out int minutes)
    {
        Span<int> part = stackalloc int[5];
        part.Clear();
        (part[1], part[2]) = (1, 1);
        (day, minutes) = (default, 0);
        text = text.Trim();
        var at = 0;
        for (var p = 0; p < pattern.Length;)
        {
            var kind = "YMDhm".IndexOf(pattern[p], StringComparison.Ordinal);
            if (kind < 0)
            {
                if (at >= text.Length || text[at] != pattern[p])
                    return false;
                (at, p) = (at + 1, p + 1);
                continue;
            }

            var end = p;
            while (end < pattern.Length && pattern[end] == pattern[p])
                end++;
            var tight = end < pattern.Length && "YMDhm".Contains(pattern[end]);
            var from = at;
            var value = 0;
            while (at < text.Length && at - from < end - p && char.IsAsciiDigit(text[at]))
                value = value * 10 + text[at++] - '0';
            if (at == from || (tight && at - from < end - p))
                return false;
            (part[kind], p) = (value, end);
        }

        return HalfDay(ref part[3], ref text, at) && IsTail(text[at..]) && TryMake(part, out day, out minutes);
    }

    // A 12-hour clock: 12 AM is midnight, 12 PM noon.
    private static bool HalfDay(ref int hour, ref ReadOnlySpan<char> text, int at)
    {
        var rest = text[at..].TrimEnd();
        var afternoon = rest.EndsWith("PM", StringComparison.OrdinalIgnoreCase);
        if (!afternoon && !rest.EndsWith("AM", StringComparison.OrdinalIgnoreCase))
            return true;
        text = text[..(at + rest.Length - 2)].TrimEnd();
        if (hour is < 1 or > 12)
            return false;
        hour = hour % 12 + (afternoon ? 12 : 0);
        return true;
    }

    private static bool IsTail(ReadOnlySpan<char> rest) => rest.Length == 0 || (rest[0] is ':' or '.' && rest[1..].IndexOfAnyExceptInRange('0', '9') < 0);

    private static bool TryMake(ReadOnlySpan<int> part, out DateTime day, out int minutes)
    {
        (day, minutes) = (default, 0);
        if (part[0] is < 1 or > 9998 || part[1] is < 1 or > 12 || part[2] < 1 || part[2] > DateTime.DaysInMonth(part[0], part[1]))
            return false;
        if (part[3] is < 0 or > 24 || part[4] is < 0 or > 59 || (part[3] == 24 && part[4] > 0))
            return false;
        day = new DateTime(part[0], part[1], part[2], 0, 0, 0, DateTimeKind.Unspecified);
        minutes = part[3] * 60 + part[4];
        return true;
    }
}
