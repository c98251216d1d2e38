using System.Text;
using DesignSearch.Climate.Stations;
using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;
using DesignSearch.Files;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>What loggers get wrong without a word, and sound series of many climates that must not be doubted.</summary>
public sealed class DoubtTests
{
    private const int HeadLines = 4;

    private static readonly DateTime Start = new(2021, 1, 1);
    private static readonly Station Site = StationTable.Nearest(44.25, -121.167, 1)[0];
    private static readonly Lazy<HourWeather> Year = new(() => Made(Site, 3));

    private static readonly string[] Light = ["light 0.7 times", "light 1.2 times", "dew point and air exchanged", "a dead anemometer"];

    public static TheoryData<string, string> Mistakes => new()
    {
        { "clock 12 h off", "clock the air agrees with" },
        { "UTC stamps", "UTC+0 would fit" },
        { "clock 4 h late", "In doubt" },
        { "latitude of the wrong sign", "latitude" },
        { "sign of the air swapped", "sign is swapped" },
        { "one mean a day", "every 24 h only" },
        { "one mean a half day", "every 12 h only" },
        { "a mean of 2 h for hours", "every 2 h only" },
        { "a mean of 3 h for hours", "every 3 h only" },
        { "a mean of 6 h for hours", "every 6 h only" },
        { "rows every 3 h", "every 3 h only" },
        { "one spike of -35", "jump away from the hours around" },
        { "a spike of two hours", "jump away from the hours around" },
        { "a spike upwards", "jump away from the hours around" },
        { "stuck for a week", "stands still" },
        { "stuck for 40 h", "a sensor stuck" },
        { "Fahrenheit of a winter", "another unit" },
        { "Fahrenheit of a winter", "K warmer than its latitude" },
        { "a place of another height", "latitude or height" },
        { "winter only, latitude of the wrong sign", "latitude" },
        { "a sensor indoors", "indoors" },
        { "a sensor in the sun", "in the sun" },
        { "light 0.7 times", "of the light of a clear sky" },
        { "light 1.2 times", "of the light of a clear sky" },
        { "dew point and air exchanged", "exchanged" },
        { "a dead anemometer", "anemometer" },
    };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_does_not_pass_without_a_word(string mistake, string said)
    {
        var words = Said(Wrong(mistake, "logger"));
        Assert.True(words.Contains(said, StringComparison.Ordinal), $"{mistake}: {words}");
    }

    // The same mistakes in the archives of others; those of light and humidity where the format has them.
    [Theory]
    [MemberData(nameof(Mistakes))]
    public void Nor_does_it_in_a_station_file(string mistake, string said)
    {
        if (Light.Contains(mistake))
            return;
        var words = Said(Wrong(mistake, "isd-lite"));
        Assert.True(words.Contains(mistake == "UTC stamps" ? "UTC-8 would fit" : said, StringComparison.Ordinal), $"{mistake}: {words}");
    }

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void Nor_does_it_in_json(string mistake, string said)
    {
        var words = Said(Wrong(mistake, "json"));
        Assert.True(words.Contains(mistake == "UTC stamps" ? "UTC-8 would fit" : said, StringComparison.Ordinal), $"{mistake}: {words}");
    }

    [Theory]
    [InlineData("latitude of the wrong sign", "latitude")]
    [InlineData("sign of the air swapped", "sign is swapped")]
    [InlineData("Fahrenheit of a winter", "another unit")]
    [InlineData("a place of another height", "latitude or height")]
    [InlineData("winter only, latitude of the wrong sign", "latitude")]
    public void Nor_does_it_in_daily_highs_and_lows(string mistake, string said)
    {
        var words = Said(Wrong(mistake, "daily"));
        Assert.True(words.Contains(said, StringComparison.Ordinal), $"{mistake}: {words}");
    }

