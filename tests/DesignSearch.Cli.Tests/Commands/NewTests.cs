using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Runs.Starting;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>new asks for a case and writes a scenario that can be read, searched and asked about again.</summary>
public sealed class NewTests : IDisposable
{
    private static readonly string[] Answers =
        ["Sandvig (invented)", "57.1, 9.9", "6", "", "0,5 17", "dull", "coast", "gable", "5 x 3", "1,9 2,7", "90", "0", "twin-10", "?", "5", "", "here", "low", "1 500 euro", "0,32"];

    private readonly string home = Directory.CreateTempSubdirectory("designsearch-").FullName;

    private string Folder => Path.Combine(home, "mine");

    private string File => Path.Combine(Folder, "scenario.toml");

    [Fact]
    public void Answers_become_a_scenario_with_every_line_explained()
    {
        var (code, output, error) = Cli.RunOn(Lines(Answers), "new", Folder);
        Assert.Equal((ExitCode.Done, ""), (code, error));
        Assert.Equal(["scenario.toml"], Directory.EnumerateFileSystemEntries(Folder).Select(Path.GetFileName));
        var scenario = ScenarioReader.Read(Folder);
        Assert.Equal(("Sandvig (invented)", 57.1, 9.9, 6.0, 1.0), (scenario.Name, scenario.Place.LatitudeDeg, scenario.Place.LongitudeDeg, scenario.Place.ElevationM, scenario.Place.ZoneHours));
        var house = scenario.Greenhouse;
        Assert.Equal((5.0, 3.0, 1.9, 2.7, 3.1, 2, 5.0), (house.LengthM, house.WidthM, house.EavesM, house.RidgeM, house.CoverUWPerM2K, house.CoverLayers, house.FrostLimitC));
        Assert.Equal((1500m, "euro", 0.32m, DesignSearch.Parts.Money.PriceLevel.Low), (scenario.Money.Budget, scenario.Money.Currency, scenario.Money.TariffPerKwh, scenario.Money.Prices));
        Assert.Equal((true, 38.0), (scenario.Site.MainsAtGreenhouse, scenario.Site.DesignWindMPerS));
        var means = scenario.Climate.Monthly!.Months;
        Assert.InRange(means.Min(m => m.MeanC), 0.5, 0.7);
        Assert.InRange(means.Max(m => m.MeanC), 16.8, 17);
        Assert.All(means, m => Assert.Equal(5, m.WindMPerS));
        Assert.Empty(scenario.Doubts);
        Assert.Contains("Place     Sandvig (invented), 57.1° north", output, StringComparison.Ordinal);
        var text = System.IO.File.ReadAllLines(File);
        Assert.Contains("A guess: the answer was not known", text[Array.FindIndex(text, l => l.StartsWith("air_changes_per_hour =", StringComparison.Ordinal)) - 1], StringComparison.Ordinal);
        // Every line that says something says what it means; the twelve means are explained by those above.
        string[] clear = ["format", "catalogs", "place", "end", "mean_air_c", "humidity_pct", "name", "kind", "weight"];
        Assert.DoesNotContain(text, l => l.Contains('=', StringComparison.Ordinal) && !l.Contains('#', StringComparison.Ordinal) && !clear.Contains(l.Split(' ')[0]));
    }

