using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Duties;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>What is the same and what is not, and what is the same has the same hash.</summary>
public sealed class EqualityTests : IDisposable
{
    private readonly SmallScenario small = new();

    public void Dispose() => small.Dispose();

    [Fact]
    public void Values_and_layouts_are_equal_by_what_they_say()
    {
        var scenario = small.Read();
        ChoiceValue one = ChoiceValue.Of(1), two = ChoiceValue.Of(2), heater = scenario.Value("fan-heater-1kw");
        Assert.True(one == ChoiceValue.Of(1) && one != two && !(one == two) && !(one != ChoiceValue.Of(1)) && heater != one && heater != ChoiceValue.None);
        Assert.True(one.Equals((object)ChoiceValue.Of(1)) && !one.Equals((object)two) && !one.Equals("1"));
        Assert.Equal(one.GetHashCode(), ChoiceValue.Of(1).GetHashCode());
        Assert.Equal(("1", "fan-heater-1kw", "none", true, false), (one.ToString(), heater.ToString(), ChoiceValue.None.ToString(), ChoiceValue.None.IsNone, heater.IsNone));
        Layout Of(int count) => SmallScenario.Of(scenario, ("barrel", "barrel-200-used"), ("barrel_count", count));
        Assert.True(Of(2).Equals((object)Of(2)) && !Of(2).Equals((object)Of(4)) && !Of(2).Equals((object?)null) && !Of(2).Equals("layout"));
        Assert.Equal(Of(2).GetHashCode(), Of(2).GetHashCode());
        // A choice that sleeps tells nothing apart.
        Assert.Equal(SmallScenario.Of(scenario), SmallScenario.Of(scenario, ("barrel_count", 4)));
    }

    [Fact]
    public void Checks_and_needs_are_equal_where_all_is()
    {
        Check Of(string id = "a", string title = "t", bool passed = true, double margin = 0.5, string words = "w", string source = "s") => Check.Of(id, title, passed, margin, $"{words}", source);
        Assert.Equal(Of(), Of());
        Assert.Equal(Of().GetHashCode(), Of().GetHashCode());
        Assert.All(new[] { Of(id: "b"), Of(title: "u"), Of(passed: false), Of(margin: 0.4), Of(words: "v"), Of(source: "r") }, other => Assert.NotEqual(Of(), other));
        Assert.False(Of().Equals(null));
        var part = small.Read().Catalogue.All[0];
        NeededPart Need(decimal quantity = 1, bool hired = false, string system = "x", double amperes = 1) => new(part, quantity, new(system, "why", "where"), [Duty.Current(PlantState.Running, amperes)]) { IsHired = hired };
        Assert.Equal(Need(), Need());
        Assert.Equal(Need().GetHashCode(), Need().GetHashCode());
        Assert.All(new[] { Need(quantity: 2), Need(hired: true), Need(system: "y"), Need(amperes: 2) }, other => Assert.NotEqual(Need(), other));
    }

    [Theory]
    [InlineData(22, 6, new[] { 22, 23, 0, 5 }, new[] { 6, 7, 12, 21 }, 8)]
    [InlineData(1, 5, new[] { 1, 2, 4 }, new[] { 0, 5, 6, 23 }, 4)]
    [InlineData(0, 23, new[] { 0, 22 }, new[] { 23 }, 23)]
    public void A_night_tariff_holds_from_its_first_hour_to_before_its_last(int from, int to, int[] held, int[] others, int hours)
    {
        var night = new NightTariff(0.2m, from, to);
        Assert.All(held, h => Assert.True(night.Holds(h)));
        Assert.All(others, h => Assert.False(night.Holds(h)));
        Assert.Equal(hours, night.HoursPerDay);
        Assert.Equal(hours, Enumerable.Range(0, 24).Count(night.Holds));
    }
}