    // A table whose columns have the short names of archives, stamped in UTC by its own words, is read whole.
    [Fact]
    public void Short_names_of_archives_are_columns_too()
    {
        var weather = Year.Value;
        var text = Head(Site.Place) + "time,temp,dwpt,rhum,wspd\n" + string.Concat(Enumerable.Range(0, weather.Hours).Select(h => MadeSky.F(
            $"{Start.AddHours(h + 0.5 - Site.Place.ZoneHours):yyyy-MM-dd HH:mm},{weather.AirC[h]:0.0},{weather.DewPointC[h]:0.0},{Humidity.RelativePercent(weather.AirC[h], weather.DewPointC[h]):0},{3.6 * weather.WindMPerS[h]:0.0}\n")));
        var record = TempFile.Read(text);
        Assert.All(record.Origins[WeatherField.DewPoint].Skip(24).Take(8000), o => Assert.Equal(FieldOrigin.Measured, o));
        Assert.All(record.Origins[WeatherField.Wind].Skip(24).Take(8000), o => Assert.Equal(FieldOrigin.Measured, o));
        Assert.Equal(weather.WindMPerS.Average(), record.WindMPerS.Average(), 0.05);
        Assert.Empty(record.Doubts);
    }

    // Small islands have next to no daily range, the cold inland has days that stray by 10 K: what is made stays weather.
    [Fact]
    public void Made_years_of_every_station_stay_near_its_extremes()
    {
        var wrong = StationTable.All.Where((_, i) => i % (Longer.IsOn ? 8 : 40) == 3).Select(s => (s.Place.Name, s.LowestC, Air: Made(s, 5).AirC))
            .Where(s => s.Air.Min() < s.LowestC - 6 || s.Air.Max() > 58).ToList();
        Assert.True(wrong.Count == 0, string.Join("; ", wrong.Select(w => FormattableString.Invariant($"{w.Name} {w.LowestC}: {w.Air.Min():0.0} to {w.Air.Max():0.0}"))));
    }

    [Theory]
    [InlineData("logger")]
    [InlineData("isd-lite")]
    [InlineData("json")]
    [InlineData("daily")]
    public void Sound_series_of_many_climates_are_believed(string format)
    {
        var every = 200 / Longer.Many("DESIGNSEARCH_SERIES", usual: 20, longer: 200);
        var stations = StationTable.All.Where((_, i) => i % 5 == 2).Take(200).ToArray();
        var doubted = new List<string>();
        Parallel.For(0, stations.Length / every, i =>
        {
            var n = i * every;
            var words = Said(Sound(stations[n], n, format), soundToo: false);
            if (words.Length == 0)
                return;
            lock (doubted)
                doubted.Add($"{stations[n].Place.Name} ({n % 4}): {words}");
        });
        Assert.Equal(200, stations.Length);
        Assert.True(doubted.Count <= (every == 1 ? 2 : 1), $"{doubted.Count}: " + string.Join("\n", doubted.Take(12)));
    }

    // Whole years, winters, series with gaps, half-hourly ones in whole degrees.
    private static string Sound(Station station, int n, string format)
    {
        var weather = Made(station, (ulong)n);
        var rows = new List<(double Hour, double Air)>();
        var (from, to) = n % 4 == 1 ? (24 * 273, 24 * 365) : (0, weather.Hours);
        for (var h = from; h < to; h++)
        {
            if (n % 4 == 2 && h % 700 is > 20 and < 32)
                continue;
            rows.Add((h, n % 4 == 3 ? Math.Round(2 * weather.AirC[h]) / 2 : Math.Round(weather.AirC[h], 1)));
        }

        return Write(format, station.Place, rows, "C");
    }

