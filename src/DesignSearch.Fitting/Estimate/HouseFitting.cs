using DesignSearch.Fitting.Logs;
using DesignSearch.Fitting.Model;
using DesignSearch.Fitting.Nights;
using DesignSearch.Fitting.Words;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Season.House;

namespace DesignSearch.Fitting.Estimate;

/// <summary>Fits a house to its own log. The same log, scenario and layout give the same bits.</summary>
public static class HouseFitting
{
    private const int Weathers = 12;

    // Least squares takes its hours for more than they are: on real logs its error was too small by 1.3 to 1.9.
    internal const double TooSmall = 1.7;

    // What the season model itself misses however long the log (own choice): twenty houses of a second model are missed by 6 %, log and weather counted in (record 23).
    private const double ModelError = 0.05;

    // A thermostat that is looked at so seldom is seen a tenth of its time too long or too short (a drawn house; own choice) [min].
    private const int SeldomMinutes = 10;
    private const double SwitchError = 0.10;

    // No log of a few weeks is to promise more [logarithm, 19 of 20 times].
    internal const double LeastHalf = 0.10;

    // What is known no better than this is not called learnt.
    private const double MostHalf = 0.40;
    private const int LeastHeated = 2;

    // A night that was heated so little that the loss moves its air by less tells nothing of it [K].
    private const double LeastSensitivityK = 2;
    private const double LeastRiseK = 1;
    internal const double StrangeLoss = 1.8;
    private const int MostOthers = 4;

    private static readonly FitPoint Usual = new(1, Prior.Store.Usual, Prior.Coupling.Usual, 1);

    /// <summary>Fits.</summary>
    /// <param name="scenario">Place and house by its drawing; a fit that stands beside it is not used.</param>
    /// <param name="layout">What stood in the house while it was logged, its heater not counted.</param>
    /// <param name="log">The log.</param>
    public static FitResult Run(Scenario scenario, Layout layout, HouseLog log)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(log);
        scenario = scenario with { Greenhouse = scenario.Greenhouse with { Fit = null } };
        var (before, warnings) = (new List<string>(), new List<string>(log.Remarks));
        log = ClockPairs.SetRight(log, before);
        var weathers = FitWeathers.Of(scenario, log, Weathers);
        var model = new FitModel(scenario, layout, log, weathers);
        var late = ClockCheck.Late(model, Usual, weathers.ZenithDeg, before);
        if (Array.Exists(late, h => h != 0))
        {
            log = ClockCheck.SetRight(log, late);
            weathers = weathers.Again(log);
            model = new FitModel(scenario, layout, log, weathers);
        }

        var all = NightSplit.All(log, weathers.ZenithDeg);
        var whole = all.Where(n => NightSplit.IsWhole(log, n)).ToList();
        var found = whole.Count == 0 ? null : GroupFit.Loss(model, whole).Run();
        var (used, others) = (whole, new List<Night>());
        while (found is not null && others.Count < MostOthers * whole.Count && OtherNights.Find(found) is { } other)
        {
            var stretch = used.GetRange(other.First, other.Count);
            others.AddRange(stretch);
            warnings.Add(FitWords.Other(stretch, other.OffK));
            used = [.. used.Except(stretch)];
            found = GroupFit.Loss(model, used).Run();
        }

