using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Money;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class WindBreakTests
{
    [Fact]
    public void A_net_takes_its_share_off_the_leakage_by_wind_and_stands_on_the_bill()
    {
        using var small = new SmallScenario(("wind_break = \"none\"", "wind_break = [\"none\", \"wind-net-half\"]"));
        var scenario = small.Read();
        var bare = LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices));
        var sheltered = LayoutBuilder.Build(scenario, SmallScenario.Of(scenario, ("wind_break", "wind-net-half")));
        Assert.Equal(0.6 * bare.Installation.House.AirChangesPerHourPerMPerS, sheltered.Installation.House.AirChangesPerHourPerMPerS, 1e-12);
        Assert.Equal(bare.Installation.House.AirChangesPerHour, sheltered.Installation.House.AirChangesPerHour);
        // Two sides of 5 x 3 m: 8 m, a roll of 10 at 11.00 a metre.
        Assert.Equal(110.00m, Assert.Single(Pricer.Bill(sheltered.Parts, scenario.Stock)).Total);
        Assert.Equal(RawPrices.Total([("wind-net-half", 8)]), Pricer.Bill(sheltered.Parts, scenario.Stock).Sum(l => l.Total));
    }
}
