using DesignSearch.Climate.Stations;
using DesignSearch.Files;
using W = DesignSearch.Runs.Starting.QuestionWords;

namespace DesignSearch.Runs.Starting;

/// <summary>The questions about a case, in the order in which they are asked.</summary>
internal static class CaseQuestions
{
    private const double DegPerHour = 15;
    private const int MeanWinds = 12;
    private const string None = "none";
    private const string Here = "here";

    private static readonly Dictionary<string, (double MeanMPerS, double StormMPerS)> Winds = new()
    {
        ["sheltered"] = (1.6, 26),
        ["open"] = (3, 30),
        ["coast"] = (5, 38),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Question> All { get; } =
    [
        new()
        {
            Text = _ => W.Name, WhereFrom = W.NameFrom, Line = ("", "name"),
            Standing = c => c.Words("", "name"), Usual = c => c.Name, Take = TakeName,
        },
        new()
        {
            Text = _ => W.Place, WhereFrom = W.PlaceFrom, Line = ("site", "latitude_deg"),
            Standing = c => Pair(c, ", ", "site", "latitude_deg", "longitude_deg"), Usual = _ => "50, 10", Take = TakePlace,
        },
        new()
        {
            Text = _ => W.Height, WhereFrom = W.HeightFrom, Line = ("site", "elevation_m"),
            Standing = c => One(c, "site", "elevation_m"), Usual = _ => "200", Take = TakeHeight,
        },
        new()
        {
            Text = _ => W.Weather, WhereFrom = W.WeatherFrom, Line = ("climate", "weather_file"),
            Standing = c => c.Words("climate", "weather_file") ?? None, Usual = _ => None, Take = TakeWeather,
        },
        new()
        {
            Text = c => W.Station(c.Facts.Station!, c.Facts.LatitudeDeg, c.Facts.LongitudeDeg, c.Facts.ElevationM), WhereFrom = W.StationFrom,
            Line = ("climate", "mean_air_c"), IsAsked = c => c.Facts is { IsGuessed: true, Station: not null },
            Standing = _ => null, Usual = _ => "yes", Take = TakeStation,
        },
        new()
        {
            Text = _ => W.Months, WhereFrom = W.MonthsFrom, Line = ("climate", "mean_air_c"), IsAsked = c => c.Facts.IsGuessed,
            Standing = _ => null, Usual = UsualMonths, Take = TakeMonths,
        },
        new()
        {
            Text = _ => W.Skies, WhereFrom = W.SkiesFrom, Line = ("climate", "sun_kwh_per_m2_day"), IsAsked = c => c.Facts.IsGuessed,
            Standing = _ => null, Usual = _ => "usual", Take = TakeSky,
        },
        new()
        {
            Text = _ => W.Wind, WhereFrom = W.WindFrom, Line = ("site", "design_wind_m_per_s"), IsAsked = c => c.IsNew,
            Standing = _ => null, Usual = _ => "open", Take = TakeWind,
        },
        ShapeQuestions.Shape,
        new()
        {
            Text = _ => W.Floor, WhereFrom = W.FloorFrom, Picture = W.FloorPicture, Line = ("greenhouse", "length_m"),
            Standing = c => Pair(c, " x ", "greenhouse", "length_m", "width_m"), Usual = _ => "4 x 3",
            Take = TakeFloor,
        },
        ShapeQuestions.Heights,
        .. ShapeQuestions.Wall,
        new()
        {
            Text = _ => W.Ridge, WhereFrom = W.RidgeFrom, Picture = W.RidgePicture, Line = ("greenhouse", "ridge_azimuth_deg"), IsAsked = c => !ShapeQuestions.IsLeanTo(c),
            Standing = c => One(c, "greenhouse", "ridge_azimuth_deg"), Usual = _ => "90",
            Take = (c, a) => Single(c, a, "greenhouse", "ridge_azimuth_deg", (0, 360), W.RidgeExpected),
        },
        .. ShapeQuestions.Foot,
        new()
        {
            Text = _ => W.Cover, WhereFrom = W.CoverFrom, Line = ("greenhouse", "cover_u_w_per_m2k"),
            Standing = StandingCover, Usual = _ => "twin-6", Take = TakeCover,
        },
        new()
        {
            Text = _ => W.Leaks, WhereFrom = W.LeaksFrom, Line = ("greenhouse", "air_changes_per_hour"),
            Standing = c => One(c, "greenhouse", "air_changes_per_hour"), Usual = _ => "1",
            Take = (c, a) => Single(c, a, "greenhouse", "air_changes_per_hour", (0.1, 20), W.LeaksExpected),
        },
        new()
        {
            Text = _ => W.Limit, WhereFrom = W.LimitFrom, Line = ("greenhouse", "frost_limit_c"),
            Standing = c => One(c, "greenhouse", "frost_limit_c"), Usual = _ => "3",
            Take = (c, a) => Single(c, a, "greenhouse", "frost_limit_c", (-10, 20), W.LimitExpected),
        },
        new()
        {
            Text = _ => W.Bench, WhereFrom = W.BenchFrom, Line = ("greenhouse", "bench_enough_m2"),
            Standing = c => One(c, "greenhouse", "bench_enough_m2") ?? "0", Usual = _ => "0", Take = TakeBench,
        },
        new()
        {
            Text = _ => W.Mains, WhereFrom = W.MainsFrom, Line = ("site", "mains_cable_m"),
            Standing = StandingMains, Usual = _ => "30", Take = TakeMains,
        },
        new()
        {
            Text = _ => W.Prices, WhereFrom = W.PricesFrom, Line = ("money", "price_level"),
            Standing = c => c.Words("money", "price_level") ?? "usual", Usual = _ => "usual", Take = TakePrices,
        },
        new()
        {
            Text = _ => W.Budget, WhereFrom = W.BudgetFrom, Line = ("money", "budget"),
            Standing = c => One(c, "money", "budget") is { } budget ? $"{budget} {c.Words("money", "currency")}" : null, Usual = _ => "2000 euro", Take = TakeBudget,
        },
        new()
        {
            Text = _ => W.Tariff, WhereFrom = W.TariffFrom, Line = ("money", "tariff_per_kwh"), IsAsked = c => !c.Facts.HasNoMains,
            Standing = c => One(c, "money", "tariff_per_kwh"), Usual = _ => "0.35",
            Take = (c, a) => Single(c, a, "money", "tariff_per_kwh", (0, 100), W.TariffExpected),
        },
    ];

    private static string? TakeName(NewCase c, string answer)
    {
        c.Scenario.Set("", "name", answer);
        c.Scenario.Set("site", "place", answer);
        return null;
    }

    private static string? TakePlace(NewCase c, string answer)
    {
        if (AnswerReading.Place(answer) is not [var latitude, var longitude])
            return W.PlaceExpected;
        (c.Facts.LatitudeDeg, c.Facts.LongitudeDeg) = (latitude, longitude);
        c.Facts.Station = StationTable.Nearest(latitude, longitude, 1)[0] is var near && near.DistanceKm(latitude, longitude) <= StationWorth.FirstLookKm ? near : null;
        c.Scenario.Set("site", "latitude_deg", latitude);
        c.Scenario.Set("site", "longitude_deg", longitude);
        c.Scenario.Set("site", "zone_hours", Math.Round(longitude / DegPerHour));
        c.Scenario.Set("season", "start", latitude >= 0 ? "11-01" : "05-01");
        c.Scenario.Set("season", "end", latitude >= 0 ? "03-31" : "09-30");
        return null;
    }

    private static string? TakeHeight(NewCase c, string answer)
    {
        if (Single(c, answer, "site", "elevation_m", (-400, 5000), W.HeightExpected) is { } wrong)
            return wrong;
        c.Facts.ElevationM = AnswerReading.Numbers(answer, (-400, 5000))![0];
        return null;
    }

    private static string? TakeWeather(NewCase c, string answer)
    {
        if (answer.Length > 400)
            return W.WeatherExpected;
        string[] means = ["mean_air_c", "mean_daily_low_c", "sun_kwh_per_m2_day", "wind_m_per_s", "humidity_pct"];
        c.Facts.IsGuessed = answer == None && c.IsNew;
        if (answer == None)
            c.Scenario.Leave("climate", "weather_file");
        else
            c.Scenario.Set("climate", "weather_file", answer);
        foreach (var key in answer == None ? [] : means)
            c.Scenario.Leave("climate", key);
        return null;
    }

    // Colder by the height between them; the twelve months then stand as those of a table do, and nothing more is asked about them.
    private static string? TakeStation(NewCase c, string answer)
    {
        if (AnswerReading.Word(answer, "yes", "no") is not { } word)
            return W.YesOrNo;
        if (word == "no")
            return null;
        var (station, months) = (c.Facts.Station!, c.Facts.Station!.Months);
        var colder = StationWorth.ColderK(c.Facts.ElevationM - station.Place.ElevationM);
        c.Scenario.Set("climate", "mean_air_c", months.Select(m => Math.Round(m.MeanC - colder, 1)));
        c.Scenario.Set("climate", "mean_daily_low_c", months.Select(m => Math.Round(m.MeanDailyLowC - colder, 1)));
        c.Scenario.Set("climate", "sun_kwh_per_m2_day", months.Select(m => Math.Round(m.GhiKwhPerM2Day, 2)));
        c.Scenario.Set("climate", "wind_m_per_s", months.Select(m => Math.Round(m.WindMPerS, 1)));
        c.Scenario.Set("climate", "humidity_pct", months.Select(m => Math.Round(m.HumidityPercent)));
        c.Scenario.Remark("climate", "mean_air_c", W.OfStation(station, c.Facts.LatitudeDeg, c.Facts.LongitudeDeg));
        c.Facts.IsGuessed = false;
        return null;
    }

    private static string UsualMonths(NewCase c) => AnswerReading.Typed(
        " ", ClimateGuess.UsualColdestC(c.Facts.LatitudeDeg, c.Facts.ElevationM), ClimateGuess.UsualWarmestC(c.Facts.LatitudeDeg, c.Facts.ElevationM));

    private static string? TakeMonths(NewCase c, string answer)
    {
        if (AnswerReading.Numbers(answer, (-35, 35), (-20, 40)) is not [var coldest, var warmest] || coldest > warmest)
            return W.MonthsExpected;
        (c.Facts.ColdestC, c.Facts.WarmestC) = (coldest, warmest);
        return null;
    }

    private static string? TakeSky(NewCase c, string answer)
    {
        if (AnswerReading.Word(answer, "dull", "usual", "sunny") is not { } word)
            return W.SkiesExpected;
        var guess = new ClimateGuess(c.Facts.LatitudeDeg, c.Facts.ColdestC, c.Facts.WarmestC, Enum.Parse<Sky>(word, ignoreCase: true));
        c.Scenario.Set("climate", "mean_air_c", guess.MeanAirC);
        c.Scenario.Set("climate", "mean_daily_low_c", guess.MeanDailyLowC);
        c.Scenario.Set("climate", "sun_kwh_per_m2_day", guess.SunKwhPerM2Day);
        c.Scenario.Set("climate", "humidity_pct", guess.HumidityPct);
        c.Scenario.Remark("climate", "mean_air_c", W.MonthsGuessed);
        return null;
    }

    private static string? TakeWind(NewCase c, string answer)
    {
        if (AnswerReading.Word(answer, [.. Winds.Keys]) is not { } word)
            return W.WindExpected;
        c.Scenario.Set("site", "design_wind_m_per_s", Winds[word].StormMPerS);
        if (c.Facts.IsGuessed)
            c.Scenario.Set("climate", "wind_m_per_s", Enumerable.Repeat(Winds[word].MeanMPerS, MeanWinds));
        return null;
    }

    private static string? TakeFloor(NewCase c, string answer)
    {
        if (AnswerReading.Numbers(answer, (1, 60), (1, 20)) is not [var length, var width])
            return W.FloorExpected;
        c.Facts.WidthM = width;
        c.Scenario.Set("greenhouse", "length_m", length);
        c.Scenario.Set("greenhouse", "width_m", width);
        return null;
    }

    // A cover with figures of its own has no word: an empty line leaves it.
    private static string StandingCover(NewCase c) =>
        CoverKind.All.FirstOrDefault(k => k.UWPerM2K == c.Number("greenhouse", "cover_u_w_per_m2k") && k.Layers == (c.Number("greenhouse", "cover_layers") ?? 1))?.Word
            ?? "U " + One(c, "greenhouse", "cover_u_w_per_m2k");

    private static string? TakeCover(NewCase c, string answer)
    {
        if (!c.IsNew && answer == StandingCover(c))
            return null;
        if (AnswerReading.Word(answer, CoverKind.Words) is not { } word)
            return W.CoverExpected;
        var kind = CoverKind.All.First(k => k.Word == word);
        c.Scenario.Set("greenhouse", "cover_u_w_per_m2k", kind.UWPerM2K);
        c.Scenario.Set("greenhouse", "cover_light", kind.Light);
        c.Scenario.Set("greenhouse", "cover_layers", kind.Layers);
        return null;
    }

    private static string? TakeBench(NewCase c, string answer)
    {
        if (AnswerReading.Numbers(answer, (0, 50)) is not [var area])
            return W.BenchExpected;
        if (area > 0)
            c.Scenario.Set("greenhouse", "bench_enough_m2", area);
        else
            c.Scenario.Leave("greenhouse", "bench_enough_m2");
        return null;
    }

    private static string StandingMains(NewCase c) =>
        c.Says("site", "no_mains") ? None : c.Says("site", "mains_at_greenhouse") ? Here : One(c, "site", "mains_cable_m") ?? "0";

    private static string? TakeMains(NewCase c, string answer)
    {
        var word = AnswerReading.Word(answer, Here, None);
        var metres = AnswerReading.Numbers(answer, (c.IsNew ? 1 : 0, 500));
        if (word is null && metres is null)
            return W.MainsExpected;
        c.Facts.HasNoMains = word == None;
        if (word == None)
        {
            c.Scenario.Set("site", "no_mains", true);
            foreach (var key in (string[])["mains_at_greenhouse", "mains_cable_m"])
                c.Scenario.Leave("site", key);
            c.Scenario.Leave("money", "tariff_per_kwh");
            return null;
        }

        c.Scenario.Leave("site", "no_mains");
        c.Scenario.Set("site", "mains_at_greenhouse", word == Here);
        c.Scenario.Set("site", "mains_cable_m", metres?[0] ?? 0);
        return null;
    }

    private static string? TakePrices(NewCase c, string answer)
    {
        if (AnswerReading.Word(answer, "usual", "low", "high", "second-hand") is not { } word)
            return W.PricesExpected;
        c.Scenario.Set("money", "price_level", word);
        return null;
    }

    private static string? TakeBudget(NewCase c, string answer)
    {
        if (NumberHint.Meant(answer) is not ({ } number, _) || !PlainNumber.TryRead(number, out var budget) || budget is <= 0 or > 1e7)
            return W.BudgetExpected;
        c.Scenario.Set("money", "budget", budget);
        if (string.Concat(answer.Where(char.IsLetter)) is { Length: > 0 and <= 20 } currency)
            c.Scenario.Set("money", "currency", currency);
        return null;
    }

    private static string? Single(NewCase c, string answer, string table, string key, (double, double) range, string expected)
    {
        if (AnswerReading.Numbers(answer, range) is not [var value])
            return expected;
        c.Scenario.Set(table, key, value);
        return null;
    }

    private static string? One(NewCase c, string table, string key) => c.Number(table, key) is { } value ? AnswerReading.Typed("", value) : null;

    private static string? Pair(NewCase c, string between, string table, string first, string second) =>
        c.Number(table, first) is { } one && c.Number(table, second) is { } two ? AnswerReading.Typed(between, one, two) : null;
}