        // Once it is known which nights are of this house, its days tell how clear they were.
        var like = found is null || SensorCheck.InsideInSun(log) ? model
            : new FitModel(scenario, layout, log, weathers.WithDays(log, DaySun.Of(model, weathers, found.Point)));
        if (like != model)
            found = GroupFit.Loss(like, used).Run();
        var heated = found is null ? 0 : used.Where((n, i) => found.SensitivityK[i] >= LeastSensitivityK && n.Hours.Average(h => log.HeaterW[h]) > 0).Count();
        var half = found is null ? double.PositiveInfinity : Half(found.Error, log.SwitchStepMinutes >= SeldomMinutes ? SwitchError : 0);
        before.AddRange(FitWords.Before(log, all, whole, heated, weathers.IsRecorded));
        if (found is not null && OtherNights.Least(found) is var least && double.IsFinite(least))
            before.Add(FitWords.LeastChange(least));
        Odd(log, warnings);
        var refusal = Refused(found, log, whole, heated, half);
        if (found is not null && refusal.Length == 0 && Math.Abs(found.Logs[0]) > Math.Log(StrangeLoss))
            warnings.Add(FitWords.Strange(found.Point.Loss));
        var learnt = refusal.Length == 0;
        var point = learnt ? found!.Point : Usual;
        var (sun, sunRefusal) = learnt ? SunFitting.Of(model, weathers, point, warnings) : (FigureFound.Unlearnt(Prior.Sun), FitWords.NoSunWithoutLoss);
        var (heldOut, rms) = learnt ? HeldOut.Of(like, used) : (NaN(log.Hours), double.NaN);
        var predicted = Only(whole, like.Air([point], model.FreeIn(whole))[0], log.Hours);
        return new()
        {
            Log = log,
            IsWeatherRecorded = weathers.IsRecorded,
            Before = before,
            Warnings = warnings,
            Refusal = refusal,
            SunRefusal = sunRefusal,
            Nights = [.. all.Select(n => Row(log, n, whole.Contains(n) ? others.Contains(n) ? NightUse.Other : NightUse.Fitted : NightUse.NotWhole, predicted, heldOut))],
            Figures = learnt ? [FigureFound.Of(Prior.Loss, found!.Logs[0], half, true), Side(Prior.Store, found, 1), Side(Prior.Coupling, found, 2), sun]
                : [FigureFound.Unlearnt(Prior.Loss), FigureFound.Unlearnt(Prior.Store), FigureFound.Unlearnt(Prior.Coupling), sun],
            PredictedC = predicted,
            HeldOutC = heldOut,
            HeldOutRmsK = rms,
            DrawnWPerK = HouseLoss.CoefficientWPerK(LayoutBuilder.Build(scenario, layout).Installation),
            FloorM2 = model.FloorM2,
            HeatedNights = heated,
        };
    }

    private static double Half(double error, double switchError) => Math.Max(
        LeastHalf, FigureFound.NineteenOfTwenty * Math.Sqrt(TooSmall * TooSmall * error * error + ModelError * ModelError + switchError * switchError));

    private static FigureFound Side(Prior prior, GroupFound found, int i)
    {
        var error = Math.Min(prior.Spread, TooSmall * Math.Sqrt(found.Covariance[i, i]));
        return FigureFound.Of(prior, found.Logs[i], FigureFound.NineteenOfTwenty * error, error < 0.6 * prior.Spread);
    }

    private static void Odd(HouseLog log, List<string> warnings)
    {
        if (SensorCheck.OutsideInSun(log))
            warnings.Add(FitWords.OutsideInSun);
        if (SensorCheck.InsideInSun(log))
            warnings.Add(FitWords.InsideInSun);
        if (log.SwitchStepMinutes >= SeldomMinutes)
            warnings.Add(FitWords.SeldomSwitch(log.SwitchStepMinutes));
    }

    private static string Refused(GroupFound? found, HouseLog log, List<Night> whole, int heated, double half) =>
        whole.Count == 0 ? FitWords.NoNights
        : log.OutsideIsStation ? FitWords.Station
        : !log.HasHeater ? FitWords.NoHeater
        : !IsWarmed(log, whole) ? FitWords.Swapped
        : heated < LeastHeated ? FitWords.TooFewHeated(heated)
        : SensorCheck.InsideIsSlow(found!.Point) ? FitWords.Slow
        : half > MostHalf ? FitWords.TooWide(half) : "";

    // Where the heater runs it is warmer inside than outside.
    private static bool IsWarmed(HouseLog log, List<Night> nights) =>
        nights.SelectMany(n => n.Hours).Where(h => log.HeaterW[h] > 0 && !double.IsNaN(log.InsideC[h])).Select(h => log.InsideC[h] - log.OutsideC[h])
            .DefaultIfEmpty(double.PositiveInfinity).Average() > LeastRiseK;

    private static NightRow Row(HouseLog log, Night night, NightUse use, double[] predicted, double[] heldOut)
    {
        double Mean(double[] series) => night.Hours.Select(h => series[h]).Where(v => !double.IsNaN(v)).DefaultIfEmpty(double.NaN).Average();
        return new(night.Evening, night.First, night.Count, use, Mean(log.OutsideC), Mean(log.InsideC), Mean(predicted), Mean(log.HeaterW), Mean(heldOut));
    }

    private static double[] Only(IEnumerable<Night> nights, double[] air, int hours)
    {
        var only = NaN(hours);
        foreach (var hour in nights.SelectMany(n => n.Hours))
            only[hour] = air[hour];
        return only;
    }

    internal static double[] NaN(int hours)
    {
        var all = new double[hours];
        Array.Fill(all, double.NaN);
        return all;
    }
}
