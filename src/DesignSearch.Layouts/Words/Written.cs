using System.Globalization;

namespace DesignSearch.Layouts.Words;

/// <summary>
/// Figures as plain text for sentences: unit behind a space, singular and plural right, nothing that rounds to zero is written as "-0".
/// A figure that is not finite is a dash. Halves round away from zero. What shows the text may set gaps and signs of its own.
/// </summary>
public static class Written
{
    private const string Nothing = "–";

    /// <summary>A figure with as many decimals as asked for.</summary>
    /// <param name="value">Any.</param>
    /// <param name="decimals">Decimals, 0 to 15, all of them written.</param>
    public static string Number(double value, int decimals = 0) => Formatted(value, decimals == 0 ? "0" : "0." + new string('0', decimals));

    /// <summary>A figure without needless decimals.</summary>
    /// <param name="value">Any.</param>
    /// <param name="most">Most decimals, 0 to 15; zeros at their end are left out.</param>
    public static string Brief(double value, int most = 1) => Formatted(value, most == 0 ? "0" : "0." + new string('#', most));

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

    /// <summary>An amount that may be broken: 0.5 hours, 1 hour, 1.5 hours; what is written decides, so 1.04 to one decimal is 1 hour.</summary>
    /// <param name="amount">How much.</param>
    /// <param name="most">Most decimals.</param>
    /// <param name="noun">One of them.</param>
    /// <param name="many">More of them, where it is not the noun with an s, es or ies.</param>
    public static string Amount(double amount, int most, string noun, string? many = null)
    {
        var figure = Brief(amount, most);
        return figure + " " + (figure == "1" ? noun : many ?? Many(noun));
    }

    /// <summary>The noun that goes with a count.</summary>
    /// <inheritdoc cref="Count"/>
    public static string Noun(long count, string noun, string? many = null) => count == 1 ? noun : many ?? Many(noun);

    /// <summary>A difference of temperatures [K].</summary>
    public static string Kelvin(double kelvin, int decimals = 1) => Number(kelvin, decimals) + " K";

    /// <summary>A temperature [°C].</summary>
    public static string Celsius(double celsius, int decimals = 1) => Number(celsius, decimals) + " °C";

    /// <summary>Frost degree-hours [K·h].</summary>
    public static string DegreeHours(double kelvinHours, int decimals = 0) => Number(kelvinHours, decimals) + " K·h";

    /// <summary>Power [W]; from 10 000 W in kilowatts to a tenth.</summary>
    public static string Watts(double watts) => Math.Abs(watts) >= 10_000 ? Brief(watts / 1000) + " kW" : Number(watts) + " W";

    /// <summary>Heat or electricity [kWh].</summary>
    public static string Kwh(double kwh, int decimals = 0) => Number(kwh, decimals) + " kWh";

    /// <summary>Length [m].</summary>
    public static string Metres(double metres, int decimals = 1) => Number(metres, decimals) + " m";

    /// <summary>Area [m²].</summary>
    public static string SquareMetres(double squareMetres, int decimals = 1) => Number(squareMetres, decimals) + " m²";

    /// <summary>Volume [L].</summary>
    public static string Litres(double litres, int decimals = 0) => Number(litres, decimals) + " L";

    /// <summary>A share of one as a percentage.</summary>
    public static string Percent(double share, int decimals = 0) => Number(100 * share, decimals) + " %";

    /// <summary>Money to the whole unit.</summary>
    /// <param name="amount">The amount.</param>
    /// <param name="currency">Its word as the scenario has it; where it is empty the figure stands alone.</param>
    public static string Money(decimal amount, string currency = "") => Number((double)amount) + (currency.Length == 0 ? "" : " " + currency);

    /// <summary>Several things in one phrase: a, b and c.</summary>
    public static string Joined(IReadOnlyList<string> words) =>
        words.Count < 2 ? string.Concat(words) : string.Join(", ", words.Take(words.Count - 1)) + " and " + words[^1];

    private static string Many(string noun) => noun switch
    {
        [.., 'y'] when noun.Length > 1 && !"aeiou".Contains(noun[^2], StringComparison.Ordinal) => noun[..^1] + "ies",
        [.., 's'] or [.., 'x'] or [.., 'c' or 's', 'h'] => noun + "es",
        _ => noun + "s",
    };
}
