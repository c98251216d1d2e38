using System.Globalization;
using DesignSearch.Climate;
using DesignSearch.Files;

namespace DesignSearch.Layouts;

/// <summary>Reads [season], [climate] and [[winters]].</summary>
internal static class SeasonReading
{
    private const int Months = 12;
    private const int LeastDays = 14;

    private static readonly Dictionary<FieldOrigin, string> Origins = new()
    {
        [FieldOrigin.Measured] = "measured",
        [FieldOrigin.Modelled] = "computed by the provider",
        [FieldOrigin.Filled] = "filled from neighbouring hours",
        [FieldOrigin.Synthesised] = "made from other figures",
    };

    private static readonly Dictionary<string, ClimateCharacter> Characters = new()
    {
        ["maritime or valley"] = ClimateCharacter.MaritimeOrValley,
        ["dry inland"] = ClimateCharacter.DryInland,
        ["humid continental"] = ClimateCharacter.HumidContinental,
    };

    public static SeasonDates Dates(TomlTable? table, double latitudeDeg)
    {
        var (start, end) = latitudeDeg >= 0 ? ((11, 1), (3, 31)) : ((5, 1), (9, 30));
        if (table is null)
            return new SeasonDates(start.Item1, start.Item2, end.Item1, end.Item2);
        start = Day(table, "start", start);
        end = Day(table, "end", end);
        var first = new DateTime(2001, start.Item1, start.Item2);
        var last = new DateTime(2001, end.Item1, end.Item2);
        var days = (int)((last < first ? last.AddYears(1) : last) - first).TotalDays + 1;
        if (days < LeastDays)
            table.FaultAt("end", FormattableString.Invariant($"{days} days"), FormattableString.Invariant($"a season of {LeastDays} days or more"));
        var dates = new SeasonDates(start.Item1, start.Item2, end.Item1, end.Item2, table.Whole("warm_up_days", 1, 60, 30));
        table.ReportUnknown();
        return dates;
    }

    public static WeatherRecord? Recorded(TomlTable? table, string folder, string? weatherFile, List<(string Name, string Path)> files, FaultList faults)
    {
        if (weatherFile is not null)
            return FromFile(weatherFile, weatherFile, files, faults);
        if (table is null || !table.Has("weather_file"))
            return null;
        var name = table.Text("weather_file", 400);
        table.ReportUnknown();
        return name.Length == 0 ? null : FromFile(Path.Combine(folder, name), name, files, faults);
    }

    /// <summary>Where a record came from, and what share of its air and sun was measured, modelled or filled.</summary>
    public static string Sentence(WeatherRecord record)
    {
        static string Shares(IReadOnlyDictionary<FieldOrigin, double> shares) => string.Join(", ", shares.Select(s => FormattableString.Invariant($"{100 * s.Value:0.#} % {Origins[s.Key]}")));
        return $"{record.Source}, {record.Period}. Air temperature: {Shares(record.Shares(WeatherField.Air))}. Sun: {Shares(record.Shares(WeatherField.Global))}.";
    }

    public static ClimateSource? Monthly(TomlTable? table, Place place)
    {
        if (table is null || table.Has("weather_file"))
            return null;
        var air = Twelve(table, "mean_air_c", -40, 40, "°C");
        var lowest = Twelve(table, "mean_daily_low_c", -50, 35, "°C");
        var sun = Twelve(table, "sun_kwh_per_m2_day", 0.02, 10, "kWh/m² a day on the flat");
        var wind = Twelve(table, "wind_m_per_s", 0.1, 20, "m/s");
        var humidity = Twelve(table, "humidity_pct", 5, 100, "%");
        double? known = table.Has("lowest_known_c") ? table.Number("lowest_known_c", -60, 20, "°C") : null;
        var years = table.Number("lowest_known_years", 1, 200, "years", 10);
        var character = table.Word("character", ["from the means", .. Characters.Keys], "from the means");
        var seed = (ulong)table.Number("seed", 0, 1e15, "", 1);
        table.ReportUnknown();
        if (air is null || lowest is null || sun is null || wind is null || humidity is null)
            return null;
        var wrong = Enumerable.Range(0, Months).Where(m => lowest[m] > air[m] - 1).ToList();
        foreach (var m in wrong)
            table.FaultAt("mean_daily_low_c", lowest[m].ToString(CultureInfo.InvariantCulture), FormattableString.Invariant($"a daily low at least 1 K below the mean air of month {m + 1}"));
        if (wrong.Count > 0)
            return null;
        var means = Enumerable.Range(0, Months).Select(m => new MonthMeans(air[m], lowest[m], sun[m], wind[m], humidity[m])).ToList();
        var monthly = new MonthlyClimate(place, means)
        {
            LowestKnownC = known,
            LowestKnownYears = years,
            Character = character == "from the means" ? null : Characters[character],
        };
        return new ClimateSource(null, monthly, "Winters made from the twelve monthly means in the scenario; no weather file was used.", seed);
    }

    public static IReadOnlyList<WinterWish> Winters(TomlTable file)
    {
        var wishes = file.Tables("winters").Select(t =>
        {
            var kind = t.Word("kind", ["typical", "hard"]);
            var wish = new WinterWish(t.Text("name", 60, kind), kind == "hard" ? WinterKind.Hard : WinterKind.Typical, t.Number("weight", 0.001, 1000, "", 1), t.Number("return_years", 2, 100, "years", 10));
            t.ReportUnknown();
            return wish;
        }).ToList();
        if (wishes.Count == 0)
            wishes = [new("typical", WinterKind.Typical, 0.9, 10), new("hard", WinterKind.Hard, 0.1, 10)];
        var sum = wishes.Sum(w => w.Weight);
        return [.. wishes.Select(w => w with { Weight = w.Weight / sum })];
    }

    private static WeatherRecord? FromFile(string path, string name, List<(string Name, string Path)> files, FaultList faults)
    {
        try
        {
            files.Add((name, path));
            return WeatherFile.Read(path);
        }
        catch (InputException e)
        {
            faults.AddRange(e.Faults);
            return null;
        }
    }

    private static double[]? Twelve(TomlTable table, string key, double min, double max, string unit)
    {
        if (!table.Has(key))
            table.FaultAt(key, "", $"twelve numbers, January to December, for '{key}' in [climate], or a weather_file");
        return table.Numbers(key, Months, min, max, unit);
    }

    private static (int Month, int Day) Day(TomlTable table, string key, (int, int) usual)
    {
        if (!table.Has(key))
            return usual;
        var text = table.Text(key, 5);
        if (DateTime.TryParseExact("2001-" + text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
            return (date.Month, date.Day);
        if (text.Length > 0)
            table.FaultAt(key, text, $"a day as month-day, for instance \"11-01\", for '{key}'");
        return usual;
    }
}
