using DesignSearch.Fitting.Estimate;
using DesignSearch.Fitting.Nights;
using MathNet.Numerics.Statistics;

namespace DesignSearch.Fitting.Model;

/// <summary>Sun of each day of a log as the house felt it: by how much its air was warmer or colder than under the made sun, over what more sun would have warmed it.</summary>
internal static class DaySun
{
    private const double MoreSun = 1.5;

    // A day that half as much sun again warms by less tells nothing [K].
    private const double LeastK = 0.5;
    private const double LeastTimes = 0.1;
    private const double MostTimes = 3;

    // Bright days come in spells: their mean scatters as that of half as many, by a correlation of 0.3 from day to day (from memory).
    private const double Spells = 2;

    private static readonly double HouseVariance = Prior.Sun.Spread * Prior.Sun.Spread;

    /// <summary>Sun on the level [Wh/m²] by day of the log, NaN where it cannot be told.</summary>
    /// <param name="model">The house with its log.</param>
    /// <param name="weathers">Weathers of its days.</param>
    /// <param name="point">The house as far as it is known.</param>
    public static double[] Of(FitModel model, FitWeathers weathers, FitPoint point)
    {
        var sun = HouseFitting.NaN((model.Log.Hours + 23) / 24);
        var (felt, usual, chance) = (0.0, 0.0, 0.0);
        var days = DaySplit.Whole(model.Log, weathers.ZenithDeg);
        var air = model.Air([point, point with { Sun = MoreSun * point.Sun }], model.FreeIn(days));
        foreach (var day in days)
        {
            double Mean(Func<int, double> of) => day.Hours.Average(of);
            var more = Mean(h => air[1][h] - air[0][h]);
            var at = day.First / 24;
            double[] likely = [.. weathers.Forcings.Select(f => f.Winter.GlobalWPerM2.Skip(weathers.Before + 24 * at).Take(24).Sum())];
            var made = likely.Average();
            if (more < LeastK)
                continue;
            sun[at] = made * Math.Clamp(1 + (MoreSun - 1) * Mean(h => model.Log.InsideC[h] - air[0][h]) / more, LeastTimes, MostTimes);
            (felt, usual, chance) = (felt + sun[at], usual + made, chance + likely.Variance());
        }

        // What all days have in common is the house's, shaded or bright, as far as the chance of such days does not explain it.
        var house = usual > 0 ? Math.Pow(felt / usual, HouseVariance / (HouseVariance + Spells * chance / (usual * usual))) : 1;
        return [.. sun.Select(s => s / house)];
    }
}
