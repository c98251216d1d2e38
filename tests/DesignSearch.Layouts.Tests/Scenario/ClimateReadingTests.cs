using System.Globalization;
using System.Text;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class ClimateReadingTests
{
    private const string TypicalAndHard = "[[winters]]\nname = \"typical\"\nkind = \"typical\"\nweight = 0.9\n\n[[winters]]\nname = \"hard\"\nkind = \"hard\"\nweight = 0.1\nreturn_years = 10\n";

    [Fact]
    public void A_logger_takes_its_place_from_the_site_and_its_sun_from_the_means()
    {
        using var small = new SmallScenario(("[climate]\n", "[climate]\nweather_file = \"shed.csv\"\n"));
        File.WriteAllText(Path.Combine(small.Folder, "shed.csv"), "Date Time,Temp (C)\n" + Rows((t, c) => $"{t:yyyy-MM-dd HH:mm},{c:0.00}"));
        var scenario = small.Read();
        var record = scenario.Climate.Record!;
        Assert.Equal((46.3, 13.9, 1.0), (record.Place.LatitudeDeg, record.Place.LongitudeDeg, record.Place.ZoneHours));
        Assert.Equal(1.75, record.Summary.Months.Single(m => m.Month == 1).GhiKwhPerM2Day, 0.01);
        Assert.Contains("made here from other figures 100 %", scenario.Climate.Sentence, StringComparison.Ordinal);
        Assert.Contains("measured 100 %", scenario.Climate.Sentence, StringComparison.Ordinal);
        Assert.NotEmpty(WinterSet.Make(scenario).Winters);
    }

    [Fact]
    public void A_format_in_the_run_folder_is_heeded_and_counts_as_an_input()
    {
        using var small = new SmallScenario(("[climate]\n", "[climate]\nweather_file = \"elsewhere/shed.csv\"\n"));
        Directory.CreateDirectory(Path.Combine(small.Folder, "elsewhere"));
        Directory.CreateDirectory(Path.Combine(small.Folder, "formats"));
        File.WriteAllText(Path.Combine(small.Folder, "formats", "shed.toml"), """
            title = "The logger in the shed"
            provider = "own"
            detect = ["SHED"]
            weather_origin = "measured"
            [head]
            kind = "none"
            [time]
            columns = [["when"]]
            patterns = ["YYYY-MM-DD hh:mm"]
            years = "real"
            [stamp]
            radiation = "starting"
            weather = "starting"
            [fields]
            air = { names = ["t_f"], unit = "F", needed = true }
            """);
        File.WriteAllText(Path.Combine(small.Folder, "elsewhere", "shed.csv"), "SHED\nwhen,t_f\n" + Rows((t, c) => $"{t:yyyy-MM-dd HH:mm},{c * 1.8 + 32:0.00}"));
        var scenario = small.Read();
        Assert.Equal(Air(new DateTime(2021, 7, 1)) - 4 * Math.Cos(2 * Math.PI * -15 / 24), scenario.Climate.Record!.Summary.Months[6].MeanC, 1.0);
        Assert.Contains(scenario.Files, f => f.Name == "formats/shed.toml");
    }

    [Fact]
    public void Drawn_winters_share_their_weight_and_differ()
    {
        using var small = new SmallScenario((TypicalAndHard, "[[winters]]\nkind = \"drawn\"\ncount = 5\nweight = 3\n\n[[winters]]\nkind = \"hard\"\nlowest_c = -23.5\npower_cut_hours = 8\nweight = 1\n"));
        var set = WinterSet.Make(small.Read()).Winters;
        Assert.Equal(6, set.Count);
        Assert.All(set.Take(5), w => Assert.Equal(0.15, w.Weight, 1e-12));
        Assert.Equal(5, set.Take(5).Select(w => w.Winter.AirC.Sum()).Distinct().Count());
        Assert.Equal(0.25, set[5].Weight, 1e-12);
        Assert.Equal(-23.5, set[5].Winter.AirC.Min(), 0.1);
        Assert.Equal(8, Assert.Single(set[5].Winter.PowerCuts).Count);
        Assert.Equal([.. set.Take(5).Select(w => w.Winter.AirC.Sum())], WinterSet.Make(small.Read()).Winters.Take(5).Select(w => w.Winter.AirC.Sum()).ToArray());
    }

    [Fact]
    public void Snow_brightens_the_ground_of_its_months()
    {
        using var small = new SmallScenario(("[climate]\n", "[climate]\nsnow_cover_share = [1, 0.5, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0]\n"));
        var winter = WinterSet.Make(small.Read()).Winters[0].Winter;
        double At(int month) => winter.GroundReflectance[(int)(new DateTime(winter.Start.Year + (month < 6 ? 1 : 0), month, 15) - winter.Start).TotalHours];
        Assert.Equal((0.6, 0.2), (At(1), At(12)));
        Assert.Equal(0.4, At(2), 1e-12);
    }

    [Fact]
    public void The_lowest_known_moves_the_hard_winter_of_a_file_too()
    {
        using var small = new SmallScenario(("[climate]\n", "[climate]\nweather_file = \"shed.csv\"\n"), ("lowest_known_c = -18.5", "lowest_known_c = -30"));
        File.WriteAllText(Path.Combine(small.Folder, "shed.csv"), "Date Time,Temp (C)\n" + Rows((t, c) => $"{t:yyyy-MM-dd HH:mm},{c:0.00}"));
        Assert.Equal(-30, WinterSet.Make(small.Read()).Winters[^1].Winter.AirC.Min(), 0.2);
    }

    [Fact]
    public void A_layout_carries_the_second_opinion_on_the_sky()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario));
        var share = assessor.OtherSkyShare(LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario)))!.Value;
        Assert.InRange(share, -0.06, -0.002);
        var layout = new Judge(assessor).Of(SmallScenario.Solar(scenario));
        Assert.Equal(share, layout.OtherSkyShare!.Value, 1e-12);
        Assert.Null(new Judge(assessor).Of(Layout.Bare(scenario.Systems.Choices)).OtherSkyShare);
    }

    [Fact]
    public void Slips_in_climate_and_winters_are_told_with_their_places()
    {
        using var small = new SmallScenario(
            ("[climate]\n", "[climate]\nsnow_cover_share = [1, 2]\nstamp_zone_hours = 40\n"),
            (TypicalAndHard, "[[winters]]\nkind = \"drawn\"\ncount = 500\n\n[[winters]]\nkind = \"typical\"\npower_cut_hours = 3\n"));
        var faults = small.Faults();
        string[] values = ["40", "500", "power_cut_hours"];
        Assert.All(values, v => Assert.Contains(faults, f => f.Value == v && f.Line > 0));
        Assert.Contains(faults, f => f.Expected.Contains("12", StringComparison.Ordinal) && f.Line > 0);
    }

    private static double Air(DateTime t) => 9 - 10 * Math.Cos(2 * Math.PI * (t.DayOfYear - 20) / 365) + 4 * Math.Cos(2 * Math.PI * (t.TimeOfDay.TotalHours - 15) / 24);

    private static string Rows(Func<DateTime, double, FormattableString> row)
    {
        var text = new StringBuilder();
        for (var t = new DateTime(2021, 1, 1); t < new DateTime(2022, 1, 1); t = t.AddHours(1))
            text.Append(row(t, Air(t)).ToString(CultureInfo.InvariantCulture)).Append('\n');
        return text.ToString();
    }
}