    [Fact]
    public void Near_a_station_its_twelve_means_are_offered_and_the_coldest_month_is_not_asked()
    {
        string[] answers = ["High bench (invented)", "44.3, -121.2", "1100", "", "yes", "open", .. Answers[7..]];
        var (code, output, error) = Cli.RunOn(Lines(answers), "new", Folder);
        Assert.Equal((ExitCode.Done, ""), (code, error));
        Assert.Contains("Twelve means of Redmond Roberts Field, OR, 6 km off and 167 m lower, come", string.Join(' ', output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.DoesNotContain("coldest and of the warmest", output, StringComparison.Ordinal);
        // By hand from the table: January -0.2 °C, 167 m higher at 5.3 K a kilometre; sun and wind as they stand.
        var january = ScenarioReader.Read(Folder).Climate.Monthly!.Months[0];
        Assert.Equal((-1.1, 1.63, 3.9, 71.0), (january.MeanC, january.GhiKwhPerM2Day, january.WindMPerS, january.HumidityPercent));
        var text = System.IO.File.ReadAllText(File);
        Assert.Contains("Of Redmond Roberts Field, OR, 6 km off, its height reckoned in.", text, StringComparison.Ordinal);
        // Who does not want them is asked as elsewhere, and so is who lives far from all.
        var own = Path.Combine(home, "own");
        Assert.Contains("coldest and of the warmest", Cli.RunOn(Lines([.. answers[..4], "no", "-3 19", "sunny", "open", .. Answers[7..]]), "new", own).Output, StringComparison.Ordinal);
        Assert.Equal(-3, ScenarioReader.Read(own).Climate.Monthly!.Months.Min(m => m.MeanC), 0.3);
    }

    [Fact]
    public void Every_empty_answer_is_the_usual_one_and_so_is_asking_nothing()
    {
        Assert.Equal(ExitCode.Done, Cli.RunOn(string.Concat(Enumerable.Repeat("\n", NewCase.Questions.Count)), "new", Folder).Code);
        var other = Path.Combine(home, "mine-too", "mine");
        Assert.Equal(ExitCode.Done, Cli.Run("new", other, "--usual").Code);
        Assert.Equal(System.IO.File.ReadAllText(File), System.IO.File.ReadAllText(Path.Combine(other, "scenario.toml")));
        Assert.Equal("mine", ScenarioReader.Read(Folder).Name);
        Assert.Empty(ScenarioReader.Read(Folder).Doubts);
    }

    [Fact]
    public void Asked_again_it_offers_what_stands_there_and_changes_only_what_is_answered()
    {
        Cli.RunOn(Lines(Answers), "new", Folder);
        var before = System.IO.File.ReadAllText(File).Replace("[choices]", "[choices]\nheater = \"none\" # by hand", StringComparison.Ordinal);
        System.IO.File.WriteAllText(File, before);
        Assert.Equal(ExitCode.Done, Cli.Run("new", Folder, "--usual").Code);
        Assert.Equal(before, System.IO.File.ReadAllText(File));
        // Seventeen questions are left, for the climate and the wind stand there: the limit is the twelfth.
        var (code, output, error) = Cli.RunOn(Lines("", "", "", "", "", "", "", "", "", "", "", "7", "2", "", "", "", ""), "new", Folder);
        Assert.Equal((ExitCode.Done, ""), (code, error));
        Assert.Contains("[57.1, 9.9] >", output, StringComparison.Ordinal);
        Assert.Contains("[twin-10] >", output, StringComparison.Ordinal);
        var changed = System.IO.File.ReadAllLines(File).Except(before.Split('\n')).ToList();
        Assert.Equal(["frost_limit_c = 7", "bench_enough_m2 = 2"], changed.Select(l => l.Split("  ")[0]));
    }

    [Fact]
    public void A_case_without_mains_in_the_south_is_written_whole()
    {
        string[] answers = ["Far south (invented)", "-45 169.5", "320", "none", "?", "sunny", "sheltered", "g", "6x4", "2 3", "45", "", "glass", "2", "2", "3", "none", "", "3000 dollars"];
        Assert.Equal(ExitCode.Done, Cli.RunOn(Lines(answers), "new", Folder).Code);
        var scenario = ScenarioReader.Read(Folder);
        Assert.True(scenario.Site.HasNoMains);
        Assert.Equal((5, 9, "dollars"), (scenario.Season.StartMonth, scenario.Season.EndMonth, scenario.Money.Currency));
        Assert.Empty(scenario.Doubts);
        // Asked again, mains are there: what was silenced speaks again.
        Assert.Equal(ExitCode.Done, Cli.RunOn(Lines("", "", "", "", "", "", "", "", "", "", "", "", "", "40", "", "", "0.3"), "new", Folder).Code);
        Assert.Equal((false, 40.0, 0.3m), (ScenarioReader.Read(Folder).Site.HasNoMains, ScenarioReader.Read(Folder).Site.MainsCableM, ScenarioReader.Read(Folder).Money.TariffPerKwh));
    }

    [Fact]
    public void A_lean_to_and_a_tunnel_are_asked_what_they_need_and_may_be_changed_into_each_other()
    {
        string[] leanTo =
            [.. Answers[..7], "lean", "5 x 3", "1.8 2.6", "north-east", "19", "brick", "6", "0.4", "timber", "0.3", .. Answers[12..]];
        var (code, output, error) = Cli.RunOn(Lines(leanTo), "new", Folder);
        Assert.Equal((ExitCode.Done, ""), (code, error));
        var house = ScenarioReader.Read(Folder).Greenhouse;
        Assert.Equal(new BackWall(45, 6, 2.1, 390, BehindWall.HeatedRoom, 19), house.BackWall);
        Assert.Equal((new BaseWall(0.4, 1.8, 40), 0.3), (house.BaseWall, house.FloorBelowM));
        Assert.Contains("Leans     on a wall on its north-east side, 13.0 m² of U 2.1 and 390 kJ/m²K, with a room at 19 °C behind it", Plain(output), StringComparison.Ordinal);
        Assert.Contains("front 7.0 m², one end 5.4 m², the other 5.4 m², roof 15.5 m²; edge of the floor 11.0 m", Plain(output), StringComparison.Ordinal);
        // An unheated room then, and at last a tunnel: nothing of the wall is left.
        Assert.Equal(ExitCode.Done, Cli.RunOn(Lines("", "", "", "", "", "", "", "", "un", "", "", "", "", "", "", "", "", "", "", "", "", ""), "new", Folder).Code);
        Assert.Equal(BehindWall.UnheatedRoom, ScenarioReader.Read(Folder).Greenhouse.BackWall!.Behind);
        Assert.Equal(ExitCode.Done, Cli.RunOn(Lines("", "", "", "", "tunnel", "", "0.4 1.9", "0", "", "", "", "", "", "", "", "", "", "", "", "", ""), "new", Folder).Code);
        var tunnel = ScenarioReader.Read(Folder).Greenhouse;
        Assert.Equal((HouseShape.Tunnel, 0.4, 1.9, 0.0, 0.4), (tunnel.Shape, tunnel.EavesM, tunnel.RidgeM, tunnel.RidgeAzimuthDeg, tunnel.BaseWall.HeightM));
        Assert.Null(tunnel.BackWall);
    }

    private static string Plain(string output) => string.Join(' ', output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)) is var words
        ? words.Replace("Leans on", "Leans     on", StringComparison.Ordinal) : "";

    [Fact]
    public void A_weather_file_takes_the_place_of_the_means()
    {
        Directory.CreateDirectory(Folder);
        System.IO.File.WriteAllText(Path.Combine(Folder, "my-place.csv"), new Climate.Tests.MadeSky().Plain());
        string[] answers = ["Here", "?", "?", "my-place.csv", "open", "", "", "", "", "", "", "", "", "", "", "", "", ""];
        var (code, _, error) = Cli.RunOn(Lines(answers), "new", Folder);
        // The made file is of another place than the one that was guessed: that is told, and the scenario stays to be mended.
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("a place near that of the weather file", error, StringComparison.Ordinal);
        Assert.True(System.IO.File.Exists(File));
    }

    [Theory]
    [InlineData("", 1)]
    [InlineData("a\n57.1, 9.9\n", 3)]
    public void Input_that_ends_too_early_writes_nothing(string input, int line)
    {
        var (code, _, error) = Cli.RunOn(input, "new", Folder);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.StartsWith($"standard input:{line}:1: expected an answer; the input ended here", error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Folder));
    }

