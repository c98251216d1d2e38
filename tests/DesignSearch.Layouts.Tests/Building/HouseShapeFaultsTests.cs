using System.Globalization;
using DesignSearch.Layouts.Design;
using Xunit;
using static DesignSearch.Layouts.Tests.WrittenHouses;

namespace DesignSearch.Layouts.Tests;

/// <summary>What is refused, doubted and warned of in houses of other shapes.</summary>
public sealed class HouseShapeFaultsTests
{
    [Theory]
    [InlineData("ridge_m = 1.5", "ridge_m = 1.6", 31, "1.6", "at most 1.5 m: a hoop rises by half its width at most over its straight sides")]
    [InlineData("ridge_m = 1.5", "ridge_m = 1.5\nback_wall_top_m = 3", 32, "3", "no 'back_wall_top_m' but with shape = \"lean-to\"")]
    [InlineData("ridge_m = 1.5", "ridge_m = 1.5\nfloor_below_m = 0.4", 32, "0.4", "no more than 'base_wall_m'")]
    [InlineData("shape = \"tunnel\"", "shape = \"dome\"\neaves_m = 0.3", 28, "dome", "one of \"gable\", \"lean-to\", \"tunnel\"")]
    [InlineData("ridge_m = 1.5", "ridge_m = 1.5\neaves_m = 0.4\nbase_wall_m = 0.5\nbase_wall_u_w_per_m2k = 2\nbase_wall_capacity_kj_per_m2k = 9", 33, "0.5", "at most 0.4 m: a base wall no higher than the eaves")]
    [InlineData("ridge_m = 1.5", "ridge_m = 1.5\nbase_wall_m = 0.5", 27, "", "'base_wall_u_w_per_m2k'")]
    public void What_cannot_be_is_told_where_it_stands(string from, string to, int line, string value, string expected)
    {
        using var small = new SmallScenario((Sizes, Tunnel.Replace(from, to, StringComparison.Ordinal)));
        var fault = small.Faults()[0];
        Assert.Equal((line, value), (fault.Line, fault.Value));
        Assert.Contains(expected, fault.Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("back_wall_azimuth_deg = 0", 0, 360)]
    [InlineData("back_wall_top_m = 6", 2.6, 40)]
    [InlineData("back_wall_u_w_per_m2k = 2.1", 0.1, 3.5)]
    [InlineData("back_wall_capacity_kj_per_m2k = 390", 0, 2000)]
    [InlineData("room_behind_c = 20", 0, 35)]
    public void Figures_of_a_wall_are_taken_at_both_ends_and_refused_beyond(string line, double low, double high)
    {
        var written = LeanTo + "room_behind_c = 20\n";
        foreach (var (value, taken) in new[] { (low, true), (high, true), (low - 0.01, false), (high + 0.01, false) })
        {
            var changed = line[..(line.IndexOf('=', StringComparison.Ordinal) + 2)] + value.ToString(CultureInfo.InvariantCulture);
            using var small = new SmallScenario((Sizes, written.Replace(line, changed, StringComparison.Ordinal)));
            Assert.Equal(taken ? [] : [value.ToString(CultureInfo.InvariantCulture)], small.Faults().Select(f => f.Value));
        }
    }

    [Fact]
    public void All_that_is_wrong_with_a_wall_is_told_at_once()
    {
        var wrong = LeanTo.Replace("back_wall_top_m = 6", "back_wall_top_m = 2.5\nridge_azimuth_deg = 90", StringComparison.Ordinal)
            .Replace("heated room\"", "unheated room\"\nroom_behind_c = 20", StringComparison.Ordinal).Replace("= 2.1", "= 9", StringComparison.Ordinal);
        using var small = new SmallScenario((Sizes, wrong));
        Assert.Equal(
            ["20", "9", "2.5", "90"], small.Faults().Select(f => f.Value));
        Assert.Contains("whose ridge runs along its wall", small.Faults()[^1].Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_is_offered_only_where_a_covered_wall_looks_away_from_the_sun()
    {
        using var silent = new SmallScenario((Sizes, LeanTo), ("lining = [\"none\", \"bubble-lining-large\"]", ""));
        Assert.DoesNotContain("north-board-50", silent.Read().LevelsOf(Systems.Skin.SkinChoices.Lining).Select(l => l.Part?.Id));
        Assert.Contains("bubble-lining-large", silent.Read().LevelsOf(Systems.Skin.SkinChoices.Lining).Select(l => l.Part?.Id));
        using var named = new SmallScenario((Sizes, Tunnel), ("lining = [\"none\", \"bubble-lining-large\"]", "lining = [\"north-board-50\"]"));
        Assert.Contains("no board", named.Faults().Single().Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(LeanTo, "Snow from the roof above", "The dwelling behind", "Heat from the dwelling")]
    [InlineData(Tunnel, "Hoop in snow and wind")]
    [InlineData(Sunken, "Snow from the roof above", "Floor below the ground")]
    [InlineData(OnBrick)]
    public void A_shape_has_the_usual_cautions(string written, params string[] topics)
    {
        using var small = new SmallScenario((Sizes, written));
        var scenario = small.Read();
        Assert.Equal(topics, LayoutBuilder.Build(scenario, SmallScenario.Of(scenario)).Systems.SelectMany(s => s.Cautions).Select(c => c.Topic));
    }
}
