using DesignSearch.Climate.Winters;
using DesignSearch.Fitting.Logs;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Fitting.Model;

/// <summary>
/// Weather of a log's days: its own air outside; sky, wind and sun from the scenario's record where that holds those days, else of the made nights that are most like
/// each of them (<see cref="LikeNights"/>), several times over, for nobody measured them.
/// </summary>
internal sealed class FitWeathers
{
    /// <summary>Days before the log that the ground is given.</summary>
    public const int WarmUpDays = 20;
    internal const int WarmUpHours = 24 * WarmUpDays;
    private const int LeastDays = 15;
    private const ulong Seeds = 7_000_003;

    // So many made winters are looked through for nights that are like those of the log.
    private const int Looked = 60;

    private readonly Scenario scenario;
    private readonly int count;
    private readonly IReadOnlyList<(Winter Winter, int At)> bank;

    private FitWeathers(Scenario scenario, int count, IReadOnlyList<(Winter Winter, int At)> bank, IReadOnlyList<Winter> winters)
    {
        (this.scenario, this.count, this.bank) = (scenario, count, bank);
        Set = WinterSet.Of(scenario, winters.Select(w => (w, 1.0 / winters.Count)));
        Forcings = [.. Set.Winters.Select(w => w.Forcing)];
    }

    /// <summary>The winters as systems ask them.</summary>
    public WinterSet Set { get; }

    /// <summary>The weathers, each ready for the season model.</summary>
    public IReadOnlyList<WinterForcing> Forcings { get; }

    /// <summary>True where sky, wind and sun were recorded on those very days.</summary>
    public bool IsRecorded => bank.Count == 0;

    /// <summary>Hours before the log.</summary>
    public int Before => Forcings[0].Winter.WarmUpHours;

    /// <summary>The sun's zenith distance in the hours of the log [°].</summary>
    public ReadOnlySpan<double> ZenithDeg => Forcings[0].Winter.SunZenithDeg.AsSpan(Before);

    /// <summary>Weathers of a log.</summary>
    /// <param name="scenario">Whose house and place.</param>
    /// <param name="log">The log.</param>
    /// <param name="count">How many are made where none was recorded.</param>
    public static FitWeathers Of(Scenario scenario, HouseLog log, int count)
    {
        var (first, last) = (log.Start, log.Start.AddHours(log.Hours - 1));
        // Leap days have no place in a made year; some days more at each end, so that none is wanting, and no less than a winter is made of.
        var end = last > first.AddDays(LeastDays) ? last : first.AddDays(LeastDays);
        var (from, to) = (Nominal(first.AddDays(-1)), Nominal(end.AddDays(1 + LikeNights.AsideDays)));
        // Nights under snow are found and left out as those of another house.
        var own = scenario with
        {
            Season = new SeasonDates(from.Month, from.Day, to.Month, to.Day, WarmUpDays + 1),
            Site = scenario.Site with { Snow = SnowCare.None },
        };
        if (Recorded(own, log) is { } recorded)
            return new(scenario, count, [], [recorded]);
        var bank = DesignWinters.Drawn(own, Looked, scenario.Climate.Seed + Seeds).Select(w => (w, At(w, log))).ToList();
        return new(scenario, count, bank, LikeNights.Of(bank, log, count));
    }

    /// <summary>The weathers once more, of a log whose clock was set right.</summary>
    /// <param name="log">The log.</param>
    public FitWeathers Again(HouseLog log) =>
        IsRecorded ? Of(scenario, log, count) : new(scenario, count, bank, LikeNights.Of(bank, log, count));

    /// <summary>The weathers once more, of nights whose days had as much sun as the house felt; the same where they were recorded.</summary>
    /// <param name="log">The log.</param>
    /// <param name="daySun">See <see cref="DaySun"/>.</param>
    public FitWeathers WithDays(HouseLog log, double[] daySun) =>
        IsRecorded ? this : new(scenario, count, bank, LikeNights.Of(bank, log, count, daySun));

