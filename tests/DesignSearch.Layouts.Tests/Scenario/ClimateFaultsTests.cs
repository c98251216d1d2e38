using System.Globalization;
using DesignSearch.Files;
using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Systems;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Means, winters and assumptions at both sides of what they may be, and what is told of one that is not.</summary>
public sealed class ClimateFaultsTests
{
    private const string Lows = "mean_daily_low_c = [-8.1, -7.2, -3.0, 1.4, 5.8, 9.3, 11.2, 10.9, 7.6, 3.1, -1.8, -6.4]";
    private const string Air = "mean_air_c = [-2.8, -1.2, 3.1, 7.6, 12.4, 15.9, 18.1, 17.5, 13.6, 8.6, 2.7, -1.7]";

    // March has a mean of 3.1 and a mean daily low of -3.0 °C.
    [Theory]
    [InlineData(2.1, "")]
    [InlineData(2.2, "2.2: a daily low at least 1 K below the mean air of month 3")]
    public void A_daily_low_lies_a_degree_below_its_mean(double low, string told) => Told(told, (Lows, Lows.Replace("-3.0", Text(low), StringComparison.Ordinal)));

    [Theory]
    [InlineData(-4.0, "")]
    [InlineData(-3.9, "-3.9: a coldest night at least 1 K below the mean daily low of month 3")]
    public void A_coldest_night_lies_a_degree_below_the_mean_daily_low(double night, string told) =>
        Told(told, (Lows, Lows + $"\ncoldest_night_c = [-19, -18, {Text(night)}, -6, -1, 2, 4, 3, 0, -5, -11, -16]"));

    // (-8.1 + 19) / 1.87, the coldest of some twenty nights that count.
    [Fact]
    public void A_coldest_night_says_how_far_the_lows_stray()
    {
        using var small = new SmallScenario((Lows, Lows + "\ncoldest_night_c = [-19, -18, -14, -6, -1, 2, 4, 3, 0, -5, -11, -16]\ndaily_mean_spread_k = [4.5, 4, 4, 3, 3, 3, 3, 3, 3, 3, 4, 4]"));
        var months = small.Read().Climate.Monthly!.Months;
        Assert.Equal((-8.1 + 19) / 1.87, months[0].DailyLowSdK!.Value, 1e-9);
        Assert.Equal((4.5, 4), (months[0].DailyMeanSdK!.Value, months[11].DailyMeanSdK!.Value));
    }

