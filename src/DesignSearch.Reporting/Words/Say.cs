using DesignSearch.Layouts.Words;

namespace DesignSearch.Reporting.Words;

/// <summary>
/// Figures in words a person reads, rounded as far as they are known and set for a page; files keep the full figures. How a figure and its
/// noun are written stands in <see cref="Written"/>.
/// </summary>
internal static class Say
{
    private const string Gap = "\u202F";
    private const string Minus = "\u2212";
    private const string Nothing = "–";

    /// <summary>A whole number with thin gaps between thousands.</summary>
    public static string Whole(double value) => Group(Math.Round(value, MidpointRounding.AwayFromZero), "0");

    /// <summary>Two figures: 1432 → 1 400, 0.437 → 0.44; nothing that is above zero is ever shown as zero.</summary>
    public static string TwoFigures(double value)
    {
        if (!double.IsFinite(value))
            return Nothing;
        var size = Math.Abs(value);
        if (size == 0)
            return "0";
        if (size < 0.01)
            return value > 0 ? "under 0.01" : "about 0";
        var scale = (int)Math.Floor(Math.Log10(size)) - 1;
        var step = Math.Pow(10, Math.Abs(scale));
        var rounded = scale >= 0 ? Math.Round(value / step, MidpointRounding.AwayFromZero) * step : Math.Round(value * step, MidpointRounding.AwayFromZero) / step;
        return Group(rounded, "0.###");
    }

    /// <summary>How many of something, with a thin gap between thousands.</summary>
    public static string Count(long count, string noun) => Whole(count) + " " + Written.Noun(count, noun);

    /// <summary>Hours of some kind, in two figures.</summary>
    public static string Hours(double hours, string noun = "hour")
    {
        var figure = TwoFigures(hours);
        return figure + " " + Written.Noun(figure == "1" ? 1 : 2, noun);
    }

    /// <summary>Heat or electricity [kWh].</summary>
    public static string Kwh(double value) => Unit(TwoFigures(value), "kWh");

    /// <summary>Frost degree-hours [K·h]; what is less than a tenth is no more than that.</summary>
    public static string DegreeHours(double value) => Unit(value is > 0 and < 0.1 ? "under 0.1" : TwoFigures(value), "K·h");

    /// <summary>A temperature to half a degree.</summary>
    public static string Celsius(double value) => Unit(double.IsFinite(value) ? Group(Half(value), "0.0") : Nothing, "°C");

    /// <summary>A temperature to half a degree, finer only where rounding would move it across the frost limit.</summary>
    public static string Air(double value, double limit)
    {
        if (!double.IsFinite(value))
            return Celsius(value);
        var shown = new[] { Half(value), Math.Round(value, 1), Math.Round(value, 2), value }.First(v => v < limit == value < limit);
        return Unit(Group(shown, "0.0##"), "°C");
    }

    /// <summary>Money to the whole unit, the currency word behind it.</summary>
    public static string Money(decimal amount, string currency) => Unit(Whole((double)amount), PlainText.Cut(currency, 24));

    /// <summary>Money to the cent, without the currency word.</summary>
    public static string Cents(decimal amount) => Group((double)amount, "0.00");

    /// <summary>A quantity with no needless decimals.</summary>
    public static string Quantity(decimal quantity) => Group((double)quantity, "0.###");

    /// <summary>A share of one as a whole percentage.</summary>
    public static string Percent(double share) => double.IsFinite(share) ? Group(Math.Round(share * 100), "0") + Gap + "%" : Nothing;

    /// <summary>A plain number with up to four decimals, for assumptions and coordinates.</summary>
    public static string Plain(double value) => double.IsFinite(value) ? Group(value, Math.Abs(value) is > 0 and < 1e-3 ? "0.###E+0" : "0.####") : Nothing;

    /// <summary>Several things in one phrase: a, b and c.</summary>
    public static string Joined(IReadOnlyList<string> words) => Written.Joined(words);

    /// <summary>A sentence part with a capital first letter.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>A heading as it stands inside a sentence: a small first letter, unless the second is a capital too.</summary>
    public static string Small(string text) => text.Length < 2 || char.IsUpper(text[1]) ? text : char.ToLowerInvariant(text[0]) + text[1..];

    /// <summary>Digits of a whole number with thin gaps between thousands.</summary>
    public static string Grouped(string digits)
    {
        for (var i = digits.Length - 3; i > 0; i -= 3)
            digits = digits.Insert(i, Gap);
        return digits;
    }

    private static double Half(double value) => Math.Round(value * 2, MidpointRounding.AwayFromZero) / 2;

    private static string Unit(string number, string unit) => unit.Length == 0 ? number : number + "\u00A0" + unit;

    private static string Group(double value, string format)
    {
        var text = Written.Formatted(value, format);
        var sign = text.StartsWith('-') ? Minus : "";
        text = text.TrimStart('-');
        var whole = text.IndexOfAny(['.', 'E']);
        if (whole < 0)
            whole = text.Length;
        return sign + Grouped(text[..whole]) + text[whole..];
    }
}
