using DesignSearch.Layouts.Tests;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>check reads the case back and doubts what can be read and may not be meant.</summary>
public sealed class CheckTests
{
    [Fact]
    public void The_case_is_read_back_in_plain_lines()
    {
        var output = Cli.Run("check", Repository.At("runs", "sample-finished")).Output;
        foreach (var told in new[]
        {
            "Place     Frost Hollow (invented), 46.3° north 13.9° east, 640 m above the sea,",
            "Sun       at noon in December 20° high in the south; hills and trees there 3°",
            "House     5.0 × 3.0 m: 15.0 m² of floor, 35 m³ of air;",
            "Cover     50 m², U 3.6 of the sheet, lets 74 % of the light in. The bare house",
            "Inside    nothing is said of pots, beds, paving or benches (contents): taken as",
            "To hold   2 °C in the whole house from 1 November to 31 March",
            "Climate   twelve means: coldest January with -2.8 °C, darkest December with",
            "Hardest   night of the winters it is judged on: -18.5 °C outside (winter",
            "Money     4200 crowns to build; 12 years at 3 % interest; a kilowatt-hour 0.42,",
            "Current   to be brought by 85 m of cable",
            "Room      5 m² for collectors, 3 m² of floor for tank and barrels, 14 m of pipe",
            "Allowed   cover drawn at night (1)",
            "ridge 2.7 m",
        })
            Assert.Contains(told, output, StringComparison.Ordinal);
        Assert.DoesNotContain("heater_set_c", output, StringComparison.Ordinal);
        Assert.All(output.Split('\n'), l => Assert.InRange(l.TrimEnd().Length, 0, 80));
        Assert.Contains("heater_set_c", Cli.Run("check", Repository.At("runs", "sample-finished"), "-v").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_point_between_thousands_is_doubted()
    {
        using var small = new SmallScenario(("budget = 4200", "budget = 1.500"));
        var output = Cli.Run("check", small.Folder).Output.ReplaceLineEndings(" ");
        Assert.Contains("budget = 1.500 is 1.5, with a decimal point. Was 1500 meant?", Together(output), StringComparison.Ordinal);
        using var clear = new SmallScenario(("budget = 4200", "budget = 4200.50"));
        Assert.DoesNotContain("with a decimal point. Was", Together(Cli.Run("check", clear.Folder).Output), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_still_as_in_the_example_is_doubted_and_the_example_itself_is_not()
    {
        using var copy = new SmallScenario(("name = \"Sample, finished\"", "name = \"My house\""), ("latitude_deg = 46.3 ", "latitude_deg = 47.1 "));
        var output = Together(Cli.Run("check", copy.Folder).Output);
        Assert.Contains("Still as in the example 'frost-hollow': description (line 4), place (line 12), longitude_deg (line 14),", output, StringComparison.Ordinal);
        Assert.DoesNotContain("latitude_deg (", output, StringComparison.Ordinal);
        foreach (var example in new[] { "frost-hollow", "sample-finished" })
            Assert.DoesNotContain("In doubt", Cli.Run("check", Repository.At("runs", example)).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_run_that_is_not_there_names_those_that_are()
    {
        var (code, _, error) = Cli.Run("check", Repository.At("runs", "frost-hollw"));
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains($"did you mean '{Repository.At("runs", "frost-hollow")}'?", error, StringComparison.Ordinal);
        Assert.Contains("'new FOLDER' makes one", error, StringComparison.Ordinal);
    }

    // A published program serves runs anywhere: the catalogue that came with it is found by its name.
    [Fact]
    public void A_run_far_from_any_catalogue_finds_that_of_the_program()
    {
        using var small = new SmallScenario((Repository.At("catalogs", "starter").Replace('\\', '/'), "starter"));
        var (code, output, _) = Cli.Run("check", small.Folder);
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("everything can be read", output, StringComparison.Ordinal);
    }

    private static string Together(string output) => string.Join(' ', output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
