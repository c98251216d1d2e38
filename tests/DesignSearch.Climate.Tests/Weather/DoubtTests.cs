using System.Text;
using DesignSearch.Climate.Stations;
using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;
using DesignSearch.Files;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>What loggers get wrong without a word, and sound series of many climates that must not be doubted.</summary>
public sealed class DoubtTests
{
    private static readonly DateTime Start = new(2021, 1, 1);
    private static readonly Station Site = StationTable.Nearest(44.25, -121.167, 1)[0];
    private static readonly Lazy<HourWeather> Year = new(() => Made(Site, 3));

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
        var words = Said(Wrong(mistake));
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
        var wrong = StationTable.All.Where((_, i) => i % 8 == 3).Select(s => (s.Place.Name, s.LowestC, Air: Made(s, 5).AirC))
            .Where(s => s.Air.Min() < s.LowestC - 6 || s.Air.Max() > 58).ToList();
        Assert.True(wrong.Count == 0, string.Join("; ", wrong.Select(w => FormattableString.Invariant($"{w.Name} {w.LowestC}: {w.Air.Min():0.0} to {w.Air.Max():0.0}"))));
    }

    [Fact]
    public void Sound_series_of_many_climates_are_believed()
    {
        var stations = StationTable.All.Where((_, i) => i % 5 == 2).Take(200).ToArray();
        var doubted = new List<string>();
        Parallel.For(0, stations.Length, n =>
        {
            var words = Said(Sound(stations[n], n), soundToo: false);
            if (words.Length == 0)
                return;
            lock (doubted)
                doubted.Add($"{stations[n].Place.Name} ({n % 4}): {words}");
        });
        Assert.Equal(200, stations.Length);
        Assert.True(doubted.Count <= 2, $"{doubted.Count}: " + string.Join("\n", doubted.Take(12)));
    }

    // Whole years, winters, series with gaps, half-hourly ones in whole degrees.
    private static string Sound(Station station, int n)
    {
        var weather = Made(station, (ulong)n);
        var rows = new StringBuilder(Head(station.Place) + "Date Time,Temp (C)\n");
        var (from, to) = n % 4 == 1 ? (24 * 273, 24 * 365) : (0, weather.Hours);
        for (var h = from; h < to; h++)
        {
            if (n % 4 == 2 && h % 700 is > 20 and < 32)
                continue;
            rows.Append(MadeSky.F($"{Start.AddHours(h + 0.5):yyyy-MM-dd HH:mm},{(n % 4 == 3 ? Math.Round(2 * weather.AirC[h]) / 2 : weather.AirC[h]):0.0}\n"));
        }

        return rows.ToString();
    }

    private static string Wrong(string mistake)
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
            case "UTC stamps": lateH = -place.ZoneHours; break;
            case "clock 4 h late": lateH = 4; break;
            case "latitude of the wrong sign": place = place with { LatitudeDeg = -place.LatitudeDeg }; break;
            case "winter only, latitude of the wrong sign": (place, from, air) = (place with { LatitudeDeg = -place.LatitudeDeg }, 24 * 305, [.. air.Select(a => a - 4)]); break;
            case "sign of the air swapped": air = [.. air.Select(a => -a)]; break;
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
            case "light 0.7 times": return WithLight(0.7, exchanged: false, wind: 1);
            case "light 1.2 times": return WithLight(1.25, exchanged: false, wind: 1);
            case "dew point and air exchanged": return WithLight(1, exchanged: true, wind: 1);
            case "a dead anemometer": return WithLight(1, exchanged: false, wind: 0.05);
            default: throw new ArgumentException(mistake);
        }

        var rows = new StringBuilder(Head(place) + $"Date Time,Temp ({unit})\n");
        for (var h = from; h < to; h += every)
            rows.Append(MadeSky.F($"{Start.AddHours(h + 0.5 + lateH):yyyy-MM-dd HH:mm},{air[h]:0.00}\n"));
        return rows.ToString();
    }

    private static string WithLight(double times, bool exchanged, double wind)
    {
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
            return string.Join(" ", e.Faults.Select(f => $"{f.Value} {f.Expected}"));
        }
    }
}
