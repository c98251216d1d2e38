using System.Text.Json;
using System.Text.RegularExpressions;
using DesignSearch.Climate.Stations;
using DesignSearch.Layouts.Tests;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>weather --near: twelve means without a network.</summary>
public sealed partial class NearTests
{
    [Theory]
    [InlineData("Redmond, Oregon")]
    [InlineData("44.25,-121.17")]
    public void What_is_printed_can_be_pasted_into_a_scenario(string place)
    {
        var (code, output, error) = Cli.Run("weather", "--near", place);
        Assert.Equal((ExitCode.Done, ""), (code, error));
        Checks(output[output.IndexOf("# Twelve means", StringComparison.Ordinal)..]);
    }

    [Fact]
    public void What_is_saved_can_be_pasted_into_a_scenario()
    {
        using var run = new SmallScenario();
        var file = Path.Combine(run.Folder, "part.toml");
        var (code, output, _) = Cli.Run("weather", "--near", "Redmond, Oregon", "--height", "1200", "--save", file);
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("Saved as", output, StringComparison.Ordinal);
        var text = File.ReadAllText(file);
        Assert.StartsWith("# Twelve means, January first, of the station Redmond Roberts Field, OR", text, StringComparison.Ordinal);
        Assert.Contains("# TAKE CARE: the station stands 267 m lower than the place.\n# Take 1.4 K off", text, StringComparison.Ordinal);
        Checks(text);
        Assert.Equal(ExitCode.BadInput, Cli.Run("weather", "--near", "Redmond, Oregon", "--save", file).Code);
        Assert.Equal(text, File.ReadAllText(file));
    }

    [Fact]
    public void The_nearest_come_first_with_distance_and_height()
    {
        var report = JsonDocument.Parse(Cli.Run("weather", "--near", "44.6,-120.2", "--height", "1500", "--json").Output).RootElement;
        var stations = report.GetProperty("stations").EnumerateArray().ToList();
        Assert.Equal(5, stations.Count);
        var km = stations.ConvertAll(s => s.GetProperty("distanceKm").GetDouble());
        Assert.Equal(km.Order(), km);
        Assert.Equal(StationTable.All.Min(s => s.DistanceKm(44.6, -120.2)), km[0], 0.06);
        Assert.Equal(933 - 1500, stations[0].GetProperty("higherM").GetDouble());
        Assert.Equal(12, report.GetProperty("climate").GetProperty("meanDailyLowC").GetArrayLength());
        Assert.Contains("National Renewable Energy Laboratory", report.GetProperty("credit").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("44.25,-121.17", "up to 50 km apart differ by 1.7 K", "TAKE CARE")]
    [InlineData("44.6,-120.2", "TAKE CARE: the nearest station is 86 km away.", "first look")]
    [InlineData("49.5,-80", "good for a first look, not to buy by", "no means are given")]
    [InlineData("46.3,13.9", "tells nothing about this place; no means are given", "[climate]")]
    public void Distance_is_told_with_what_it_is_worth(string place, string told, string untold)
    {
        var (code, output, _) = Cli.Run("weather", "--near", place);
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains(told, output, StringComparison.Ordinal);
        Assert.DoesNotContain(untold, output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("700", "stands 233 m higher than the place.\n# Add 1.2 K to mean_air_c")]
    [InlineData("1200", "stands 267 m lower than the place.\n# Take 1.4 K off mean_air_c")]
    public void Another_height_is_told_with_what_to_change(string height, string told) =>
        Assert.Contains(told, Cli.Run("weather", "--near", "44.25,-121.17", "--height", height).Output, StringComparison.Ordinal);

    [Theory]
    [InlineData("Portland", "stations far from each other are called so")]
    [InlineData("Reddmond", "did you mean 'Redmond'?")]
    [InlineData("Oslo", "the climate normals of your national weather service")]
    [InlineData("91,10", "LATITUDE,LONGITUDE")]
    [InlineData("44,25,-121,17", "LATITUDE,LONGITUDE")]
    [InlineData("", "a place of the table")]
    public void What_cannot_be_found_ends_in_two(string place, string told)
    {
        var (code, output, error) = Cli.Run("weather", "--near", place);
        Assert.Equal((ExitCode.BadInput, ""), (code, output));
        Assert.Contains(told, error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_too_far_away_saves_nothing()
    {
        var file = Path.Combine(Path.GetTempPath(), "designsearch-never-written.toml");
        var (code, output, error) = Cli.Run("weather", "--near", "-44.2,169.8", "--save", file);
        Assert.Equal((ExitCode.BadInput, ""), (code, output));
        Assert.Contains("7912 km away", error, StringComparison.Ordinal);
        Assert.False(File.Exists(file));
    }

    private static void Checks(string part)
    {
        var own = Climate().Match(File.ReadAllText(Repository.At("runs", "sample-finished", "scenario.toml"))).Value;
        using var pasted = new SmallScenario((own, part + "\n"));
        var (code, _, error) = Cli.Run("check", pasted.Folder);
        Assert.True(code == ExitCode.Done, error);
        Assert.Equal(-0.2, pasted.Read().Climate.Monthly!.Months[0].MeanC);
    }

    [GeneratedRegex(@"\[climate\].*?(?=\n\[)", RegexOptions.Singleline)]
    private static partial Regex Climate();
}