    // Air as a logger, an agency or an interface would write it.
    private static string Write(string format, Place place, List<(double Hour, double Air)> rows, string unit)
    {
        DateTime Utc(double hour) => Start.AddHours(Math.Floor(hour - place.ZoneHours));
        if (format == "logger")
            return Head(place) + $"Date Time,Temp ({unit})\n" + string.Concat(rows.Select(r => MadeSky.F($"{Start.AddHours(r.Hour + 0.5):yyyy-MM-dd HH:mm},{r.Air:0.00}\n")));
        if (format == "isd-lite")
            return Head(place) + string.Concat(rows.Select(r => MadeSky.IsdLiteRow(Utc(r.Hour), r.Air, -999.9, -999.9, -9999)));
        if (format == "daily")
            return Head(place) + string.Concat(rows.GroupBy(r => Math.Floor(r.Hour / 24)).Where(d => d.Count() == 24).Select(d => MadeSky.F(
                $"XXM00099999,{Start.AddDays(d.Key):yyyyMMdd},TMAX,{10 * (unit == "-" ? d.Min(r => r.Air) : d.Max(r => r.Air)):0},,,W,\nXXM00099999,{Start.AddDays(d.Key):yyyyMMdd},TMIN,{10 * (unit == "-" ? d.Max(r => r.Air) : d.Min(r => r.Air)):0},,,W,\n")));
        return Json(place, rows.Select(r => Utc(r.Hour)), ("temperature_2m", rows.Select(r => r.Air)));
    }

    private static string Json(Place place, IEnumerable<DateTime> stamps, params (string Name, IEnumerable<double> Values)[] columns) =>
        MadeSky.F($"{{\"latitude\":{place.LatitudeDeg:0.000},\"longitude\":{place.LongitudeDeg:0.000},\"elevation\":{place.ElevationM:0},\"utc_offset_seconds\":0,\"hourly\":{{\"time\":[")
        + string.Join(',', stamps.Select(t => MadeSky.F($"\"{t:yyyy-MM-ddTHH:mm}\""))) + "]"
        + string.Concat(columns.Select(c => $",\"{c.Name}\":[" + string.Join(',', c.Values.Select(v => MadeSky.F($"{v:0.00}"))) + "]")) + "}}";

    private static string Wrong(string mistake, string format)
    {
        var (weather, place) = (Year.Value, Site.Place);
        var air = (double[])weather.AirC.Clone();
        var (from, to, lateH, every, unit) = (0, air.Length, 0.0, 1, "C");
        void Blocks(int hours)
        {
            for (var h = 0; h + hours <= air.Length; h += hours)
                Array.Fill(air, weather.AirC.Skip(h).Take(hours).Average(), h, hours);
        }

        switch (mistake)
        {
            case "clock 12 h off": lateH = 12; break;
            case "UTC stamps": lateH = format == "logger" ? -place.ZoneHours : place.ZoneHours; break;
            case "clock 4 h late": lateH = 4; break;
            case "latitude of the wrong sign": place = place with { LatitudeDeg = -place.LatitudeDeg }; break;
            case "winter only, latitude of the wrong sign": (place, from, air) = (place with { LatitudeDeg = -place.LatitudeDeg }, 24 * 305, [.. air.Select(a => a - 4)]); break;
            // Of a day of swapped signs the high is the lower figure.
            case "sign of the air swapped": (air, unit) = ([.. air.Select(a => -a)], format == "daily" ? "-" : unit); break;
            case "one mean a day": Blocks(24); break;
            case "one mean a half day": Blocks(12); break;
            case "a mean of 2 h for hours": Blocks(2); break;
            case "a mean of 3 h for hours": Blocks(3); break;
            case "a mean of 6 h for hours": Blocks(6); break;
            case "rows every 3 h": every = 3; break;
            case "one spike of -35": air[400] = -35; break;
            case "a spike of two hours": (air[400], air[401]) = (air[399] + 30, air[399] + 31); break;
            case "a spike upwards": air[4000] += 14; break;
            case "stuck for a week": Array.Fill(air, air[500], 500, 168); break;
            case "stuck for 40 h": Array.Fill(air, air[500], 500, 40); break;
            case "Fahrenheit of a winter": (air, from) = ([.. air.Select(a => a * 1.8 + 32)], 24 * 334); break;
            case "a place of another height": place = place with { ElevationM = 4500 }; break;
            case "a sensor indoors": air = [.. air.Select((a, h) => 16 + 0.06 * (a - 9))]; break;
            case "a sensor in the sun": air = [.. air.Select((a, h) => a + Math.Min(18, weather.GlobalWPerM2[h] / 20))]; break;
            case "light 0.7 times": return WithLight(0.7, exchanged: false, wind: 1, format);
            case "light 1.2 times": return WithLight(1.25, exchanged: false, wind: 1, format);
            case "dew point and air exchanged": return WithLight(1, exchanged: true, wind: 1, format);
            case "a dead anemometer": return WithLight(1, exchanged: false, wind: 0.05, format);
            default: throw new ArgumentException(mistake);
        }

        var rows = new List<(double Hour, double Air)>();
        for (var h = from; h < to; h += every)
            rows.Add((h + lateH, air[h]));
        return Write(format, place, rows, unit);
    }

