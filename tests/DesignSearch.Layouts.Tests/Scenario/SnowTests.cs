using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Supply.OffGrid;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Glass;
using DesignSearch.Season.House;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>What a scenario says of snow, on a house and a place that are not the example: a hut south of the equator without mains.</summary>
public sealed class SnowTests
{
    [Theory]
    [InlineData("", null)]
    [InlineData("snow = \"none\"", SnowCare.None)]
    [InlineData("snow = \"brushed\"", SnowCare.Brushed)]
    [InlineData("snow = \"left\"", SnowCare.Left)]
    public void It_comes_into_every_winter_where_it_is_said_and_nowhere_else(string line, SnowCare? care)
    {
        using var house = Under(line);
        var scenario = house.Read();
        Assert.Equal(care, scenario.Site.Snow);
        var drawn = DesignWinters.Drawn(scenario, 2, 5);
        foreach (var winter in WinterSet.Make(scenario).Winters.Select(w => w.Winter).Concat(drawn))
        {
            Assert.Equal(care is SnowCare.Brushed or SnowCare.Left, winter.Snow is not null);
            Assert.Equal(care == SnowCare.Brushed, winter.Snow?.IsBrushed ?? false);
        }
    }

    [Theory]
    [InlineData("\"swept\"")]
    [InlineData("true")]
    public void Another_word_is_refused_where_it_stands(string word)
    {
        using var small = new SmallScenario(("[site]", "[site]\nsnow = " + word));
        var fault = Assert.Single(small.Faults());
        Assert.Contains("\"none\", \"brushed\", \"left\"", fault.Expected, StringComparison.Ordinal);
        Assert.Equal((Array.FindIndex(File.ReadAllLines(Path.Combine(small.Folder, "scenario.toml")), l => l.StartsWith("snow", StringComparison.Ordinal)) + 1, 8), (fault.Line, fault.Column));
    }

    [Fact]
    public void Snow_takes_sun_from_house_and_panel_and_least_where_it_is_brushed_off()
    {
        var found = new[] { "snow = \"none\"", "snow = \"brushed\"", "snow = \"left\"" }.Select(line =>
        {
            using var house = Under(line);
            var scenario = house.Read();
            var winters = WinterSet.Make(scenario);
            var outcomes = new LayoutAssessor(scenario, winters).Simulate([LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices))])[0];
            return (Kh: outcomes.Sum(o => o.FrostDegreeHoursKh), Wh: DarkWinters.Of(scenario).Darkest(10, 10, 100).Wh, Books: outcomes.Max(o => o.BalanceResidual));
        }).ToList();
        Assert.All(found, f => Assert.InRange(f.Books, 0, 1e-9));
        Assert.True(found[0].Kh < found[1].Kh && found[1].Kh < found[2].Kh && found[2].Kh < 1.5 * found[0].Kh, string.Join(' ', found));
        Assert.True(found[0].Wh < found[1].Wh && found[1].Wh < found[2].Wh, string.Join(' ', found));
    }

    // A hoop that nobody sweeps is darker than a roof of the same place.
    [Fact]
    public void A_tunnel_holds_what_a_roof_sheds()
    {
        double Lost(string shape)
        {
            using var small = new SmallScenario((WrittenHouses.Sizes, shape), ("[site]", "[site]\nsnow = \"left\""));
            var scenario = small.Read();
            var planes = new PlaneCache(100_000_000);
            double Sun(Winter winter) => HouseSun.TransmittedW(winter, HousePanes.Of(scenario.Greenhouse, null), (w, mount, _) => planes.Get(w, mount), 0.1).Sum();
            var winters = WinterSet.Make(scenario).Winters.Select(w => w.Winter).ToList();
            return 1 - (winters.Sum(Sun) / winters.Sum(w => Sun(w with { Snow = null })));
        }

        var (roof, hoop) = (Lost(WrittenHouses.OnBrick), Lost(WrittenHouses.Tunnel));
        Assert.InRange(roof, 0.01, hoop / 2);
        Assert.InRange(hoop, 0.05, 0.9);
    }

    [Fact]
    public void What_lets_more_light_through_and_what_calls_fewer_days_snowy_is_read()
    {
        using var house = Under("snow = \"left\"");
        var scenario = house.Read();
        double FrostKh(AssumptionEntry entry, double value)
        {
            var own = scenario with { Assumptions = scenario.Assumptions.With(entry, value) };
            return new LayoutAssessor(own, WinterSet.Make(own)).Simulate([LayoutBuilder.Build(own, Layout.Bare(own.Systems.Choices))])[0].Sum(o => o.FrostDegreeHoursKh);
        }

        Assert.True(FrostKh(HouseAssumptions.SnowLightShare, 0.3) < FrostKh(HouseAssumptions.SnowLightShare, 0.1));
        Assert.True(FrostKh(HouseAssumptions.SnowBelowC, -3) < FrostKh(HouseAssumptions.SnowBelowC, 1));
    }

    [Theory]
    [InlineData("", true)]
    [InlineData("snow = \"none\"", false)]
    [InlineData("snow = \"brushed\"", true)]
    [InlineData("snow = \"left\"", false)]
    public void What_comes_of_snow_that_nobody_brushes_off_is_told_where_it_is_not_in_the_figures(string line, bool isTold)
    {
        using var house = Under(line);
        var scenario = house.Read();
        var book = new TrialBook(new LayoutAssessor(scenario, WinterSet.Make(scenario)), 1);
        var pick = book.Of(Layout.Bare(scenario.Systems.Choices));
        var told = new WhatIfWeighing(book).Of(pick);
        var snow = told.Where(w => w.Mishap == Mishap.SnowLeft).ToList();
        Assert.Equal(isTold ? 1 : 0, snow.Count);
        Assert.All(snow, w => Assert.Matches("^snow of its [0-9]+ dull, damp, cold days is left lying$", w.What));
        Assert.All(snow, w => Assert.True(w.LowestAirC < told[0].LowestAirC && w.OutsideC == told[0].OutsideC, $"{w.LowestAirC} {told[0].LowestAirC}"));
    }

    [Theory]
    [InlineData("", "not in the figures: up to ")]
    [InlineData("snow = \"none\"", "none on roof and collector, as the scenario says")]
    [InlineData("snow = \"brushed\"", "in the figures by a rough rule: up to ")]
    [InlineData("snow = \"left\"", "in the figures by a rough rule: up to ")]
    public void It_is_said_whether_it_is_in_the_figures(string line, string begins)
    {
        using var house = Under(line);
        var scenario = house.Read();
        var said = SnowSentence.Of(scenario, WinterSet.Make(scenario).Winters.Select(w => w.Winter));
        Assert.StartsWith(begins, said, StringComparison.Ordinal);
        Assert.Equal(line.Contains("brushed", StringComparison.Ordinal), said.EndsWith("at nine the next morning", StringComparison.Ordinal));
        var mild = scenario with { Assumptions = scenario.Assumptions.With(HouseAssumptions.SnowBelowC, -30) };
        Assert.StartsWith("none on roof and collector", SnowSentence.Of(mild, WinterSet.Make(mild).Winters.Select(w => w.Winter)), StringComparison.Ordinal);
    }

    private static LonelyHouse Under(string line) => new("", ("store_floor_m2 = 3.0", "store_floor_m2 = 3.0\n" + line));
}
