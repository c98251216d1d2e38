using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using DesignSearch.Files;

namespace DesignSearch.Cli.Terminal;

/// <summary>Options that take a number, read the same way on every machine.</summary>
internal static class NumberOption
{
    /// <summary>An optional whole number; null when it is not given.</summary>
    public static Option<long?> Whole(string name, string text, string help, long min, long max) => new(name)
    {
        Description = text,
        HelpName = help,
        CustomParser = result => (long?)Parse(result, name, min, max, whole: true),
    };

    /// <summary>An optional number; null when it is not given.</summary>
    public static Option<double?> Real(string name, string text, string help, double min, double max) => new(name)
    {
        Description = text,
        HelpName = help,
        CustomParser = result => Parse(result, name, min, max, whole: false),
    };

    private static double? Parse(ArgumentResult result, string name, double min, double max, bool whole)
    {
        var word = result.Tokens.Count > 0 ? result.Tokens[^1].Value : "";
        if (PlainNumber.TryRead(word, out var value) && value >= min && value <= max && (!whole || value == Math.Floor(value)))
            return value;
        result.AddError(string.Create(
            CultureInfo.InvariantCulture,
            $"{name} takes {(whole ? "a whole number" : "a number")} from {min} to {max}{(whole ? "" : " with a decimal point")}; "
                + $"got '{word}'."));
        return null;
    }
}
