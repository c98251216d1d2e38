using System.Globalization;

namespace DesignSearch.Files;

/// <summary>Numbers in the cells of a table. Where cells are parted by semicolons, as spreadsheets of half the world do it, a comma is a decimal sign too.</summary>
internal static class CsvNumber
{
    private const NumberStyles MoneyStyle = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;
    private const decimal MostMoney = 1_000_000_000m;
    private const int Grouped = 3;

    /// <summary>Reads a number.</summary>
    /// <param name="text">The cell.</param>
    /// <param name="hasCommas">True where cells are parted by semicolons.</param>
    /// <param name="value">The number, or 0.</param>
    public static bool TryRead(string text, bool hasCommas, out double value)
    {
        value = 0;
        return (!hasCommas || IsClear(text)) && PlainNumber.TryRead(Pointed(text, hasCommas), out value);
    }

    /// <summary>Reads an amount of money to the cent, 0 or more.</summary>
    /// <inheritdoc cref="TryRead"/>
    public static bool TryReadMoney(string text, bool hasCommas, out decimal value)
    {
        value = 0;
        return (!hasCommas || IsClear(text)) && decimal.TryParse(Pointed(text, hasCommas), MoneyStyle, CultureInfo.InvariantCulture, out value)
            && value is >= 0 and <= MostMoney && decimal.Round(value, 2) == value;
    }

    private static string Pointed(string text, bool hasCommas) => hasCommas ? text.Replace(',', '.') : text;

    // Beside semicolons "1.500" may be one and a half or fifteen hundred; "0.025" cannot.
    private static bool IsClear(string text) =>
        text.Split('.') is not [var whole, { Length: Grouped }] || whole.TrimStart('-', '+') is "0" or "" || whole.TrimStart('-', '+').Length > Grouped;
}
