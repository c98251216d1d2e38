using System.Globalization;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Lays a stress week over a winter: three dull windy days, a day of clearing, three clear calm days with the coldest night.</summary>
internal static class HardWinter
{
    private const int Length = 7;
    private const int ColdestDay = 5;

    // Clearness and wind of the seven days.
    private static readonly double[] Clearness = [0.17, 0.15, 0.18, 0.40, 0.66, 0.70, 0.68];
    private static readonly double[] WindMPerS = [5, 6, 5, 3, 0.8, 0.8, 0.8];

    public static Winter Over(Winter typical, HardLevels levels, WinterOptions options, string name = "hard", WinterKind kind = WinterKind.Hard)
    {
        var at = Place(typical);
        var first = typical.WarmUpHours + 24 * at;
        var days = new SyntheticDays(typical.Place, typical.Start.AddHours(first - 24), Length + 2);
        FillTemperatures(days, typical, first - 24, levels);
        var air = BlendAir(typical, days, first);
        var (dew, wind) = ((double[])typical.DewPointC.Clone(), (double[])typical.WindMPerS.Clone());
        var (global, diffuse) = ((double[])typical.GlobalWPerM2.Clone(), (double[])typical.DiffuseWPerM2.Clone());
        var beam = WinterBuilder.OwnBeam(typical);
        var light = new double[days.Count * 24];
        for (var d = 0; d < Length; d++)
        {
            days.Clearness[d + 1] = Clearness[d];
            CloudMaker.Smooth(light, days, d + 1);
            for (var j = 0; j < 24; j++)
            {
                var (h, k) = (first + 24 * d + j, 24 * (d + 1) + j);
                (global[h], diffuse[h]) = (light[k], days.Above[k] > 0 ? light[k] * BeamSplit.WinterHourly(light[k] / days.Above[k]) : 0);
                beam[h] = double.NaN;
                wind[h] = WindMPerS[d];
                dew[h] = days.Low[d + 1] - (d < 3 ? 0.5 : 0);
            }
        }

        for (var h = 0; h < air.Length; h++)
            dew[h] = Math.Min(dew[h], air[h]);
        var hard = WinterBuilder.Build(
            name, kind, typical.Place, typical.Start, typical.WarmUpHours, new(air, dew, wind, global, diffuse, null) { BeamNormalWPerM2 = beam }, typical.Ground, options,
            [.. typical.Remarks, Sentence(typical, first, air, options)]);
        return WithSky(hard, typical, first, options, air);
    }

    // The sky outside the week stays the typical winter's, which may have been measured.
    private static Winter WithSky(Winter hard, Winter typical, int first, WinterOptions options, double[] air)
    {
        for (var h = 0; h < hard.Hours; h++)
        {
            if (h < first - 24 || h >= first + 24 * (Length + 1))
                hard.SkyC[h] = typical.SkyC[h];
            else if (h < first || h >= first + 24 * Length)
                hard.SkyC[h] = typical.SkyC[h] + air[h] - typical.AirC[h];
        }

        var coldest = Enumerable.Range(first, 24 * Length).MinBy(h => air[h]);
        return hard with
        {
            StressWeek = new(first, 24 * Length),
            PowerCuts = options.PowerCutHours > 0 ? [new(Math.Max(0, coldest - options.PowerCutHours / 2), options.PowerCutHours)] : [],
        };
    }

    // The week ends with the darkest fortnight of the coldest month, so that the stores are tired when it comes.
    private static int Place(Winter typical)
    {
        var days = WinterDays.Of(typical);
        if (days.Count < Length + 2)
            throw new ArgumentException("A hard winter needs a season of nine days or more.", nameof(typical));
        var month = days.ColdestMonth();
        var starts = Enumerable.Range(month[0], Math.Max(1, month.Length - 13)).Where(d => d + 14 < days.Count).ToArray();
        var darkest = starts.Length == 0 ? Math.Max(0, days.Count - 15) : starts.MinBy(d => days.LightWh.AsSpan(d, 14).ToArray().Sum());
        return Math.Clamp(darkest + 7, 1, days.Count - Length - 1);
    }

    private static void FillTemperatures(SyntheticDays days, Winter typical, int from, HardLevels levels)
    {
        var shoulder = (levels.ThreeDaysC * 3 - levels.DayC) / 2;
        var dull = (levels.WeekC * 7 - levels.ThreeDaysC * 3) / 4;
        double[] mean = [dull + 0.6, dull + 0.2, dull, dull - 0.8, shoulder, levels.DayC, shoulder];
        double[] range = [3, 2.5, 3, 6, 0, 0, 0];
        var clear = Math.Max(6, ColdMonthRange(typical) * 1.25);
        for (var d = 0; d < days.Count; d++)
        {
            var base24 = typical.AirC.AsSpan(from + 24 * d, 24).ToArray();
            var m = d is 0 or Length + 1 ? base24.Average() : mean[d - 1];
            var r = d is 0 or Length + 1 ? base24.Max() - base24.Min() : range[d - 1] > 0 ? range[d - 1] : Math.Min(clear, 2.2 * Math.Max(1, m - levels.LowestHourC));
            (days.Low[d], days.High[d]) = (m - r / 2, m + r / 2);
        }

        days.Low[ColdestDay + 1] = levels.LowestHourC;
        for (var pass = 0; pass < 60; pass++)
        {
            var hours = TemperatureCurve.Hours(days);
            for (var d = 1; d <= Length; d++)
            {
                var miss = mean[d - 1] - hours.AsSpan(24 * d, 24).ToArray().Average();
                if (d == ColdestDay + 1)
                {
                    days.Low[d] += levels.LowestHourC - hours.AsSpan(24 * d, 24).ToArray().Min();
                    days.High[d] = Math.Max(days.Low[d] + 1, days.High[d] + miss);
                }
                else
                {
                    (days.Low[d], days.High[d]) = (Math.Max(days.Low[d] + 0.8 * miss, levels.LowestHourC + 0.1), days.High[d] + 0.8 * miss);
                }
            }
        }
    }

    private static double ColdMonthRange(Winter typical)
    {
        var days = WinterDays.Of(typical);
        return days.ColdestMonth().Average(d => days.HighC[d] - days.LowC[d]);
    }

    // A day of raised cosine leads in, another out.
    private static double[] BlendAir(Winter typical, SyntheticDays days, int first)
    {
        var air = (double[])typical.AirC.Clone();
        var week = TemperatureCurve.Hours(days);
        for (var j = 0; j < week.Length; j++)
        {
            var h = first - 24 + j;
            var edge = Math.Min(j + 0.5, week.Length - j - 0.5);
            var share = edge >= 24 ? 1 : 0.5 - 0.5 * Math.Cos(Math.PI * edge / 24);
            air[h] += share * (week[j] - air[h]);
        }

        return air;
    }

    private static string Sentence(Winter typical, int first, double[] air, WinterOptions options)
    {
        var day = typical.Start.AddHours(first).ToString("d MMMM", CultureInfo.InvariantCulture);
        var lowest = air.AsSpan(first, 24 * Length).ToArray().Min();
        var why = options.HardLowestC is null ? FormattableString.Invariant($"once in {options.HardReturnYears:0.#} years") : "as the builder asked";
        return FormattableString.Invariant($"A stress week is laid over the winter from {day}: three dull windy days, then clear calm cold down to {lowest:0.0} °C, {why}.");
    }
}
