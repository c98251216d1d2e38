using System.Globalization;

namespace DesignSearch.Climate.Formats;

/// <summary>Reads stamps by a pattern of Y, M, D, h, m and literal characters.</summary>
/// <remarks>
/// A group that stands against another group has exactly its length; one against a literal may be shorter. Seconds at the end are let go;
/// AM and PM at the end are heeded, and so is a zone: Z, or an offset from UTC such as +13:00, -0330 or +01.
/// </remarks>
internal static class StampPattern
{
    /// <summary>The pattern of seconds since 1970-01-01 00:00 UTC, or thousandths of them.</summary>
    public const string Epoch = "seconds since 1970 UTC";

    private const double MostSeconds = 1e11;
    private const int LastYear = 2200;

    /// <summary>Reads a stamp as its day and the minutes since that day began; hour 24 is the end of the day.</summary>
    /// <param name="pattern">As above, or <see cref="Epoch"/>.</param>
    /// <param name="text">The stamp.</param>
    /// <param name="day">Its day.</param>
    /// <param name="minutes">Minutes since the day began.</param>
    /// <param name="offsetMin">What the stamp itself says its clock is ahead of UTC [min]; null when it is silent.</param>
    /// <returns>False when the text does not fit or names no real day.</returns>
    public static bool TryRead(string pattern, ReadOnlySpan<char> text, out DateTime day, out int minutes, out int? offsetMin)
    {
        offsetMin = null;
        if (ReferenceEquals(pattern, Epoch))
        {
            offsetMin = 0;
            return TryReadEpoch(text, out day, out minutes);
        }

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

        return Zone(ref text, at, out offsetMin) && HalfDay(ref part[3], ref text, at) && IsTail(text[at..]) && TryMake(part, out day, out minutes);
    }

    /// <summary>True for a whole number of nine digits and more, which no clock of people writes.</summary>
    public static bool LooksLikeEpoch(string text) => text.AsSpan().TrimStart('-') is { Length: >= 9 and <= 13 } digits && digits.IndexOfAnyExceptInRange('0', '9') < 0;

    private static bool TryReadEpoch(ReadOnlySpan<char> text, out DateTime day, out int minutes)
    {
        (day, minutes) = (default, 0);
        if (!double.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var seconds))
            return false;
        seconds = Math.Abs(seconds) >= MostSeconds ? seconds / 1000 : seconds;
        if (Math.Abs(seconds) > MostSeconds)
            return false;
        var stamp = new DateTime(1970, 1, 1, 0, 0, 0, DateTimeKind.Unspecified).AddSeconds(seconds);
        (day, minutes) = (stamp.Date, (int)stamp.TimeOfDay.TotalMinutes);
        return stamp.Year < LastYear;
    }

    // Cuts the zone off the end of a stamp that has a time of day.
    private static bool Zone(ref ReadOnlySpan<char> text, int at, out int? offsetMin)
    {
        offsetMin = null;
        var rest = text[at..];
        if (rest.TrimEnd().EndsWith('Z') || rest.TrimEnd().EndsWith('z'))
        {
            offsetMin = 0;
            text = text[..(at + rest.TrimEnd().Length - 1)].TrimEnd();
            return true;
        }

        var sign = rest.IndexOfAny('+', '-');
        if (sign < 0)
            return true;
        var zone = rest[(sign + 1)..].TrimEnd();
        if (zone.Length is not (2 or 4 or 5) || (zone.Length == 5 && zone[2] != ':')
            || !int.TryParse(zone[..2], NumberStyles.None, CultureInfo.InvariantCulture, out var hours) || hours > 14)
            return false;
        var past = 0;
        if (zone.Length > 2 && (!int.TryParse(zone[^2..], NumberStyles.None, CultureInfo.InvariantCulture, out past) || past > 59))
            return false;
        offsetMin = (rest[sign] == '-' ? -1 : 1) * (hours * 60 + past);
        text = text[..(at + sign)].TrimEnd();
        return true;
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

    // Seconds and their fraction.
    private static bool IsTail(ReadOnlySpan<char> rest)
    {
        if (rest.Length == 0)
            return true;
        var dot = rest[1..].IndexOf('.');
        return rest[0] is ':' or '.' && (dot < 0 || rest[0] == ':')
            && (dot < 0 ? rest[1..] : rest[1..(dot + 1)]).IndexOfAnyExceptInRange('0', '9') < 0
            && (dot < 0 || rest[(dot + 2)..].IndexOfAnyExceptInRange('0', '9') < 0);
    }

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
