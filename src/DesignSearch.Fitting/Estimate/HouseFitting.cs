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
    private const double TooSmall = 1.7;

    // What the season model itself misses however long the log: ten houses that a second model made were 8 % off, half of it explained by their nights.
    private const double ModelError = 0.05;

    // A thermostat that is looked at so seldom is seen a tenth of its time too long or too short (a drawn house; own choice) [min].
    private const int SeldomMinutes = 10;
    private const double SwitchError = 0.10;

    // No log of a few weeks is to promise more [logarithm, 19 of 20 times].
    private const double LeastHalf = 0.10;

    // What is known no better than this is not called learnt.
    private const double MostHalf = 0.40;
    private const double MostSunHalf = 0.45;
    private const int LeastHeated = 2;

    // A night that was heated so little that the loss moves its air by less tells nothing of it [K].
    private const double LeastSensitivityK = 2;
    private const double LeastRiseK = 1;
    private const double StrangeLoss = 1.8;
    private const int MostOthers = 4;
    private const double RecordedDayK = 1.2;
    private const double MadeDayK = 3;
    private const int LeastDays = 3;

    // The sun of a fortnight is a quarter off its mean (own choice, from made winters): where nobody measured it, the mean of the made ones is off so much.
    private const double SpellVariance = 0.8;

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
        var weathers = FitWeathers.Of(scenario, log, Weathers);
        var model = new FitModel(scenario, layout, log, weathers);
        var late = ClockCheck.Late(model, Usual, weathers.ZenithDeg, before);
        if (Array.Exists(late, h => h != 0))
        {
            log = ClockCheck.SetRight(log, late);
            weathers = FitWeathers.Of(scenario, log, Weathers);
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

        var heated = found is null ? 0 : used.Where((n, i) => found.SensitivityK[i] >= LeastSensitivityK && n.Hours.Average(h => log.HeaterW[h]) > 0).Count();
        var half = found is null ? double.PositiveInfinity : Half(found.Error, log.SwitchStepMinutes >= SeldomMinutes ? SwitchError : 0);
        before.AddRange(FitWords.Before(log, all, whole, heated, weathers.IsRecorded));
        Odd(log, warnings);
        var refusal = Refused(found, log, whole, heated, half);
        if (found is not null && refusal.Length == 0 && Math.Abs(found.Logs[0]) > Math.Log(StrangeLoss))
            warnings.Add(FitWords.Strange(found.Point.Loss));
        var learnt = refusal.Length == 0;
        var point = learnt ? found!.Point : Usual;
        var (sun, sunRefusal) = learnt ? SunOf(model, weathers, point, warnings) : (FigureFound.Unlearnt(Prior.Sun), FitWords.NoSunWithoutLoss);
        var (heldOut, rms) = learnt ? HeldOut(model, used) : (NaN(log.Hours), double.NaN);
        var predicted = Only(whole, model.Air([point], model.FreeIn(whole))[0], log.Hours);
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

    private static (FigureFound Sun, string Refusal) SunOf(FitModel model, FitWeathers weathers, FitPoint point, List<string> warnings)
    {
        if (SensorCheck.InsideInSun(model.Log))
            return (FigureFound.Unlearnt(Prior.Sun), FitWords.InsideInSun);
        // Days are never chosen by what was measured in them: the shut ones are the dull ones, and the sun would come out too weak.
        var days = DaySplit.Whole(model.Log, weathers.ZenithDeg);
        if (weathers.IsRecorded)
        {
            var bright = model.Air([point with { Sun = StrangeLoss }], model.FreeIn(days))[0];
            days = [.. days.Where(d => d.Hours.All(h => bright[h] < model.VentAboveC))];
        }

        if (days.Count < LeastDays)
            return (FigureFound.Unlearnt(Prior.Sun), FitWords.TooFewDays(days.Count));
        var found = GroupFit.Sun(model, days, point, weathers.IsRecorded ? RecordedDayK : MadeDayK).Run();
        var error = TooSmall * found.Error;
        var weather = weathers.IsRecorded ? 0 : SpellVariance / days.Count;
        var half = Math.Max(LeastHalf, FigureFound.NineteenOfTwenty * Math.Sqrt(error * error + weather));
        if (half > MostSunHalf)
            return (FigureFound.Unlearnt(Prior.Sun), FitWords.SunTooWide(days.Count, half));
        if (Math.Abs(found.Logs[0]) > Math.Log(StrangeLoss))
            warnings.Add(FitWords.StrangeSun(found.Point.Sun));
        return (FigureFound.Of(Prior.Sun, found.Logs[0], half, true), "");
    }

    // Every third night is taken out by turns, so that each is once predicted by a fit that did not see it.
    private static (double[] Air, double RmsK) HeldOut(FitModel model, List<Night> used)
    {
        const int turns = 3;
        var air = NaN(model.Log.Hours);
        if (used.Count < turns)
            return (air, double.NaN);
        var (sum, count) = (0.0, 0);
        for (var turn = 0; turn < turns; turn++)
        {
            var unseen = used.Where((_, i) => i % turns == turn).ToList();
            var point = GroupFit.Loss(model, [.. used.Except(unseen)]).Run().Point;
            var predicted = model.Air([point], model.FreeIn(used))[0];
            foreach (var hour in unseen.SelectMany(n => n.Hours))
            {
                air[hour] = predicted[hour];
                var miss = predicted[hour] - model.Log.InsideC[hour];
                (sum, count) = double.IsNaN(miss) ? (sum, count) : (sum + miss * miss, count + 1);
            }
        }

        return (air, Math.Sqrt(sum / count));
    }

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

    private static double[] NaN(int hours)
    {
        var all = new double[hours];
        Array.Fill(all, double.NaN);
        return all;
    }
}
