using System.Globalization;
using DesignSearch.Climate;
using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;
using DesignSearch.Files;
using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads [climate]: a weather file, twelve monthly means, or both, the means making what the file lacks.</summary>
/// <param name="table">The table; none when only a weather file is given from outside.</param>
/// <param name="folder">The run folder; its own folder "formats" may hold formats of the builder's own.</param>
/// <param name="files">Every file that is read is added.</param>
/// <param name="faults">Where faults go.</param>
internal sealed class ClimateReading(TomlTable? table, string folder, List<(string Name, string Path)> files, FaultList faults)
{
    private const int Months = 12;

    // From year to year the lowest temperature varies by about 3 K in a mild valley and 4 K inland (standard deviation).
    private const double UsualSpreadK = 3;

    // The coldest of a month's nights, of which about 20 count as drawn alone, lies so many standard deviations under their mean (order statistics).
    private const double ColdestOfMonthSd = 1.87;
    private static readonly string[] MeanKeys = ["daily_mean_spread_k", "coldest_night_c", "mean_air_c", "mean_daily_low_c", "sun_kwh_per_m2_day", "wind_m_per_s", "humidity_pct"];

    private static readonly Dictionary<string, ClimateCharacter> Characters = new()
    {
        ["maritime or valley"] = ClimateCharacter.MaritimeOrValley,
        ["dry inland"] = ClimateCharacter.DryInland,
        ["humid continental"] = ClimateCharacter.HumidContinental,
    };

    /// <summary>Reads the table and the weather file.</summary>
    /// <param name="weatherFile">A file that takes the place of the scenario's own, or null.</param>
    /// <param name="site">The place as [site] has it; only what a file leaves open is taken from it. Null when [site] names none.</param>
    /// <param name="zoneHours">Standard time of [site], which beats the file's own; null when it is silent.</param>
    /// <returns>The climate; null when there was a fault.</returns>
    public ClimateSource? Read(string? weatherFile, Place? site, double? zoneHours)
    {
        var named = table is not null && table.Has("weather_file") ? table.Text("weather_file", 400) : "";
        var monthly = Means(site ?? new Place("", 0, 0, 0, 0), required: weatherFile is null && table?.Has("weather_file") != true);
        KnownLowest? known = table?.Has("lowest_known_c") == true
            ? new(table.Number("lowest_known_c", -60, 20, "°C"), table.Number("lowest_known_years", 1, 200, "years", 10))
            : null;
        if (known is null)
            table?.Find("lowest_known_years");
        double? spread = table?.Has("lowest_yearly_spread_k") == true ? table.Number("lowest_yearly_spread_k", 0.5, 10, "K, standard deviation from year to year") : null;
        var snow = table?.Has("snow_cover_share") == true ? table.Numbers("snow_cover_share", Months, 0, 1, "share of the month with snow on the ground") : null;
        double? stampZone = table?.Has("stamp_zone_hours") == true ? table.Number("stamp_zone_hours", -12, 14, "h, zone of the stamps in the weather file minus UTC") : null;
        var seed = (ulong)(table?.Number("seed", 0, 1e15, "", 1) ?? 1);
        table?.ReportUnknown();

        var path = weatherFile ?? (named.Length > 0 ? Path.Combine(folder, named) : null);
        var record = path is null
            ? null
            : FromFile(
                path, weatherFile ?? named,
                new ReadingOptions
                {
                    Place = site,
                    ZoneHours = zoneHours,
                    StampZoneHours = stampZone,
                    Monthly = monthly,
                    Seed = seed,
                    FormatsFolder = OwnFormats(),
                });
        if (record is null && (monthly is null || path is not null))
            return null;
        return new ClimateSource(
            record, record is null ? monthly : null,
            record is null ? "Winters made from the twelve monthly means in the scenario; no weather file was used." : Sentence(record),
            seed)
        {
            Known = known,
            LowestYearlySpreadK = spread ?? (monthly is null ? UsualSpreadK : monthly.UsedCharacter == ClimateCharacter.MaritimeOrValley ? UsualSpreadK : UsualSpreadK + 1),
            SnowCoverByMonth = snow,
        };
    }

