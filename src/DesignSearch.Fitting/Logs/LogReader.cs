using System.Globalization;
using System.Security.Cryptography;
using DesignSearch.Climate;
using DesignSearch.Climate.Loggers;
using DesignSearch.Climate.Weather;
using DesignSearch.Files;

namespace DesignSearch.Fitting.Logs;

/// <summary>Reads the files of a log and lays them on one row of hours.</summary>
public static class LogReader
{
    private const double ColdestC = -60, WarmestC = 75, MostWatts = 50_000;
    private const int MostDays = 400;
    private const long MostBytes = 200_000_000;
    private const string Needed = "a table of times with a column of the air inside (named inside, indoor, greenhouse …), one of the air outside, and one of the "
        + "heater: heater_w, heater_on, or heater_kwh for a meter's readings; '# inside: NAME' above the table says which column is which";

    /// <summary>Reads a log.</summary>
    /// <param name="paths">Its files, one at least: one table with everything, or one for each logger.</param>
    /// <param name="place">Where the house stands; its zone brings times of UTC home.</param>
    /// <param name="options">What the files do not say.</param>
    /// <exception cref="InputException">With every fault of every file.</exception>
    public static HouseLog Read(IReadOnlyList<string> paths, Place place, LogOptions options)
    {
        ArgumentNullException.ThrowIfNull(paths);
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(options);
        var (faults, series, files, remarks) = (new FaultList(), new List<LogSeries>(), new List<LogFile>(), new List<string>());
        foreach (var path in paths)
            ReadOne(path, place, options, series, files, remarks, faults);
        faults.ThrowIfAny();
        LogSeries[] Of(LogRole role) => [.. series.Where(s => s.Role == role)];
        foreach (var (role, what) in new[] { (LogRole.Inside, "inside"), (LogRole.Outside, "outside") })
        {
            if (Of(role).Length == 0)
                faults.Add(paths[0], 0, 0, "", $"{Needed}; none of the files has the air {what}");
        }

        faults.ThrowIfAny();
        var inside = Of(LogRole.Inside);
        var start = inside.Min(s => s.Readings[0].At).Date;
        var span = inside.Max(s => s.Readings[^1].At) - start;
        if (span.TotalDays > MostDays)
            faults.Add(paths[0], 0, 0, "", FormattableString.Invariant($"a log of at most {MostDays} days; this one spans {span.TotalDays:0}"));
        faults.ThrowIfAny();
        var hours = (int)Math.Ceiling(span.TotalHours);
        var heater = HeaterHours.Of(series, start, hours, remarks);
        return new()
        {
            Start = start,
            InsideC = Averaged(inside, start, hours, remarks, "inside"),
            OutsideC = Averaged(Of(LogRole.Outside), start, hours, remarks, "outside"),
            HeaterW = heater ?? new double[hours],
            HasHeater = heater is not null,
            OutsideIsStation = Of(LogRole.Outside).All(s => s.IsStation),
            SwitchStepMinutes = Of(LogRole.HeaterWatts).Length + Of(LogRole.HeaterMeter).Length == 0 ? Of(LogRole.HeaterOn).Select(s => s.StepMinutes).DefaultIfEmpty().Max() : 0,
            SystemsW = Of(LogRole.SystemWatts).GroupBy(s => s.Name).ToDictionary(g => g.Key, g => HourSeries.OfState(start, hours, g.First().Readings)),
            Clocks = (Clock(inside), Clock(Of(LogRole.Outside)), Clock(HeaterHours.Believed(series))),
            Files = files,
            Remarks = remarks,
        };
    }

    private static string Clock(IEnumerable<LogSeries> series) => series.Select(s => s.Table).Distinct().ToArray() is [var one] ? one : "";

    private static void ReadOne(
        string path, Place place, LogOptions options, List<LogSeries> series, List<LogFile> files, List<string> remarks, FaultList faults)
    {
        try
        {
            if (InputFile.Read(path, MostBytes, out var expected) is not { } bytes)
            {
                faults.Add(path, 0, 0, "", expected);
                return;
            }

            var before = faults.Count;
            var table = LoggerFile.Read(path, faults);
            var columns = table is null ? [] : LogColumns.Of(table);
            if (table is not null && columns.Count == 0 && !LogColumns.IsWeather(table))
            {
                faults.Add(path, 1, 0, string.Join(", ", table.Columns.Select(c => c.Name)), Needed + ". A file whose name holds 'inside' or 'outside' says it too");
                return;
            }

            var found = table is null || columns.Count == 0
                ? faults.Count == before ? Station(path, place, remarks) : []
                : columns.Select(c => Series(table, c.Column, c.Role, place, options, faults)).OfType<LogSeries>().ToList();
            remarks.AddRange(table is null || columns.Count == 0 ? [] : table.Remarks);
            series.AddRange(found.Select(f => f with { Table = Path.GetFileName(path) }));
            files.Add(new(Path.GetFileName(path), Convert.ToHexStringLower(SHA256.HashData(bytes)), string.Join(", ", found.Select(f => f.Name))));
        }
        catch (InputException e)
        {
            faults.AddRange(e);
        }
    }

