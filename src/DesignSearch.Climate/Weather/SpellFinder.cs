using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;
using DesignSearch.Physics;

namespace DesignSearch.Climate.Weather;

/// <summary>Finds the runs of cold and of dark days that a builder must fear.</summary>
internal static class SpellFinder
{
    private const int ShortestRun = 3;
    private const int MostRuns = 5;
    private const double DarkClearness = 0.3;

    /// <summary>Runs of three days and more whose means are all among the coldest tenth of the days, coldest first.</summary>
    public static IReadOnlyList<WeatherSpell> Cold(IReadOnlyList<WinterDay> all)
    {
        var limit = all.Select(d => d.MeanC).Order().ElementAtOrDefault(all.Count / 10);
        return [.. Runs(all, day => day.MeanC <= limit).OrderBy(s => s.MeanC).Take(MostRuns)];
    }

    /// <summary>Runs of three days and more in the colder half of the days that all let through less than three tenths of the sun, longest first.</summary>
    public static IReadOnlyList<WeatherSpell> Dark(IReadOnlyList<WinterDay> all, Place place)
    {
        var limit = all.Select(d => d.MeanC).Order().ElementAtOrDefault(all.Count / 2);
        return [.. Runs(all, day => day.MeanC <= limit && Clearness(day, place) < DarkClearness)
            .OrderByDescending(s => s.Days).ThenBy(s => s.SunKwhPerM2Day).Take(MostRuns)];
    }

    private static double Clearness(WinterDay day, Place place) =>
        day.SunKwhPerM2 * Energy.JoulesPerKwh / Math.Max(1e5, DailySun.ExtraterrestrialJPerM2(place.LatitudeDeg, day.Date.DayOfYear));

    private static List<WeatherSpell> Runs(IReadOnlyList<WinterDay> all, Func<WinterDay, bool> belongs)
    {
        var runs = new List<WeatherSpell>();
        for (var d = 0; d < all.Count; d++)
        {
            var first = d;
            while (d < all.Count && belongs(all[d]))
                d++;
            if (d - first < ShortestRun)
                continue;
            var run = all.Skip(first).Take(d - first).ToArray();
            runs.Add(new(run[0].Date, run.Length, run.Average(x => x.MeanC), run.Min(x => x.LowC), run.Average(x => x.SunKwhPerM2)));
        }

        return runs;
    }
}
