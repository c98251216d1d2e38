using System.Text.RegularExpressions;
using DesignSearch.Climate.Loggers;

namespace DesignSearch.Fitting.Logs;

/// <summary>Tells what the columns of a logger's table stand for: by their names, by a line above the table ("# inside: Temp 1"), else by the file's name.</summary>
internal static partial class LogColumns
{
    private static readonly (string Key, LogRole Role)[] Keys =
    [
        ("inside", LogRole.Inside), ("outside", LogRole.Outside), ("heater_w", LogRole.HeaterWatts), ("heater_on", LogRole.HeaterOn),
        ("heater_kwh", LogRole.HeaterMeter),
    ];

    /// <summary>The columns with what they stand for; those of no use are left out.</summary>
    public static IReadOnlyList<(LoggerColumn Column, LogRole Role)> Of(LoggerTable table)
    {
        var found = table.Columns.Select(c => (Column: c, Role: Named(table, c) is var role and not LogRole.None ? role : ByName(c.Name))).ToList();
        if (!found.Any(f => f.Role is LogRole.Inside or LogRole.Outside) && ByFile(table.Path) is var side and not LogRole.None
            && found.FindIndex(f => f.Role == LogRole.None && Bare().IsMatch(f.Column.Name)) is >= 0 and var bare)
            found[bare] = (found[bare].Column, side);
        return [.. found.Where(f => f.Role != LogRole.None && f.Column.Values.Any(v => !double.IsNaN(v)))];
    }

    /// <summary>True for a table that a weather station wrote: it has wind, sun or dew point beside the air.</summary>
    public static bool IsWeather(LoggerTable table) => table.Columns.Any(c => Weather().IsMatch(c.Name));

    /// <summary>A temperature in °C, a meter in kWh, a power in W, whatever the name says it is in.</summary>
    public static double InOurUnit(LoggerColumn column, LogRole role, double value) => role switch
    {
        LogRole.Inside or LogRole.Outside when Fahrenheit().IsMatch(column.Name) => (value - 32) / 1.8,
        LogRole.HeaterMeter when WattHours().IsMatch(column.Name) => value / 1000,
        LogRole.HeaterWatts or LogRole.SystemWatts when Kilowatts().IsMatch(column.Name) => 1000 * value,
        _ => value,
    };

    private static LogRole Named(LoggerTable table, LoggerColumn column)
    {
        foreach (var (key, role) in Keys)
        {
            if (table.Head.TryGetValue(key, out var name) && name.Equals(column.Name, StringComparison.OrdinalIgnoreCase))
                return role;
        }

        return LogRole.None;
    }

    private static LogRole ByName(string name) =>
        System().IsMatch(name) ? LogRole.SystemWatts
        : Meter().IsMatch(name) ? LogRole.HeaterMeter
        : Switch().IsMatch(name) ? LogRole.HeaterOn
        : Power().IsMatch(name) ? LogRole.HeaterWatts
        : Humid().IsMatch(name) ? LogRole.None
        : Outside().IsMatch(name) ? LogRole.Outside
        : Inside().IsMatch(name) ? LogRole.Inside : LogRole.None;

    private static LogRole ByFile(string path)
    {
        var name = Path.GetFileNameWithoutExtension(path);
        return Outside().IsMatch(name) ? LogRole.Outside : Inside().IsMatch(name) ? LogRole.Inside : LogRole.None;
    }

    [GeneratedRegex(@"^heat[ _]from[ _]", RegexOptions.IgnoreCase)]
    private static partial Regex System();

    [GeneratedRegex(@"k?wh\b|k?wh[)\]]|kwh|meter|energy", RegexOptions.IgnoreCase)]
    private static partial Regex Meter();

    [GeneratedRegex(@"^(heater[ _])?(on|switch|relay|state)(/off|[ _]off)?$|heater[ _]?on|^heater$", RegexOptions.IgnoreCase)]
    private static partial Regex Switch();

    [GeneratedRegex(@"heater.*w|power|watt|^k?w$", RegexOptions.IgnoreCase)]
    private static partial Regex Power();

    [GeneratedRegex(@"humid|^rh|[ _(]rh|%|dew|pressure|battery|volt", RegexOptions.IgnoreCase)]
    private static partial Regex Humid();

    [GeneratedRegex(@"outside|outdoor|(^|[ _-])out([ _-]|$)|ambient", RegexOptions.IgnoreCase)]
    private static partial Regex Outside();

    [GeneratedRegex(@"inside|indoor|(^|[ _-])in([ _-]|$)|greenhouse|glasshouse|house|tunnel", RegexOptions.IgnoreCase)]
    private static partial Regex Inside();

    [GeneratedRegex(@"wind|wspd|global|ghi|irradiance|radiation|sun|dew|dwpt", RegexOptions.IgnoreCase)]
    private static partial Regex Weather();

    [GeneratedRegex(@"temp|air|celsius|fahrenheit|°|^t$", RegexOptions.IgnoreCase)]
    private static partial Regex Bare();

    [GeneratedRegex(@"°f|\bf\)|_f$|fahrenheit|\(f\)", RegexOptions.IgnoreCase)]
    private static partial Regex Fahrenheit();

    [GeneratedRegex(@"(^|[^k])wh", RegexOptions.IgnoreCase)]
    private static partial Regex WattHours();

    [GeneratedRegex(@"kw($|[^h])", RegexOptions.IgnoreCase)]
    private static partial Regex Kilowatts();
}
