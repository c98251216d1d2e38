using System.Text.RegularExpressions;
using DesignSearch.Layouts.Tests;
using DesignSearch.Reporting;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Searching;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>Houses, places and purses at the ends of what a person may ask for: each search ends, and says something sensible in plain sentences.</summary>
public sealed partial class ExtremeScenarioTests
{
    private const string Fixed = "fixed";

    private const string NothingHolds = "^Nothing (that holds|was found within|within|that passes|can be added)";

    private static readonly (string From, string To)[] OnlyHeater =
    [
        ("night_cover = [\"none\", \"aluminised-hand\"]", "night_cover = \"none\""), ("lining = [\"none\", \"bubble-lining-large\"]", "lining = \"none\""),
        ("sealing = [\"none\", \"sealing-basic\"]", "sealing = \"none\""), ("barrel = [\"none\", \"barrel-200-used\"]", "barrel = \"none\""),
        ("heater = [\"none\", \"fan-heater-1kw\", \"fan-heater-2kw\"]", "heater = \"fan-heater-1kw\""), ("collector = [\"none\", \"flat-plate-2m2\"]", "collector = \"none\""),
    ];

    public static TheoryData<string, string, string, string> Cases => new()
    {
        { "frost_limit_c = 2.0", "frost_limit_c = -10.0", "", "^(Add nothing|To hold -10 °C)" },
        { "frost_limit_c = 2.0", "frost_limit_c = 15.0", "", NothingHolds },
        { "frost_limit_c = 2.0", "frost_limit_c = 20.0", "", NothingHolds },
        { "budget = 4200", "budget = 0", "", NothingHolds },
        { "budget = 4200", "budget = 20", "", NothingHolds },
        { "budget = 4200", "budget = 1000000", "", "^To hold" },
        { "tariff_per_kwh = 0.42", "tariff_per_kwh = 0", "", "^To hold" },
        { "tariff_per_kwh = 0.42", "tariff_per_kwh = 100", "", "^(To hold|Nothing)" },
        { "years = 12", "years = 1", "", "^To hold.* over 1 year\\b" },
        { "interest = 0.03", "interest = 0", "", "^To hold" },
        { "horizon_deg = [0, 4, 8, 6, 3, 7, 9, 4]", "horizon_deg = [80, 80, 80, 80, 80, 80, 80, 80]", "", "^To hold" },
        { "lowest_known_c = -18.5", "lowest_known_c = -35.0", "", "^(To hold|Nothing)" },
        { "start = \"11-01\"", "start = \"03-10\"", "", "^(Add nothing|To hold)" },
        { "end = \"03-31\"", "end = \"10-20\"", "", "^(Add nothing|To hold)" },
        { "[0, 0]", "[0, 0]", "mild", "^Add nothing" },
        { "[0, 0]", "[0, 0]", "arctic", "^(To hold|Nothing)" },
        { "frost_limit_c = 2.0", "frost_limit_c = 2.0", Fixed, NothingHolds },
        { "frost_limit_c = 2.0", "frost_limit_c = -5.0", Fixed, "^(Add nothing|To hold|Nothing)" },
        { "budget = 4200", "budget = 0", Fixed, NothingHolds },
        { "evaluations = 1000", "evaluations = 1", "", "^(To hold|Nothing)" },
        { "ranked = 6", "ranked = 1", "", "^To hold" },
        { "return_years = 10", "return_years = 100", "", "^(To hold|Nothing)" },
        { "length_m = 5.0", "length_m = 50.0", "", "^(To hold|Nothing)" },
        { "air_changes_per_hour = 0.9", "air_changes_per_hour = 5", "", "^(To hold|Nothing)" },
        { "latitude_deg = 46.3 ", "latitude_deg = 66 ", "", "^(To hold|Nothing)" },
        { "latitude_deg = 46.3 ", "latitude_deg = 0.5 ", "", "^(To hold|Nothing)" },
        { "elevation_m = 640", "elevation_m = 4800", "", "^(To hold|Nothing)" },
        { "elevation_m = 640", "elevation_m = -400", "", "^(To hold|Nothing)" },
        { "pipe_run_m = 14", "pipe_run_m = 150", "", "^(To hold|Nothing)" },
        { "mains_cable_m = 85", "mains_cable_m = 300", "", "^(To hold|Nothing)" },
        { "collector_space_m2 = 5", "collector_space_m2 = 0", "", "^(To hold|Nothing)" },
        { "store_floor_m2 = 3.0", "store_floor_m2 = 0", "", "^(To hold|Nothing)" },
        { "design_wind_m_per_s = 30", "design_wind_m_per_s = 60", "", "^(To hold|Nothing)" },
        { "cover_u_w_per_m2k = 3.6", "cover_u_w_per_m2k = 8", "", "^(To hold|Nothing)" },
        { "cover_light = 0.74", "cover_light = 0.2", "", "^(To hold|Nothing)" },
        { "air_changes_per_hour = 0.9", "air_changes_per_hour = 0.1", "", "^(To hold|Nothing)" },
        { "weight = 0.1", "weight = 0.001", "", "^(To hold|Nothing)" },
        { "years = 12", "years = 50", "", "^(To hold|Nothing)" },
        { "name = \"hard\"\nkind = \"hard\"", "name = \"hard\"\nkind = \"hard\"\npower_cut_hours = 24", "", "^(To hold|Nothing)" },
        { "length_m = 5.0", "length_m = 1.0", "", "^(To hold|Nothing|Add nothing)" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void It_ends_in_a_sensible_answer(string from, string to, string kind, string answer)
    {
        var changes = new List<(string, string)>();
        if (from != to)
            changes.Add((from, to));
        if (kind == Fixed)
            changes.AddRange(OnlyHeater);
        if (kind == "mild")
            changes.AddRange(Climate(20, 15, "lowest_known_c = 12"));
        if (kind == "arctic")
            changes.AddRange(Climate(-20, -26, "lowest_known_c = -45"));
        // How many unseen winters there are is nothing to the sentences.
        changes.Insert(0, ShortWinter.Few("ranked = 6", 6));
        using var run = new SmallScenario([.. changes]);
        var unmade = new List<string>();
        var request = new SearchRequest(new RunFolder(run.Folder), null, from.StartsWith("eval", StringComparison.Ordinal) ? null : 48, null, 2, false, false, "test");
        var stored = SearchRun.Execute(request, () => TimeSpan.Zero, null, CancellationToken.None, r => unmade.AddRange(RunFiles.WriteAll(r, run.Folder)));
        Assert.Empty(unmade);
        Assert.Matches(answer, stored.Judgement.Answer);
        var page = Tags().Replace(File.ReadAllText(Path.Combine(run.Folder, "report.html")), " ");
        // A season without the coldest month is told as such at the head of the page.
        Assert.Equal(to == "start = \"03-10\"", page.Contains("leaves out January, the coldest month", StringComparison.Ordinal));
        foreach (var text in stored.Judgement.NearestMiss.Append(stored.Judgement.Answer).Append(stored.Search.StoppedInWords).Append(page))
        {
            var wrong = Wrong().Match(text);
            Assert.False(wrong.Success, $"'{wrong.Value}' in: {text[Math.Max(0, wrong.Index - 80)..Math.Min(text.Length, wrong.Index + 80)]}");
        }
    }

    private static (string, string)[] Climate(double meanC, double lowC, string lowest) =>
    [
        ("mean_air_c = [-2.8, -1.2, 3.1, 7.6, 12.4, 15.9, 18.1, 17.5, 13.6, 8.6, 2.7, -1.7]", Months("mean_air_c", meanC)),
        ("mean_daily_low_c = [-8.1, -7.2, -3.0, 1.4, 5.8, 9.3, 11.2, 10.9, 7.6, 3.1, -1.8, -6.4]", Months("mean_daily_low_c", lowC)),
        ("lowest_known_c = -18.5", lowest),
    ];

    private static string Months(string key, double value) => FormattableString.Invariant($"{key} = [{string.Join(", ", Enumerable.Repeat(value.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture), 12))}]");

    [GeneratedRegex("<(script|style)[^>]*>.*?</\\1>|<[^>]*>", RegexOptions.Singleline)]
    private static partial Regex Tags();

    [GeneratedRegex("NaN|Infinity|∞|(?<![0-9.,-])1[ \\u00A0](layouts|evaluations|choices|winters|hours|years|days|frost hours|faults)\\b|(?<![0-9A-Za-z])-0(?![.,0-9])")]
    private static partial Regex Wrong();
}
