using System.Text.RegularExpressions;

namespace DesignSearch.Files.Toml;

/// <summary>Says in plain words what is wrong with a line that the parser refuses, at the place where it was made.</summary>
internal static partial class TomlLine
{
    private const int LongestUnit = 6;

    /// <summary>True for a line that is surely right: blank, a remark, a heading, or a key with one plain value.</summary>
    public static bool IsPlain(string line) => Plain().IsMatch(line);

    /// <summary>What is wrong with a line.</summary>
    /// <param name="line">The line.</param>
    /// <returns>The column, from 1, and what should stand there; null where these rules do not know.</returns>
    public static (int Column, string Expected)? Explain(string line)
    {
        if (line.AsSpan().IndexOfAny('\u201C', '\u201D', '\u201E') is >= 0 and var curly)
            return (curly + 1, TomlWords.PlainQuotes);
        var first = line.Length - line.TrimStart().Length + 1;
        var equals = Code(line).IndexOf('=', StringComparison.Ordinal);
        if (equals < 0)
            return (first, line.TrimStart().StartsWith('[') ? TomlWords.CloseHeading : Pair().IsMatch(line) ? TomlWords.EqualsSign : TomlWords.Remark);
        var key = line[..equals].Trim();
        if (key.Length == 0)
            return (first, TomlWords.NoKey);
        if (!Key().IsMatch(key))
            return (first, key.Contains(' ', StringComparison.Ordinal) ? TomlWords.Remark : TomlWords.NoKey);
        var rest = Code(line)[(equals + 1)..];
        var column = equals + 2 + (rest.Length - rest.TrimStart().Length);
        var value = rest.Trim();
        return value.Length == 0 ? (equals + 1, TomlWords.NoValue) : Value(value, column);
    }

    private static (int Column, string Expected)? Value(string value, int column)
    {
        if (FlagLike().Match(value) is { Success: true } flag)
            return flag.Groups["behind"].Value.Trim().Length > 0
                ? (column + flag.Groups["behind"].Index + 1, TomlWords.RemarkBehind)
                : (column, TomlWords.FlagWord(value));
        if (value[0] is '"' or '\'' or '[' or '{')
            return Quoted(value, column);
        if (DecimalComma().IsMatch(value))
            return (column, $"a number with a decimal point, for instance 4.5{NumberHint.Of(value)}");
        if (DayAndMonth().IsMatch(value))
            return (column, TomlWords.InQuotes(value));
        if (Counted().Match(value) is { Success: true } counted && NumberHint.Meant(counted.Groups["number"].Value) is ({ } number, var between))
        {
            var behind = counted.Groups["behind"].Value.Trim();
            if (behind.Length == 0)
                return (column, "a number" + (between.Length > 0 ? $" (write {number}, without {between})" : $" (write {number})"));
            if (behind.Contains(' ', StringComparison.Ordinal) || behind.Length > LongestUnit)
                return (column + counted.Groups["behind"].Index, TomlWords.RemarkBehind);
            return (column, Money().IsMatch(behind) ? $"a number (write {number}, without sign)" : $"a number (write {number} alone, without '{behind}')");
        }

        if (NumberHint.Meant(value) is ({ } meant, "sign"))
            return (column, $"a number (write {meant}, without sign)");
        return value[^1] is '"' or '\'' ? (column, TomlWords.OpenQuote) : (column, TomlWords.InQuotes(value));
    }

    private static (int Column, string Expected)? Quoted(string value, int column)
    {
        if (value[0] is '"' && value.Contains('\\', StringComparison.Ordinal))
            return (column + value.IndexOf('\\', StringComparison.Ordinal), TomlWords.Backslash);
        if (Closed().Match(value) is { Success: true } closed && closed.Groups["behind"].Value.Trim().Length > 0)
            return (column + value.Length - closed.Groups["behind"].Value.TrimStart().Length, TomlWords.RemarkBehind);
        return value[0] == '[' && Gap().Match(value) is { Success: true } gap ? (column + gap.Index + 1, TomlWords.Commas) : null;
    }

    // What stands in front of a remark; a # inside quotes is none.
    private static string Code(string line)
    {
        var quote = '\0';
        for (var i = 0; i < line.Length; i++)
        {
            if (quote == '\0' && line[i] == '#')
                return line[..i];
            if (line[i] is '"' or '\'' && (quote == '\0' || quote == line[i]))
                quote = quote == '\0' ? line[i] : '\0';
        }

        return line;
    }

    [GeneratedRegex(
        """^\s*(#.*|(\[\s*[\w-]+(\.[\w-]+)*\s*\]|\[\[\s*[\w-]+(\.[\w-]+)*\s*\]\])\s*(#.*)?|"""
            + """[\w-]+\s*=\s*("[^"\\]*"|-?(0|[1-9]\d*)(\.\d+)?|true|false)\s*(#.*)?)?$""",
        RegexOptions.NonBacktracking)]
    private static partial Regex Plain();

    [GeneratedRegex("""^\s*[A-Za-z][\w-]*(\s*:\s*\S|\s+("|-?\d|true|false))""", RegexOptions.NonBacktracking)]
    private static partial Regex Pair();

    [GeneratedRegex("""^([\w-]+|"[^"]*"|'[^']*')(\s*\.\s*([\w-]+|"[^"]*"))*$""", RegexOptions.NonBacktracking)]
    private static partial Regex Key();

    [GeneratedRegex(@"^(yes|no|on|off|true|false|y|n)(?<behind>\s.*)?$", RegexOptions.IgnoreCase)]
    private static partial Regex FlagLike();

    [GeneratedRegex(@"^[+-]?\d+,\d+$")]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"^\d{1,2}([.-])\d{1,2}\1?$")]
    private static partial Regex DayAndMonth();

    [GeneratedRegex(@"^(?<number>[+\-\u2212]?(\d[\d.,' \u00A0\u202F]*|\.\d+))(?<behind>[^\d=]*.*)$")]
    private static partial Regex Counted();

    [GeneratedRegex(@"^([^\w\s]+|[A-Z]{3})$")]
    private static partial Regex Money();

    [GeneratedRegex("""^("[^"]*"|'[^']*'|\[[^\]]*\]|\{[^}]*\})(?<behind>.*)$""")]
    private static partial Regex Closed();

    [GeneratedRegex("""["\d]\s+["\d-]""")]
    private static partial Regex Gap();
}