    private static string WithLight(double times, bool exchanged, double wind, string format)
    {
        if (format == "json")
        {
            var made = Year.Value;
            var (first, second) = exchanged ? (made.DewPointC, made.AirC) : (made.AirC, made.DewPointC);
            return Json(
                Site.Place, Enumerable.Range(0, made.Hours).Select(h => Start.AddHours(h + 1 - Site.Place.ZoneHours)), ("temperature_2m", first), ("dew_point_2m", second),
                ("wind_speed_10m", made.WindMPerS.Select(w => 3.6 * w * wind)), ("shortwave_radiation", made.GlobalWPerM2.Select(g => g * times)));
        }

        var (weather, rows) = (Year.Value, new StringBuilder("# designsearch weather\n" + Head(Site.Place) + "time,air_c,dew_point_c,wind_m_per_s,global_w_per_m2\n"));
        for (var h = 0; h < weather.Hours; h++)
        {
            var (air, dew) = exchanged ? (weather.DewPointC[h], weather.AirC[h]) : (weather.AirC[h], weather.DewPointC[h]);
            rows.Append(MadeSky.F($"{Start.AddHours(h):yyyy-MM-dd HH:mm},{air:0.0},{dew:0.0},{wind * weather.WindMPerS[h]:0.00},{times * weather.GlobalWPerM2[h]:0}\n"));
        }

        return rows.ToString();
    }

    private static HourWeather Made(Station station, ulong seed)
    {
        var climate = new MonthlyClimate(station.Place, station.Months);
        return SyntheticWinter.Hours(climate, new SyntheticDays(station.Place, Start, 365), seed, UsualDays.Of(climate, new()));
    }

    private static string Head(Place place) =>
        MadeSky.F($"# place: Made\n# latitude: {place.LatitudeDeg:0.000}\n# longitude: {place.LongitudeDeg:0.000}\n# elevation_m: {place.ElevationM:0}\n# zone_hours: {place.ZoneHours:0.0}\n");

    // Everything a person is told beyond what every file of its kind is told.
    private static string Said(string text, bool soundToo = true)
    {
        try
        {
            var record = TempFile.Read(text);
            return string.Join(" ", record.Doubts.Select(d => "In doubt: " + d).Concat(record.Repairs.Where(r => soundToo || r.Contains("jump away", StringComparison.Ordinal) || r.Contains("stuck", StringComparison.Ordinal))));
        }
        catch (InputException e)
        {
            // What is said of the whole file has no place in it; the first lines are its head. JSON stands in one line.
            Assert.All(e.Faults, f => Assert.True(f.Column == 0 && (f.Line == 0 || f.Line > HeadLines || text.StartsWith('{')), f.ToString()));
            return string.Join(" ", e.Faults.Select(f => $"{f.Value} {f.Expected}"));
        }
    }
}
