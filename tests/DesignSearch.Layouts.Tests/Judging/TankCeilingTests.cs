using DesignSearch.Layouts.Assess;
using DesignSearch.Parts.Solar;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class TankCeilingTests
{
    [Fact]
    public void The_pump_stops_before_the_top_of_the_tank_is_too_hot_for_it()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario));
        var priced = assessor.Price(SmallScenario.Solar(scenario));
        var outcomes = assessor.Simulate([priced.Built])[0];
        Assert.All(outcomes, o => Assert.InRange(o.TankHighestC, 40, scenario.Catalogue.Of<Tank>().Single(t => t.Id == "cage-1000-used").MaxTemperatureC));
        Assert.Contains(assessor.Checks(priced, outcomes), c => c.Id == "tank-heat" && c.Passed);
    }
}
