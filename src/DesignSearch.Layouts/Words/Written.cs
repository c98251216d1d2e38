using System.Globalization;
using System.Text;

namespace DesignSearch.Layouts.Words;

/// <summary>
/// Figures as plain text for sentences: unit behind a space, singular and plural right, nothing that rounds to zero is written as "-0".
/// A figure that is not finite is a dash. Halves round away from zero. What shows the text may set gaps and signs of its own.
/// </summary>
public static class Written
{
    private const int MinutesPerHour = 60;

    private const string Nothing = "–";

    private static readonly FigureFormat Figures = new();

    /// <summary>
    /// A sentence with figures in it: each as its own format says, by the rules of this page. Lazy until it is asked for, since a
    /// search makes many and reads few.
    /// </summary>
    /// <param name="sentence">An interpolated string.</param>
    public static string Sentence(FormattableString sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        return sentence.ToString(Figures);
    }

    /// <summary>A sentence too long for one line of code: its parts by the same rules, a blank between each and the next.</summary>
    /// <param name="first">An interpolated string.</param>
    /// <param name="more">What follows.</param>
    public static string Sentence(FormattableString first, params FormattableString[] more)
    {
        var text = new StringBuilder(Sentence(first));
        foreach (var part in more)
            text.Append(' ').Append(Sentence(part));
        return text.ToString();
    }

    /// <summary>A figure with as many decimals as asked for.</summary>
    /// <param name="value">Any.</param>
    /// <param name="decimals">Decimals, 0 to 15, all of them written.</param>
    public static string Number(double value, int decimals = 0) => Formatted(value, decimals == 0 ? "0" : "0." + new string('0', decimals));

    /// <summary>A figure in a format of .NET; a minus stands only before a digit other than 0.</summary>
    /// <param name="value">Any.</param>
    /// <param name="format">A custom numeric format without sign, for instance 0.##.</param>
    public static string Formatted(double value, string format)
    {
        if (!double.IsFinite(value))
            return Nothing;
        var size = Math.Abs(value).ToString(format, CultureInfo.InvariantCulture);
        return value < 0 && size.AsSpan().IndexOfAnyInRange('1', '9') >= 0 ? "-" + size : size;
    }

    /// <summary>How many of something: 1 hour, 2 hours, 0 hours, 1 battery, 3 batteries.</summary>
    /// <param name="count">How many.</param>
    /// <param name="noun">One of them.</param>
    /// <param name="many">More of them, where it is not the noun with an s, es or ies.</param>
    public static string Count(long count, string noun, string? many = null) => Number(count) + " " + Noun(count, noun, many);

    /// <summary>The noun that goes with a count.</summary>
    /// <inheritdoc cref="Count"/>
    public static string Noun(long count, string noun, string? many = null) => count == 1 ? noun : many ?? Many(noun);

    /// <summary>Several things in one phrase: a, b and c.</summary>
    public static string Joined(IReadOnlyList<string> words) =>
        words.Count < 2 ? string.Concat(words) : string.Join(", ", words.Take(words.Count - 1)) + " and " + words[^1];

    /// <summary>A month, 1 to 12, by its name.</summary>
    public static string Month(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);

    /// <summary>A time of day from minutes since midnight: 7:05.</summary>
    public static string OClock(int minutes) => Sentence($"{minutes / MinutesPerHour}:{minutes % MinutesPerHour:00}");

    private static string Many(string noun) => noun switch
    {
        [.., 'y'] when noun.Length > 1 && !"aeiou".Contains(noun[^2], StringComparison.Ordinal) => noun[..^1] + "ies",
        [.., 's'] or [.., 'x'] or [.., 'c' or 's', 'h'] => noun + "es",
        _ => noun + "s",
    };

    private sealed class FigureFormat : IFormatProvider, ICustomFormatter
    {
        public object? GetFormat(Type? formatType) => formatType == typeof(ICustomFormatter) ? this : CultureInfo.InvariantCulture.GetFormat(formatType!);

        public string Format(string? format, object? arg, IFormatProvider? formatProvider) => (format, arg) switch
        {
            (not null, double figure) => Formatted(figure, format),
            (not null, decimal figure) => Formatted((double)figure, format),
            (_, FormattableString part) => part.ToString(this),
            (_, IFormattable other) => other.ToString(format, CultureInfo.InvariantCulture),
            _ => arg?.ToString() ?? "",
        };
    }
}
