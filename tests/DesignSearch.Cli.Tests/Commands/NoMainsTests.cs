using DesignSearch.Layouts.Tests;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>The commands on an invented place without mains.</summary>
public sealed class NoMainsTests
{
    private const string Few = """
        night_cover = ["none", "aluminised-hand"]
        lining = "bubble-lining-large"
        sealing = "sealing-basic"
        perimeter_board = "none"
        wind_break = "none"
        compost_mix = "none"
        day_pipe = "none"
        barrel = ["none", "barrel-200-used"]
        barrel_count = 4
        collector = ["none", "flat-plate-2m2"]
        collector_count = [1, 2]
        mount = "stand-timber"
        tilt_deg = 65
        freeze_protection = "drain-back-simple"
        tank = "cage-1000-used"
        tank_jacket = "jacket-wool-100"
        pipe = "pex-25"
        pipe_insulation = "foam-pe-20-large"
        pump = "solar-pump-19w"
        start_difference_k = 8
        stop_difference_k = 3
        release = "fan-coil-small"
        release_count = 1
        release_set_c = 5

        [search]
        seed = 1
        evaluations = 200
        ranked = 3
        unseen_winters = 0
        """;

    [Fact]
    public void A_search_ends_with_a_pick_and_a_page()
    {
        using var house = new LonelyHouse(Few);
        var (code, output, _) = Cli.Run("search", house.Folder, "--quiet");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("Cheapest that holds", output, StringComparison.Ordinal);
        var page = File.ReadAllText(Path.Combine(house.Folder, "report.html"));
        Assert.All(new[] { "charge controller", "battery guard", "Hydrogen and acid", "darkest run of the winters" }.Except(IsLithium(page) ? ["Hydrogen and acid"] : []),
            word => Assert.Contains(word, page, StringComparison.Ordinal));
        var lists = Directory.EnumerateFiles(Path.Combine(house.Folder, "lists"), "1-*.csv").Select(File.ReadAllText).ToList();
        Assert.Contains(lists, l => l.Contains("battery-fuse", StringComparison.Ordinal));
        Assert.DoesNotContain(lists, l => l.Contains("licensed-electrician", StringComparison.Ordinal) || l.Contains("rcd-30ma", StringComparison.Ordinal));
    }

    [Fact]
    public void A_layout_with_a_mains_heater_is_refused_by_name()
    {
        using var house = new LonelyHouse(Few);
        var layout = Path.Combine(house.Folder, "layout.toml");
        File.WriteAllText(layout, "format = 1\n[choices]\nheater = \"fan-heater-1kw\"\nheater_set_c = 4\n");
        var output = Cli.Run("simulate", house.Folder, "--layout", layout).Output;
        Assert.Contains("There are no mains for the stand-by heater", output, StringComparison.Ordinal);
    }

    private static bool IsLithium(string page) => page.Contains("Lithium battery", StringComparison.Ordinal);
}
