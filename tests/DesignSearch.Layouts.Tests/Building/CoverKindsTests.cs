using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Season;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.House;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>What a cover's stated figure is of, films that let heat radiation through, and what stands in a house.</summary>
public sealed class CoverKindsTests
{
    private const string Sheet = "cover_u_w_per_m2k = 3.6        # 6 mm twin-wall sheet";

    [Theory]
    [InlineData("cover_u_w_per_m2k = 3.6", 3.6, false)]
    [InlineData("cover_u_w_per_m2k = 5.8", 5.8, false)]
    [InlineData("cover_u_w_per_m2k = 6.0", 6, true)]
    [InlineData("cover_u_w_per_m2k = 7.6", 7.6, true)]
    [InlineData("cover_u_w_per_m2k = 5.2\ncover_u_is = \"house\"", 5.2, true)]
    [InlineData("cover_u_w_per_m2k = 5.8", 5.8, true, 1)]
    [InlineData("cover_u_w_per_m2k = 5.2\ncover_u_is = \"sheet\"", 5.2, false, 1)]
    public void A_figure_of_one_sheet_or_that_none_can_have_is_a_houses(string lines, double stated, bool isOfHouse, int layers = 2)
    {
        var house = Read(lines, layers).Greenhouse;
        var numbers = BareHouse.Numbers(house);
        Assert.Equal((stated, isOfHouse), (house.CoverUWPerM2K, house.CoverUIsOfHouse));
        // What is stated of a house is lost, on the night that it is stated for, leaking air included.
        var lost = HeldHouse.LossW(Installation.Of(numbers), HeldNight.OfPractice, SeasonAssumptions.Default) / (15 * house.CoverM2);
        if (isOfHouse)
            Assert.Equal(stated, lost, 1e-4);
        else
            Assert.Equal(1, numbers.CoverExchange);
    }

    [Fact]
    public void Worse_houses_lose_more_each_by_its_figure()
    {
        double Lost(string u) => HeldHouse.LossWPerK(Bare(Read(u)), HeldNight.Frosty, SeasonAssumptions.Default);
        var losses = new[] { "3.1", "3.6", "4.0", "6.0", "6.5", "7.6", "9" }.Select(u => Lost("cover_u_w_per_m2k = " + u)).ToList();
        Assert.Equal(losses.Order(), losses);
        Assert.True(losses[5] > 1.15 * losses[3], $"{losses[5]} against {losses[3]}");
    }

    [Theory]
    [InlineData("cover_u_w_per_m2k = 6.5\ncover_u_is = \"sheet\"", "6.5", "at most 5.88")]
    [InlineData("cover_u_w_per_m2k = 6.5\ncover_u_is = \"film\"", "film", "one of \"sheet\", \"house\"")]
    [InlineData("cover_u_w_per_m2k = 9.5", "9.5", "from 0.5 to 9")]
    [InlineData("cover_u_w_per_m2k = 6.5\ncover_long_wave = 0.7", "6.5", "has no U-value")]
    [InlineData("cover_long_wave = 0.7\nroof_cover_u_w_per_m2k = 3", "3", "has no U-value")]
    [InlineData("cover_u_w_per_m2k = 3.6\ncontents = [\"pots\", \"stones\"]", "[pots, stones]", "\"pots\", \"beds\", \"paving\", \"benches\"")]
    [InlineData("cover_u_w_per_m2k = 3.6\ncontents = [\"pots\", \"pots\"]", "[pots, pots]", "each once")]
    [InlineData("cover_u_w_per_m2k = 3.6\ncontents = \"pots\"", "pots", "a list of")]
    public void What_cannot_be_is_one_fault_at_its_place(string lines, string value, string expected)
    {
        using var small = new SmallScenario((Sheet, lines));
        var fault = Assert.Single(small.Faults());
        Assert.Equal(value, fault.Value);
        Assert.Contains(expected, fault.Expected, StringComparison.Ordinal);
    }

    // A cloudy sky is as good as a lid; what a clear one takes more of grows with what passes the film.
    [Fact]
    public void A_clear_sky_takes_more_through_film_that_lets_radiation_pass()
    {
        double Gains(string lines)
        {
            var bare = Installation.Of(BareHouse.Numbers(Read(lines, 1).Greenhouse) with { SkyViewFactor = 1 });
            double Lost(double belowK) => HeldHouse.LossW(bare, HeldNight.Frosty with { SkyBelowK = belowK }, SeasonAssumptions.Default.With(HouseAssumptions.BenchAreaRatio, 5));
            return Lost(20) / Lost(0);
        }

        var (dry, better) = (Gains("cover_long_wave = 0.7"), Gains("cover_long_wave = 0.25"));
        Assert.True(dry > better && better > 1.1, $"{dry} {better}");
        double Of(int films) => HeldHouse.LossW(Installation.Of(BareHouse.Numbers(Read("cover_long_wave = 0.7", films).Greenhouse)), HeldNight.Frosty, SeasonAssumptions.Default);
        Assert.InRange(Of(2) / Of(1), 0.4, 0.85);
    }

    [Fact]
    public void What_stands_in_the_house_takes_frost_away_and_nothing_said_is_empty()
    {
        double Frost(string lines)
        {
            var scenario = Read(Sheet + lines);
            var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario, asRecorded: true));
            return assessor.Simulate([assessor.Price(Layout.Bare(scenario.Systems.Choices)).Built])[0][0].FrostDegreeHoursKh;
        }

        var (empty, none, pots, all) = (Frost("\ncontents = []"), Frost(""), Frost("\ncontents = [\"pots\"]"), Frost("\ncontents = [\"beds\", \"pots\", \"paving\"]"));
        Assert.Equal(empty, none);
        Assert.InRange(pots / empty, 0.4, 0.9);
        Assert.True(all < pots, $"{all} against {pots}");
        Assert.Equal(all, Frost("\ncontents = [\"paving\", \"beds\", \"pots\"]"));
    }

    [Fact]
    public void What_stands_in_a_house_adds_up()
    {
        var two = HouseContents.Numbers([HouseContents.All[0], HouseContents.All[1]]);
        Assert.Equal(232_000, two.CapacityJPerM2K);
        Assert.Equal((1 / 0.5) + (0.8 / 0.45), two.AirWPerM2K, 9);
        Assert.Equal(0.8, two.FloorShare);
        Assert.Equal(ContentsNumbers.None, HouseContents.Numbers([]));
    }

    private static Installation Bare(Scenario scenario) => LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices)).Installation;

    private static Scenario Read(string lines, int layers = 2)
    {
        using var small = new SmallScenario((Sheet, lines), ("cover_layers = 2", $"cover_layers = {layers}"));
        return small.Read();
    }
}
