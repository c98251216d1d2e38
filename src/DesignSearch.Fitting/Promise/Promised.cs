using DesignSearch.Fitting.Logs;
using DesignSearch.Fitting.Model;
using DesignSearch.Fitting.Nights;
using DesignSearch.Fitting.Words;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Fitting.Promise;

/// <summary>Holds a log of what was built against what its layout promises under that very air outside.</summary>
public sealed record Promised
{
    private const int Weathers = 12;
    private const double LeastChangeK = 0.8;
    private const double Errors = 4;
    private const double LeastScatterK = 0.5;
    private const int LeastNights = 2;
    private const double ShortShare = 0.8;

    /// <summary>The nights.</summary>
    public required IReadOnlyList<PromisedNight> Nights { get; init; }

    /// <summary>Heat by system where the log has it.</summary>
    public required IReadOnlyList<SystemHeat> Systems { get; init; }

    /// <summary>The first night from which something was otherwise; null where nothing changed.</summary>
    public DateTime? ChangedFrom { get; init; }

    /// <summary>By how much it was otherwise from then on [K].</summary>
    public double ChangeK { get; init; }

    /// <summary>What was changed while the log was read.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>The system that is short of its promise by most; null where none is.</summary>
    public SystemHeat? Wanting => Systems.Where(s => s.PromisedKwh > 1 && s.CameKwh < ShortShare * s.PromisedKwh).MinBy(s => s.CameKwh / s.PromisedKwh);

    /// <summary>Compares.</summary>
    /// <param name="scenario">Scenario, with its fit where there is one.</param>
    /// <param name="layout">What was built.</param>
    /// <param name="log">The log.</param>
    public static Promised Of(Scenario scenario, Layout layout, HouseLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        var weathers = FitWeathers.Of(scenario, log, Weathers);
        var built = LayoutBuilder.Build(scenario, layout);
        var runs = new List<HourRow>[weathers.Forcings.Count];
        Layouts.Assess.Share.Out(runs.Length, Environment.ProcessorCount, w =>
        {
            var rows = new List<HourRow>();
            var plane = built.Mount is { } mount ? weathers.Set.Planes.Get(weathers.Forcings[w].Winter, mount) : null;
            SeasonSimulator.Run(weathers.Forcings[w], new LayoutCase(built.Installation, plane), rows.Add);
            runs[w] = rows.GetRange(weathers.Before, log.Hours);
        });
        var nights = NightSplit.All(log, weathers.ZenithDeg)
            .Where(n => n.Hours.All(h => !double.IsNaN(log.OutsideC[h])) && n.Hours.Count(h => !double.IsNaN(log.InsideC[h])) >= 0.8 * n.Count).ToList();
        var told = nights.ConvertAll(n => Night(n, log, runs));
        var (from, change) = Change(told);
        var heats = Heats(log, nights, runs).ToList();
        return new()
        {
            Nights = told,
            Systems = [.. heats.Where(h => double.IsFinite(h.PromisedKwh))],
            ChangedFrom = from,
            ChangeK = change,
            Remarks = [.. log.Remarks, .. heats.Where(h => !double.IsFinite(h.PromisedKwh)).Select(h => FitWords.NoSuchSystem(h.Name))],
        };
    }

    private static PromisedNight Night(Night night, HouseLog log, List<HourRow>[] runs)
    {
        int[] hours = [.. night.Hours.Where(h => !double.IsNaN(log.InsideC[h]))];
        double[] lowest = [.. runs.Select(r => hours.Min(h => r[h].PlantsC))];
        return new(
            night.Evening, hours.Min(h => log.OutsideC[h]), lowest.Average(), lowest.Min(), lowest.Max(), hours.Min(h => log.InsideC[h]),
            hours.Average(h => log.InsideC[h] - runs.Average(r => r[h].PlantsC)));
    }

    private static IEnumerable<SystemHeat> Heats(HouseLog log, IReadOnlyList<Night> nights, List<HourRow>[] runs)
    {
        IEnumerable<(string Name, double[] Watts)> logged = log.SystemsW.Select(s => (s.Key, s.Value));
        if (log.HasHeater)
            logged = logged.Append(("heater", log.HeaterW));
        foreach (var (name, watts) in logged)
        {
            int[] hours = [.. nights.SelectMany(n => n.Hours).Where(h => !double.IsNaN(watts[h]))];
            yield return new(name, runs.Average(r => hours.Sum(h => Of(name, r[h]))) / 1000, hours.Sum(h => watts[h]) / 1000);
        }
    }

    // "heat_from_tank_w", "heat_from_heater_w", or the column of the hourly table: "heat_from_heat_pump_w".
    private static double Of(string name, HourRow row)
    {
        var key = name.Replace("heat_from_", "", StringComparison.OrdinalIgnoreCase).Replace("heat from ", "", StringComparison.OrdinalIgnoreCase)
            .Replace(' ', '_').ToLowerInvariant();
        key = key.EndsWith("_w", StringComparison.Ordinal) ? key[..^2] : key;
        if (key == "heater")
            return row.HeaterW;
        if (key is "tank" or "release")
            return row.ReleaseW;
        var more = row.More;
        return more.Columns.FirstOrDefault(c => c.Id == key + "_w") is { } column ? more[column] : double.NaN;
    }

    private static (DateTime? From, double ChangeK) Change(List<PromisedNight> nights)
    {
        var (from, most, change) = ((DateTime?)null, Errors, 0.0);
        for (var at = LeastNights; at <= nights.Count - LeastNights; at++)
        {
            var (before, after) = (nights.Take(at).Select(n => n.MissK).ToArray(), nights.Skip(at).Select(n => n.MissK).ToArray());
            var off = after.Average() - before.Average();
            var scatter = Math.Max(LeastScatterK, Math.Sqrt(
                (before.Sum(b => Math.Pow(b - before.Average(), 2)) + after.Sum(a => Math.Pow(a - after.Average(), 2))) / nights.Count));
            var size = Math.Abs(off) / (scatter * Math.Sqrt(1.0 / before.Length + 1.0 / after.Length));
            if (Math.Abs(off) >= LeastChangeK && size > most)
                (from, most, change) = (nights[at].Evening, size, off);
        }

        return (from, change);
    }
}
