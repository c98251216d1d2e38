using System.Text;
using System.Text.RegularExpressions;
using DesignSearch.Cli.Download;
using DesignSearch.Climate.Tests;
using DesignSearch.Layouts.Tests;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>
/// What the guide tells a person with a network to type, from the place to a scenario that passes its check, against a stand-in; the pages'
/// other commands are run as they stand by a test of their own.
/// </summary>
public sealed partial class GuideWeatherTests
{
    private const double Latitude = 46.3;
    private const double Longitude = 13.9;

    [Fact]
    public void The_way_of_the_guide_leads_from_a_place_to_a_scenario()
    {
        using var server = new StandIn((_, stream) => StandIn.Send(stream, "200 OK", Encoding.UTF8.GetBytes(Typical())));
        using var run = new SmallScenario();
        var (code, output, error) = Cli.RunAsking(server.Service, Words(Commands("docs/guide.md")[0], run.Folder));
        Assert.True(code == ExitCode.Done, error);
        var line = Weather().Match(File.ReadAllText(Repository.At("docs", "guide.md"))).Groups[1].Value;
        Assert.EndsWith(line + "\n", output, StringComparison.Ordinal);
        var scenario = Path.Combine(run.Folder, "scenario.toml");
        File.WriteAllText(scenario, Climate().Replace(File.ReadAllText(scenario), "[climate]\n" + line + "\n"));
        var (checks, _, faults) = Cli.Run("check", run.Folder);
        Assert.True(checks == ExitCode.Done, faults);
        var record = run.Read().Climate.Record!;
        Assert.Equal(("my-place.csv", true), (record.Source, record.IsTypicalYear));
    }

    [Fact]
    public void Nineteen_years_come_and_read()
    {
        var text = Years(new YearSpan(2005, 2023));
        Assert.InRange(text.Length, 8_000_000, 12_000_000);
        using var server = new StandIn((_, stream) => StandIn.Send(stream, "200 OK", Encoding.UTF8.GetBytes(text)));
        using var run = new SmallScenario();
        var (code, output, error) = Cli.RunAsking(server.Service, Words(Commands("docs/guide.md")[1], run.Folder));
        Assert.True(code == ExitCode.Done, error);
        Assert.Contains("my-years.csv; 2005 to 2023\n", output, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(Path.Combine(run.Folder, "my-years.csv")));
    }

    [Theory]
    [InlineData("README.md", 1)]
    [InlineData("docs/guide.md", 2)]
    [InlineData("docs/weather-files.md", 2)]
    public void Every_command_that_needs_a_network_is_one_the_program_knows(string page, int count)
    {
        var commands = Commands(page);
        Assert.Equal(count, commands.Count);
        foreach (var command in commands)
        {
            var words = Words(command.Replace("LATITUDE,LONGITUDE", "46.3,13.9", StringComparison.Ordinal), "");
            Assert.Empty(CommandTree.Build(new Session(TextWriter.Null, TextWriter.Null, live: false)).Parse(words).Errors);
        }
    }

    private static List<string> Commands(string page) =>
        [.. Shell().Matches(File.ReadAllText(Repository.At(page))).SelectMany(m => m.Groups[1].Value.Split('\n', StringSplitOptions.RemoveEmptyEntries))];

    private static string[] Words(string command, string folder) =>
        [.. command.Split('#')[0].Split(' ', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(w => w.Replace("runs/my-house", folder, StringComparison.Ordinal))];

    private static string Typical() => new MadeSky(Latitude, Longitude, zone: 1).PvgisTypical(means: false, 0.17);

    private static string Years(YearSpan span)
    {
        var text = new StringBuilder();
        for (var year = span.First; year <= span.Last; year++)
        {
            var one = new MadeSky(Latitude, Longitude, zone: 1, year).PvgisHourly().Replace("\nlegend\n", "", StringComparison.Ordinal);
            text.Append(year == span.First ? one : one[(one.IndexOf("Int\n", StringComparison.Ordinal) + 4)..]);
        }

        return text.ToString();
    }

    [GeneratedRegex("^```sh\n(.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Shell();

    [GeneratedRegex("^(weather_file = .*)$", RegexOptions.Multiline)]
    private static partial Regex Weather();

    [GeneratedRegex(@"\[climate\].*?(?=\n\[)", RegexOptions.Singleline)]
    private static partial Regex Climate();
}