    private static string Sentence(WeatherRecord record) =>
        $"{record.Source}, {record.Period}. Air temperature: {record.SharesInWords(WeatherField.Air)}. Sun: "
            + $"{record.SharesInWords(WeatherField.Global)}; its diffuse part: {record.SharesInWords(WeatherField.Diffuse)}. "
            + $"Humidity: {record.SharesInWords(WeatherField.DewPoint)}. Wind: {record.SharesInWords(WeatherField.Wind)}. "
            + $"{record.SunFit.Sentence}";

    private MonthlyClimate? Means(Place place, bool required)
    {
        if (table is null || (!required && !MeanKeys.Any(table.Has)))
            return null;
        var air = Twelve("mean_air_c", ClimateRange.Air, "°C");
        var lowest = Twelve("mean_daily_low_c", ClimateRange.DailyLow, "°C");
        var sun = Twelve("sun_kwh_per_m2_day", ClimateRange.Sun, "kWh/m² a day on the flat (a month's sum divided by its days, MJ divided by 3.6)");
        var wind = Twelve("wind_m_per_s", ClimateRange.Wind, "m/s");
        var humidity = Twelve("humidity_pct", ClimateRange.Humidity, "%");
        var character = table.Word("character", ["from the means", .. Characters.Keys], "from the means");
        var meanSpread = Spread("daily_mean_spread_k", ClimateRange.MeanSpread, "K, standard deviation of the daily mean");
        var coldestNights = Spread("coldest_night_c", ClimateRange.ColdestNight, "°C, the coldest night of an average month");
        if (air is null || lowest is null || sun is null || wind is null || humidity is null)
            return null;
        var wrong = Enumerable.Range(0, Months).Where(m => lowest[m] > air[m] - ClimateRange.LeastDepthK).ToList();
        foreach (var m in wrong)
            table.FaultAt(
                "mean_daily_low_c",
                lowest[m].ToString(CultureInfo.InvariantCulture),
                FormattableString.Invariant($"a daily low at least 1 K below the mean air of month {m + 1}"));
        foreach (var m in coldestNights is null ? [] : Enumerable.Range(0, Months).Where(m => coldestNights[m] > lowest[m] - 1))
        {
            wrong.Add(m);
            table.FaultAt(
                "coldest_night_c",
                coldestNights![m].ToString(CultureInfo.InvariantCulture),
                FormattableString.Invariant($"a coldest night at least 1 K below the mean daily low of month {m + 1}"));
        }

        return wrong.Count > 0 ? null : new MonthlyClimate(
            place,
            [
                .. Enumerable.Range(0, Months).Select(m => new MonthMeans(air[m], lowest[m], sun[m], wind[m], humidity[m])
                {
                    DailyMeanSdK = meanSpread?[m],
                    DailyLowSdK = coldestNights is null ? null : (lowest[m] - coldestNights[m]) / ColdestOfMonthSd,
                }),
            ])
        {
            Character = character == "from the means" ? null : Characters[character],
        };
    }

    private double[]? Spread(string key, ClimateRange range, string unit) => table!.Has(key) ? table.Numbers(key, Months, range.Least, range.Most, unit) : null;

    private double[]? Twelve(string key, ClimateRange range, string unit)
    {
        if (!table!.Has(key))
            table.Missing(key, "twelve numbers, January to December, or a weather_file in their place");
        return table.Numbers(key, Months, range.Least, range.Most, unit);
    }

    // The builder's formats count as inputs: another map makes other weather.
    private string? OwnFormats()
    {
        var own = Path.Combine(folder, "formats");
        if (!Directory.Exists(own))
            return null;
        files.AddRange(Directory.EnumerateFiles(own, "*.toml").Order(StringComparer.Ordinal).Select(f => ("formats/" + Path.GetFileName(f), f)));
        return own;
    }

    private WeatherRecord? FromFile(string path, string name, ReadingOptions options)
    {
        try
        {
            files.Add((name, path));
            return WeatherFile.Read(path, options);
        }
        catch (InputException e)
        {
            faults.AddRange(e);
            return null;
        }
    }
}