    private static DateTime Nominal(DateTime day) => new(2001, day.Month, day is { Month: 2, Day: 29 } ? 28 : day.Day, 0, 0, 0, DateTimeKind.Unspecified);

    private static Winter? Recorded(Scenario scenario, HouseLog log)
    {
        if (scenario.Climate.Record is not { IsTypicalYear: false } record || log.Start < record.Start.AddDays(WarmUpDays + 1)
            || log.Start.AddHours(log.Hours) > record.Start.AddHours(record.Hours))
            return null;
        var before = log.Start.AddHours(-WarmUpHours);
        return DesignWinters.Recorded(scenario).FirstOrDefault(w => w.Start <= before && w.Start.AddHours(w.Hours) >= log.Start.AddHours(log.Hours)) is { } winter
            ? Cut(winter, (int)(before - winter.Start).TotalHours, log)
            : null;
    }

    // Where in a made winter the hours before the log begin.
    private static int At(Winter winter, HouseLog log)
    {
        var nominal = Nominal(log.Start.AddHours(-WarmUpHours));
        var at = (int)(nominal.AddYears(winter.Start.Year - nominal.Year) - winter.Start).TotalHours;
        if (at < 0)
            at = (int)(nominal.AddYears(winter.Start.Year + 1 - nominal.Year) - winter.Start).TotalHours;
        return Math.Clamp(at, 0, Math.Max(0, winter.Hours - WarmUpHours - log.Hours));
    }

    // The log's own air takes the place of the winter's; the sky stays as far below it as it was.
    internal static Winter Cut(Winter winter, int at, HouseLog log)
    {
        var start = log.Start.AddHours(-WarmUpHours);
        var hours = WarmUpHours + log.Hours;
        double[] Take(double[] from) => [.. Enumerable.Range(at, hours).Select(h => from[Math.Min(h, from.Length - 1)])];
        var (air, sky, dew) = (Take(winter.AirC), Take(winter.SkyC), Take(winter.DewPointC));
        var filled = Filled(log.OutsideC);
        for (var h = 0; h < log.Hours; h++)
        {
            var change = filled[h] - air[WarmUpHours + h];
            air[WarmUpHours + h] += change;
            sky[WarmUpHours + h] += change;
            dew[WarmUpHours + h] += change;
        }

        return winter with
        {
            Start = start,
            WarmUpHours = WarmUpHours,
            AirC = air,
            SkyC = sky,
            DewPointC = dew,
            WindMPerS = Take(winter.WindMPerS),
            GlobalWPerM2 = Take(winter.GlobalWPerM2),
            DiffuseWPerM2 = Take(winter.DiffuseWPerM2),
            BeamNormalWPerM2 = Take(winter.BeamNormalWPerM2),
            SunZenithDeg = Take(winter.SunZenithDeg),
            SunAzimuthDeg = Take(winter.SunAzimuthDeg),
            ExtraterrestrialNormalWPerM2 = Take(winter.ExtraterrestrialNormalWPerM2),
            GroundReflectance = Take(winter.GroundReflectance),
            PowerCuts = [],
            CoverLeftOpen = [],
        };
    }

    // A gap runs straight from its one end to the other: nights with one are left out, the ground under them is not.
    internal static double[] Filled(double[] series)
    {
        var filled = (double[])series.Clone();
        var last = -1;
        for (var h = 0; h <= filled.Length; h++)
        {
            if (h < filled.Length && double.IsNaN(series[h]))
                continue;
            var (from, to) = (last < 0 ? double.NaN : series[last], h < filled.Length ? series[h] : double.NaN);
            for (var g = last + 1; g < h; g++)
                filled[g] = double.IsNaN(from) ? double.IsNaN(to) ? 0 : to : double.IsNaN(to) ? from : from + (to - from) * (g - last) / (h - last);
            last = h;
        }

        return filled;
    }
}
