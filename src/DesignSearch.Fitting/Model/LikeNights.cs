using DesignSearch.Climate.Winters;
using DesignSearch.Fitting.Logs;
using MathNet.Numerics.Statistics;

namespace DesignSearch.Fitting.Model;

/// <summary>
/// Sky, wind and sun of a log's nights from the made nights that are most like them. Nights that are chosen for their cold are clear and calm: the mean of all made
/// ones has too warm a sky for them, and the house is blamed for what the sky took.
/// </summary>
internal static class LikeNights
{
    /// <summary>Made nights of so many days before and after the date are looked at.</summary>
    public const int AsideDays = 5;
    private const int Noon = 12;

    // A spread below this says that a mark tells nothing [K].
    private const double LeastSpread = 0.1;

    // How well a house tells the sun: dirt, shade and what evaporates are known to a third.
    private const double SunDoubt = 0.3;

    /// <summary>The winters with the log's own air, each night and the half days about it of another made night that is like it.</summary>
    /// <param name="bank">Made winters, each with the hour in which the log's warm-up begins.</param>
    /// <param name="log">The log.</param>
    /// <param name="count">How many winters.</param>
    /// <param name="daySun">Sun of each day of the log as the house felt it [Wh/m²], NaN where it is not known; null for none.</param>
    public static IReadOnlyList<Winter> Of(IReadOnlyList<(Winter Winter, int At)> bank, HouseLog log, int count, double[]? daySun = null)
    {
        var made = bank.Take(count).Select(b => FitWeathers.Cut(b.Winter, b.At, log)).ToList();
        var outside = FitWeathers.Filled(log.OutsideC);
        for (var noon = -Noon; noon < log.Hours; noon += 24)
        {
            var (first, end) = (Math.Max(0, noon), Math.Min(log.Hours, noon + 24));
            var own = Marks(outside, first, end - first);
            var sunny = DaysWithSun(daySun, noon);
            var sun = sunny.Select(d => daySun![d]).DefaultIfEmpty().Average();
            var nights = bank.SelectMany(b => Enumerable.Range(-AsideDays, 2 * AsideDays + 1)
                    .Select(d => (b.Winter, At: b.At + FitWeathers.WarmUpHours + 24 * d)).Where(n => n.At >= 0 && n.At + log.Hours + 24 <= n.Winter.Hours))
                .Select(n => (n.Winter, n.At, Marks: Marks(n.Winter.AirC, n.At + first, end - first),
                    Sun: sunny.Select(d => n.Winter.GlobalWPerM2.Skip(n.At + 24 * d).Take(24).Sum()).DefaultIfEmpty().Average())).ToList();
            double[] spread = [.. own.Select((_, i) => Math.Max(LeastSpread, nights.Select(n => n.Marks[i]).StandardDeviation()))];
            var sunSpread = nights.Select(n => n.Sun).StandardDeviation();
            double Unlike(double[] marks, double like) => own.Select((o, i) => Math.Pow((o - marks[i]) / spread[i], 2)).Sum()
                + (sunSpread > LeastSpread ? (sun - like) * (sun - like) / (sunSpread * sunSpread + SunDoubt * SunDoubt * sun * sun) : 0);
            var like = nights.OrderBy(n => Unlike(n.Marks, n.Sun)).Take(count).ToList();
            for (var k = 0; k < like.Count; k++)
                Lay(like[k].Winter, like[k].At, made[k], first, end);
        }

        return made;
    }

    // The days on either side of a night whose sun is known.
    private static int[] DaysWithSun(double[]? daySun, int noon)
    {
        var evening = (noon - Noon) / 24;
        return daySun is null ? [] : [.. new[] { evening, evening + 1 }.Where(d => d >= 0 && d < daySun.Length && !double.IsNaN(daySun[d]))];
    }

    // How cold, and how much it swings: clear nights swing more.
    private static double[] Marks(double[] air, int first, int count)
    {
        var hours = air.Skip(first).Take(count).ToArray();
        return [hours.Average(), hours.Max() - hours.Min()];
    }

    // The sky stays as far below the air as it was; light of another date ends with this one's sun.
    private static void Lay(Winter from, int at, Winter to, int first, int end)
    {
        for (var h = first; h < end; h++)
        {
            var (t, f) = (FitWeathers.WarmUpHours + h, at + h);
            var up = to.SunZenithDeg[t] < 90 ? 1 : 0;
            to.SkyC[t] = to.AirC[t] + from.SkyC[f] - from.AirC[f];
            to.DewPointC[t] = to.AirC[t] + from.DewPointC[f] - from.AirC[f];
            to.WindMPerS[t] = from.WindMPerS[f];
            to.GlobalWPerM2[t] = up * from.GlobalWPerM2[f];
            to.DiffuseWPerM2[t] = up * from.DiffuseWPerM2[f];
            to.BeamNormalWPerM2[t] = up * from.BeamNormalWPerM2[f];
        }
    }
}
