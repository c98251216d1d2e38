using DesignSearch.Physics;

namespace DesignSearch.Climate.Formats;

/// <summary>Turns the units weather files come in into ours.</summary>
internal static class WeatherUnit
{
    /// <summary>Factor and offset to °C, %, m/s or W/m².</summary>
    /// <param name="name">As written in the file.</param>
    /// <param name="stepHours">Length of an interval, for units that are energy per interval [h].</param>
    /// <returns>Nothing for a unit that is not known.</returns>
    public static (double Factor, double Offset)? Find(string name, double stepHours) =>
        Bare(name) switch
        {
            "c" or "°c" or "ºc" or "degc" or "celsius" or "degreecelsius" or "%" or "m/s" or "ms-1" or "w/m2" or "wm-2" => (1, 0),
            "f" or "°f" or "ºf" or "degf" or "fahrenheit" => (5 / 9.0, -160 / 9.0),
            "k" or "kelvin" => (1, -Temperature.ZeroCelsiusK),
            "fraction" or "0-1" => (100, 0),
            "okta" or "oktas" => (12.5, 0),
            "tenths" => (10, 0),
            "km/h" or "kmh" or "kph" => (1 / 3.6, 0),
            "mph" or "mp/h" => (0.44704, 0),
            "kn" or "kt" or "knots" => (0.514444, 0),
            "kw/m2" => (1000, 0),
            "wh/m2" or "wh/m2/hour" or "w-hr/m2" => (1 / stepHours, 0),
            "kwh/m2" => (1000 / stepHours, 0),
            "kj/m2" => (1 / 3.6 / stepHours, 0),
            "mj/m2" or "mj/hr" or "mj/m2/hr" or "mj/m2/hour" => (1000 / 3.6 / stepHours, 0),
            "j/m2" => (1 / 3600.0 / stepHours, 0),
            _ => null,
        };

    private static string Bare(string name)
    {
        var bare = name.Trim().ToLowerInvariant().Replace("²", "2", StringComparison.Ordinal).Replace("^", "", StringComparison.Ordinal);
        return bare.Replace(" ", "", StringComparison.Ordinal).Replace("\uFFFD", "°", StringComparison.Ordinal);
    }
}