    private static List<LogSeries> Station(string path, Place place, List<string> remarks)
    {
        WeatherRecord record;
        try
        {
            record = WeatherFile.Read(path, new() { Place = place });
        }
        catch (InputException e)
        {
            const string unknown = "a format that can be read";
            throw new InputException([.. e.Faults.Select(f => f.Expected.StartsWith(unknown, StringComparison.Ordinal) ? f with { Expected = Needed } : f)], e.Untold);
        }

        remarks.Add($"{Path.GetFileName(path)} is weather of a station: its air was taken as the air outside.");
        return
        [
            new(LogRole.Outside, "air of a weather station", [.. record.AirC.Select((a, h) => (record.Start.AddHours(h + 0.5), a))])
            {
                IsStation = true,
                StepMinutes = 60,
            },
        ];
    }

    private static LogSeries? Series(LoggerTable table, LoggerColumn column, LogRole role, Place place, LogOptions options, FaultList faults)
    {
        var shift = table.IsUtc ? place.ZoneHours : 0;
        var readings = new List<(DateTime At, double Value)>();
        var (wild, first) = (0, -1);
        for (var r = 0; r < table.Stamps.Count; r++)
        {
            var value = LogColumns.InOurUnit(column, role, column.Values[r]);
            if (double.IsNaN(value))
                continue;
            if (!Fits(role, value))
            {
                (wild, first) = (wild + 1, first < 0 ? r : first);
                continue;
            }

            if (readings.Count == 0 || table.Stamps[r].AddHours(shift) > readings[^1].At)
                readings.Add((table.Stamps[r].AddHours(shift), value));
        }

        if (wild > Math.Max(3, table.Stamps.Count / 20) || readings.Count < 2)
            faults.Add(
                table.Path, first < 0 ? 0 : table.Lines[first], 0, first < 0 ? column.Name : column.Values[first].ToString(CultureInfo.InvariantCulture),
                $"readings of '{column.Name}' that can be true: {(role is LogRole.Inside or LogRole.Outside ? "−60 to 75 °C" : "0 to 50 000 W, 0 or 1, or a meter that rises")}");
        if (role != LogRole.HeaterOn)
            return readings.Count < 2 ? null : new(role, column.Name, readings) { StepMinutes = table.StepMinutes };
        double? written = table.Head.TryGetValue("heater_watts", out var text) && PlainNumber.TryRead(text, out var number) ? number : null;
        if ((options.HeaterWatts ?? written) is not { } watts)
        {
            faults.Add(table.Path, 1, 0, column.Name, "what the heater takes while it runs, for a column of on and off: --heater-watts, or '# heater_watts: 1850' above the table");
            return null;
        }

        return readings.Count < 2 ? null : new(role, column.Name, [.. readings.Select(r => (r.At, r.Value > 0 ? watts : 0))]) { StepMinutes = table.StepMinutes };
    }

    private static bool Fits(LogRole role, double value) => role switch
    {
        LogRole.Inside or LogRole.Outside => value is >= ColdestC and <= WarmestC,
        LogRole.HeaterWatts => value is >= -5 and <= MostWatts,
        LogRole.SystemWatts => Math.Abs(value) <= MostWatts,
        LogRole.HeaterOn => value is >= 0 and <= 1,
        _ => value >= 0,
    };

    private static double[] Averaged(LogSeries[] all, DateTime start, int hours, List<string> remarks, string where)
    {
        if (all.Any(s => !s.IsStation))
            all = [.. all.Where(s => !s.IsStation)];
        var each = all.Select(s => HourSeries.OfLevel(start, hours, s.Readings)).ToArray();
        if (each.Length > 1)
            remarks.Add(FormattableString.Invariant($"{each.Length} columns tell the air {where}: their mean was taken."));
        return [.. Enumerable.Range(0, hours).Select(h => each.Select(e => e[h]).Where(v => !double.IsNaN(v)).DefaultIfEmpty(double.NaN).Average())];
    }
}
