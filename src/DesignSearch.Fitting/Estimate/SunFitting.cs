using DesignSearch.Fitting.Logs;
using DesignSearch.Fitting.Model;
using DesignSearch.Fitting.Nights;
using DesignSearch.Fitting.Words;

namespace DesignSearch.Fitting.Estimate;

/// <summary>The sun's factor from days, all that the nights told held.</summary>
internal static class SunFitting
{
    private const double MostSunHalf = 0.45;
    private const double RecordedDayK = 1.2;
    private const double MadeDayK = 3;
    private const int LeastDays = 3;

    // The sun of a fortnight is a quarter off its mean (own choice, from made winters): where nobody measured it, the mean of the made ones is off so much.
    private const double SpellVariance = 0.8;

    /// <summary>The sun's factor, or why it stays the drawing's.</summary>
    /// <param name="model">The house with its log.</param>
    /// <param name="weathers">Weathers of its days.</param>
    /// <param name="point">Loss and stores as they were found.</param>
    /// <param name="warnings">Receives what is odd about it.</param>
    public static (FigureFound Sun, string Refusal) Of(FitModel model, FitWeathers weathers, FitPoint point, List<string> warnings)
    {
        if (SensorCheck.InsideInSun(model.Log))
            return (FigureFound.Unlearnt(Prior.Sun), FitWords.InsideInSun);
        // Days are never chosen by what was measured in them: the shut ones are the dull ones, and the sun would come out too weak.
        var days = DaySplit.Whole(model.Log, weathers.ZenithDeg);
        if (weathers.IsRecorded)
        {
            var bright = model.Air([point with { Sun = HouseFitting.StrangeLoss }], model.FreeIn(days))[0];
            days = [.. days.Where(d => d.Hours.All(h => bright[h] < model.VentAboveC))];
        }

        if (days.Count < LeastDays)
            return (FigureFound.Unlearnt(Prior.Sun), FitWords.TooFewDays(days.Count));
        var found = GroupFit.Sun(model, days, point, weathers.IsRecorded ? RecordedDayK : MadeDayK).Run();
        var error = HouseFitting.TooSmall * found.Error;
        var weather = weathers.IsRecorded ? 0 : SpellVariance / days.Count;
        var half = Math.Max(HouseFitting.LeastHalf, FigureFound.NineteenOfTwenty * Math.Sqrt(error * error + weather));
        if (half > MostSunHalf)
            return (FigureFound.Unlearnt(Prior.Sun), FitWords.SunTooWide(days.Count, half));
        if (Math.Abs(found.Logs[0]) > Math.Log(HouseFitting.StrangeLoss))
            warnings.Add(FitWords.StrangeSun(found.Point.Sun));
        return (FigureFound.Of(Prior.Sun, found.Logs[0], half, true), "");
    }
}
