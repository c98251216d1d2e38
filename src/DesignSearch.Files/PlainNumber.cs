using System.Globalization;

namespace DesignSearch.Files;

/// <summary>Numbers as people write them in files: digits with a decimal point, no thousands separator, finite.</summary>
public static class PlainNumber
{
    private const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    /// <summary>Reads one number; a decimal comma, a thousands separator, NaN and infinity are refused, and a zero has no sign.</summary>
    /// <param name="text">The text; outer spaces are ignored.</param>
    /// <param name="value">The number, or 0.</param>
    /// <returns>True when the text is a finite number.</returns>
    public static bool TryRead(ReadOnlySpan<char> text, out double value) =>
        double.TryParse(text.Trim(), Style, CultureInfo.InvariantCulture, out value) && double.IsFinite(value = Unsigned(value));

    /// <summary>The number, a zero without its sign: "-0" lies within bounds that begin at 0, and yet counts as negative where prices are made.</summary>
    /// <param name="value">Any.</param>
    internal static double Unsigned(double value) => value == 0 ? 0 : value;
}
