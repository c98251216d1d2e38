using System.Globalization;
using System.Text.RegularExpressions;

namespace DesignSearch.Files;

/// <summary>Guesses which number a person meant who wrote a sign, a word, a comma or blanks with it.</summary>
public static partial class NumberHint
{
    /// <summary>A clause to put behind an expectation: <c> (write 1500, without sign)</c>, or nothing.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="inQuotes">True where it stood in quotes that do not belong there.</param>
    public static string Of(string text, bool inQuotes = false)
    {
        var (number, without) = Meant(text);
        return (number, without, inQuotes) switch
        {
            (null, _, _) => "",
            (_, "", true) => $" (write {number}, without quotes)",
            (_, "", false) => $" (write {number})",
            (_, _, true) => $" (write {number}, without quotes and {without})",
            _ => $" (write {number}, without {without})",
        };
    }

    /// <summary>The number that is meant, as it should be written, and what does not belong there; null where none can be told.</summary>
    public static (string? Number, string Without) Meant(string text)
    {
        var trimmed = text.Trim().Replace('\u2212', '-');
        var match = Around().Match(trimmed.StartsWith('.') ? "0" + trimmed : trimmed);
        if (!match.Success)
            return (null, "");
        var (before, digits, behind) = (match.Groups["before"].Value, match.Groups["digits"].Value.Trim(), match.Groups["behind"].Value);
        var beside = before + behind;
        var without = beside.Length == 0 ? "" : beside.Any(char.IsLetter) ? "words" : "sign";
        var plain = Plain(digits);
        if (plain is null)
            return (null, "");
        return (plain, without.Length > 0 ? without : Grouped().IsMatch(digits) ? "anything between the digits" : "");
    }

    // The last of two kinds of signs is the decimal one; alone, a comma is.
    private static string? Plain(string digits)
    {
        var close = Grouped().Replace(digits, "");
        var (comma, point) = (close.LastIndexOf(','), close.LastIndexOf('.'));
        if (comma >= 0 && point >= 0)
            close = comma > point ? close.Replace(".", "", StringComparison.Ordinal).Replace(',', '.') : close.Replace(",", "", StringComparison.Ordinal);
        else if (comma >= 0)
            close = close.Replace(',', '.');
        return PlainNumber.TryRead(close, out var value) ? value.ToString("0.############", CultureInfo.InvariantCulture) : null;
    }

    [GeneratedRegex(@"^(?<before>[^\d+-]*)(?<digits>[+-]?\d[\d.,' \u00A0\u202F]*)(?<behind>[^\d]*)$")]
    private static partial Regex Around();

    [GeneratedRegex(@"['\s\u00A0\u202F]")]
    private static partial Regex Grouped();
}