    [Theory]
    [InlineData(1, "99, 9.9", "two numbers such as 57.1, 9.9")]
    [InlineData(2, "high", "a number from -400 to 5000")]
    [InlineData(4, "17 0", "two numbers such as -2 18")]
    [InlineData(5, "bright", "dull, usual or sunny")]
    [InlineData(6, "windy", "sheltered, open or coast")]
    [InlineData(7, "dome", "gable, lean-to or tunnel")]
    [InlineData(8, "500 x 3", "two numbers such as 5 x 3")]
    [InlineData(9, "2.7 1.9", "the ridge above the eaves")]
    [InlineData(11, "2.5", "a number from 0 to 1.9, no higher than the eaves")]
    [InlineData(12, "twin", "film, glass, twin-4")]
    [InlineData(16, "yes", "here, none, or a number of metres")]
    [InlineData(18, "much", "an amount and a word")]
    public void An_answer_that_is_none_is_told_and_a_person_is_asked_again(int question, string answer, string expected)
    {
        var answers = Answers.ToArray();
        answers[question] = answer;
        var (code, _, error) = Cli.RunOn(Lines(answers), "new", Folder);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains($"standard input:{question + 1}:1: found '{answer}'; expected", error, StringComparison.Ordinal);
        Assert.Contains(expected, error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Folder));

        var typed = Answers.Take(question).Append(answer).Concat(Answers.Skip(question)).ToArray();
        var (again, output, _) = Cli.RunTyped(Lines(typed), "new", Folder);
        Assert.Equal(ExitCode.Done, again);
        Assert.Contains("That is not", output, StringComparison.Ordinal);
    }

    [Fact]
    public void An_example_is_copied_and_never_over_something()
    {
        var (code, _, error) = Cli.Run("new", Folder, "--from", "murk-sound");
        Assert.Equal((ExitCode.Done, ""), (code, error));
        Assert.Equal(System.IO.File.ReadAllText(Repository.At("runs", "murk-sound", "scenario.toml")), System.IO.File.ReadAllText(File));
        Assert.Contains("left alone", Cli.Run("new", Folder, "--from", "high-saddle").Error, StringComparison.Ordinal);
        var wrong = Cli.Run("new", Path.Combine(home, "other"), "--from", "murk-sund");
        Assert.Equal(ExitCode.BadInput, wrong.Code);
        Assert.Contains("did you mean 'murk-sound'?", wrong.Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.BadInput, Cli.Run("new", Folder, "--from", "murk-sound", "--usual").Code);
        // A copy that nobody changed is doubted.
        Assert.Contains("Still as in the example 'murk-sound': name", Cli.Run("check", Folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_scenario_that_cannot_be_read_is_not_asked_about()
    {
        Directory.CreateDirectory(Folder);
        System.IO.File.WriteAllText(File, "name = Sandvig\n");
        var (code, _, error) = Cli.RunOn(Lines(Answers), "new", Folder);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("words between double quotes: \"Sandvig\"", error, StringComparison.Ordinal);
        Assert.Equal("name = Sandvig\n", System.IO.File.ReadAllText(File));
    }

    public void Dispose() => Directory.Delete(home, recursive: true);

    private static string Lines(params string[] answers) => string.Concat(answers.Select(a => a + "\n"));
}
