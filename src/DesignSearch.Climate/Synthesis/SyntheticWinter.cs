using DesignSearch.Climate.Formats;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Runs the whole chain from monthly means to the hours of a winter.</summary>
internal static class SyntheticWinter
{
    public static Winter Make(MonthlyClimate climate, SeasonDates season, ulong seed, WinterOptions options) =>
        Make(climate, season, seed, options, UsualDays.Of(climate, options), "typical");

    /// <summary>The same, where the usual days of the climate are known.</summary>
    public static Winter Make(MonthlyClimate climate, SeasonDates season, ulong seed, WinterOptions options, UsualDays figures, string name)
    {
        var (first, after) = SeasonCalendar.InYear(season, TableReader.NominalYear);
        var start = first.AddDays(-season.WarmUpDays);
        var from = new DateTime(start.Year, start.Month, 1, 0, 0, 0, DateTimeKind.Unspecified);
        var last = after.AddDays(-1);
        var until = new DateTime(last.Year, last.Month, 1, 0, 0, 0, DateTimeKind.Unspecified).AddMonths(1);
        var days = new SyntheticDays(climate.Place, from, (int)(until - from).TotalDays);
        var weather = Hours(climate, days, seed, figures);
        var skip = (int)(start - from).TotalHours;
        double[] Cut(double[] hours) => hours[skip..(skip + (int)(after - start).TotalHours)];
        return WinterBuilder.Build(
            name, WinterKind.Typical, climate.Place, start, (int)(first - start).TotalHours,
            new(Cut(weather.AirC), Cut(weather.DewPointC), Cut(weather.WindMPerS), Cut(weather.GlobalWPerM2), Cut(weather.DiffuseWPerM2), null)
            {
                Cover = Cut(CoverMaker.Make(days, seed)),
            },
            GroundFit.FromMonths([.. climate.Months.Select(m => m.MeanC)]), options,
            ["Made from twelve monthly means: the means are the place's, the single days are drawn by chance.", figures.Origin]);
    }

    /// <summary>Whole months of hours.</summary>
    public static HourWeather Hours(MonthlyClimate climate, SyntheticDays days, ulong seed, UsualDays figures)
    {
        new DayMaker(climate, figures).Fill(days, seed);
        var air = TemperatureCurve.Hours(days);
        var global = CloudMaker.Flickering(days, seed);
        var diffuse = global.Select((g, h) => days.Above[h] > 0 ? g * BeamSplit.WinterHourly(g / days.Above[h]) : 0).ToArray();
        return new(air, DewMaker.Make(days, air, climate), WindMaker.Make(days, climate, seed), global, diffuse, null);
    }
}
