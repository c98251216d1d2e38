using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Duties;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Two things that are needed are the same only where all that is said of them is.</summary>
public sealed class NeededPartTests
{
    [Fact]
    public void Whatever_is_said_of_it_tells_two_needs_apart()
    {
        using var small = new SmallScenario();
        var (part, other) = (small.Read().Catalogue.All[0], small.Read().Catalogue.All[1]);
        var why = new Purpose("house", "warmth", "inside");
        Duty[] duties = [Duty.Heat(PlantState.DeadSensor, 60)];
        var needed = new NeededPart(part, 2, why, duties);
        Assert.Equal(needed, new NeededPart(part, 2, why, duties));
        Assert.Equal(needed.GetHashCode(), new NeededPart(part, 2, why, duties).GetHashCode());
        NeededPart[] others =
        [
            new(other, 2, why, duties), new(part, 3, why, duties), new(part, 2, why with { Where = "outside" }, duties), new(part, 2, why, duties) { IsHired = true },
            new(part, 2, why, [Duty.Heat(PlantState.DeadSensor, 61)]), new(part, 2, why),
        ];
        Assert.All(others, o => Assert.NotEqual(needed, o));
        Assert.False(needed.Equals(null));
    }
}