    [Theory]
    [InlineData("mean_air_c")]
    [InlineData("mean_daily_low_c")]
    [InlineData("sun_kwh_per_m2_day")]
    [InlineData("wind_m_per_s")]
    [InlineData("humidity_pct")]
    public void Means_that_lack_are_asked_for(string key)
    {
        using var small = new SmallScenario((key + " = ", "#"));
        Assert.Contains(small.Faults(), f => f.Expected == $"'{key}': twelve numbers, January to December, or a weather_file in their place"
            || (f.Expected.Contains("twelve numbers, January to December, or a weather_file in their place", StringComparison.Ordinal) && (f.Expected + f.Value).Contains(key, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("mean_air_c", -40, 40)]
    [InlineData("mean_daily_low_c", -50, 35)]
    [InlineData("sun_kwh_per_m2_day", 0.02, 10)]
    [InlineData("wind_m_per_s", 0.1, 20)]
    [InlineData("humidity_pct", 5, 100)]
    [InlineData("daily_mean_spread_k", 0.3, 12)]
    [InlineData("coldest_night_c", -60, 30)]
    public void A_mean_has_both_ends(string key, double least, double most)
    {
        foreach (var (value, taken) in new[] { (least, true), (most, true), (least - 0.01, false), (most + 0.01, false) })
        {
            using var small = new SmallScenario();
            var path = Path.Combine(small.Folder, "scenario.toml");
            var lines = File.ReadAllLines(path).Where(l => !l.StartsWith(key + " = ", StringComparison.Ordinal)).ToList();
            lines.Insert(lines.IndexOf("[climate]") + 1, $"{key} = [{string.Join(", ", Enumerable.Repeat(Text(value), 12))}]");
            File.WriteAllLines(path, lines);
            Assert.Equal(taken, !small.Faults().Any(f => f.Expected.Contains(FormattableString.Invariant($"from {least} to {most}"), StringComparison.Ordinal)));
        }
    }

    [Theory]
    [InlineData("lowest_known_c = -18.5", "lowest_known_c = -60\nlowest_known_years = 200\nlowest_yearly_spread_k = 10\nstamp_zone_hours = 14", "")]
    [InlineData("lowest_known_c = -18.5", "lowest_known_c = 20\nlowest_known_years = 1\nlowest_yearly_spread_k = 0.5\nstamp_zone_hours = -12", "")]
    [InlineData("lowest_known_c = -18.5", "lowest_known_c = -60.1", "-60.1")]
    [InlineData("lowest_known_c = -18.5", "lowest_known_c = 20.1", "20.1")]
    [InlineData("lowest_known_c = -18.5", "lowest_known_c = -18.5\nlowest_known_years = 200.1", "200.1")]
    [InlineData("lowest_known_c = -18.5", "lowest_known_c = -18.5\nlowest_known_years = 0.9", "0.9")]
    [InlineData("lowest_known_c = -18.5", "lowest_yearly_spread_k = 10.1", "10.1")]
    [InlineData("lowest_known_c = -18.5", "lowest_yearly_spread_k = 0.4", "0.4")]
    [InlineData("lowest_known_c = -18.5", "stamp_zone_hours = 14.1", "14.1")]
    [InlineData("lowest_known_c = -18.5", "stamp_zone_hours = -12.1", "-12.1")]
    [InlineData("lowest_known_c = -18.5", "lowest_known_years = 20", "")]
    public void What_is_known_of_the_lowest_has_both_ends(string line, string written, string fault)
    {
        using var small = new SmallScenario((line, written));
        Assert.Equal(fault.Length > 0 ? [fault] : [], small.Faults().Select(f => f.Value));
    }

    [Theory]
    [InlineData("lowest_known_c = -18.5\n", "", "dry inland", 4)]
    [InlineData("lowest_known_c = -18.5\n", "", "maritime or valley", 3)]
    [InlineData("lowest_known_c = -18.5\n", "lowest_yearly_spread_k = 2.5\n", "dry inland", 2.5)]
    public void How_the_lowest_strays_from_year_to_year_follows_the_character(string line, string written, string character, double spread)
    {
        using var small = new SmallScenario((line, written), ("character = \"dry inland\"", $"character = \"{character}\""));
        var climate = small.Read().Climate;
        Assert.Equal(spread, climate.LowestYearlySpreadK);
        Assert.Null(climate.Known);
        Assert.Equal("Winters made from the twelve monthly means in the scenario; no weather file was used.", climate.Sentence);
    }

    [Fact]
    public void A_weather_file_that_cannot_be_read_is_told_beside_the_other_slips()
    {
        using var small = new SmallScenario((Air, "weather_file = \"gone.csv\""), ("budget = 4200", "budget = -1"));
        var faults = small.Faults();
        Assert.Contains(faults, f => f.File.EndsWith("gone.csv", StringComparison.Ordinal));
        Assert.Contains(faults, f => f.Value == "-1");
    }

    // Of a winter that is not hard nothing is read that belongs to a hard one; where the kind itself is at fault that is all that is told.
    [Theory]
    [InlineData("kind = \"typical\"", "kind = \"typical\"\nreturn_years = 5", "return_years")]
    [InlineData("kind = \"typical\"", "kind = \"typical\"\ncount = 5", "count")]
    [InlineData("kind = \"typical\"", "kind = \"typcal\"\nreturn_years = 5", "typcal")]
    [InlineData("kind = \"hard\"", "kind = \"hard\"\ncount = 5", "count")]
    [InlineData("kind = \"hard\"", "kind = \"drawn\"", "return_years")]
    public void A_winter_knows_what_its_kind_has(string line, string written, string fault)
    {
        using var small = new SmallScenario((line, written));
        Assert.Equal([fault], small.Faults().Select(f => f.Value));
    }

    [Fact]
    public void Without_winters_a_typical_and_a_hard_one_are_taken()
    {
        using var small = new SmallScenario(("[[winters]]\nname = \"typical\"\nkind = \"typical\"\nweight = 0.9\n\n[[winters]]\nname = \"hard\"\nkind = \"hard\"\nweight = 0.1\nreturn_years = 10\n", ""));
        Assert.Equal([("typical", 0.9, "Typical"), ("hard", 0.1, "Hard")], small.Read().Winters.Select(w => (w.Name, w.Weight, w.Sort.ToString())));
    }

    // Each assumption at both ends, as its own entry says them; none is read twice or left out.
    [Fact]
    public void Each_assumption_is_taken_to_its_ends_and_no_further()
    {
        Assert.Equal(SystemList.All.Assumptions.Count, SystemList.All.Assumptions.Select(a => a.Key).Distinct().Count());
        Assert.Superset(new HashSet<string>(SystemList.All.All.SelectMany(s => s.Assumptions).Select(a => a.Key)), SystemList.All.Assumptions.Select(a => a.Key).ToHashSet());
        foreach (var entry in SystemList.All.Assumptions)
        {
            foreach (var (value, taken) in new[] { (entry.Min, true), (entry.Max, true), (entry.Max + Math.Max(1e-3, Math.Abs(entry.Max)), false) })
            {
                var faults = new FaultList();
                var (_, set) = AssumptionReading.Read(TomlReader.ReadText($"{entry.Key} = {value.ToString("R", CultureInfo.InvariantCulture)}", "s.toml", faults), SystemList.All.Assumptions);
                Assert.True(faults.Faults.Count == (taken ? 0 : 1), $"{entry.Key} = {value}: {string.Join("; ", faults.Faults)}");
                Assert.Equal([entry.Key], set);
            }
        }

        using var unknown = new SmallScenario(("[money]", "[assumptions]\nno_such = 1\n\n[money]"));
        Assert.Equal(["no_such"], unknown.Faults().Select(f => f.Value));
    }

    [Theory]
    [InlineData(46.3, 13.9, 0)]
    [InlineData(47.8, 13.9, 0)]
    [InlineData(47.81, 13.9, 1)]
    [InlineData(46.3, 15.4, 0)]
    [InlineData(46.3, 15.41, 1)]
    public void A_place_far_from_that_of_its_weather_file_is_told(double latitude, double longitude, int faults)
    {
        var site = SiteReading.Read(
            TomlReader.ReadText(FormattableString.Invariant($"latitude_deg = {latitude}\nlongitude_deg = {longitude}\npipe_run_m = 1\ncollector_space_m2 = 1\nstore_floor_m2 = 1"), "s.toml", Found(out var list)),
            "here", new("station", 46.3, 13.9, 300, 1), mayDiffer: false);
        Assert.Equal(faults, list.Faults.Count);
        Assert.All(list.Faults, f => Assert.Equal("a place near that of the weather file (46.3, 13.9); leave both out to use the file's own", f.Expected));
        Assert.Equal(("here", 46.3, 13.9, 300.0), (site.Place.Name, site.Place.LatitudeDeg, site.Place.LongitudeDeg, site.Place.ElevationM));
    }

    private static FaultList Found(out FaultList list) => list = new();

    private static void Told(string told, params (string From, string To)[] changes)
    {
        using var small = new SmallScenario(changes);
        Assert.Equal(told.Length > 0 ? [told] : [], small.Faults().Select(f => $"{f.Value}: {f.Expected}"));
    }

    private static string Text(double value) => value.ToString(CultureInfo.InvariantCulture);
}
