using DesignSearch.Layouts.Design;
using DesignSearch.Parts.Electrics;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>What a scenario without mains may say, and what it offers.</summary>
public sealed class NoMainsScenarioTests
{
    [Theory]
    [InlineData("no_mains = true", "no_mains = true\nmains_at_greenhouse = true", "true")]
    [InlineData("no_mains = true", "no_mains = true\nmains_cable_m = 30", "30")]
    [InlineData("no_mains = true", "no_mains = true\nmains_limit_a = 9", "9")]
    [InlineData("no_mains = true", "no_mains = true\nmains_loop_ohm = 0.5", "0.5")]
    [InlineData("interest = 0.03", "interest = 0.03\ntariff_per_kwh = 0.3", "0.3")]
    [InlineData("interest = 0.03", "interest = 0.03\nlicensed_rate_per_hour = 60", "60")]
    [InlineData("return_years = 10", "return_years = 10\npower_cut_hours = 6", "6")]
    public void A_key_that_speaks_of_mains_is_a_fault_with_its_place(string from, string to, string value)
    {
        using var house = new LonelyHouse("", (from, to));
        var fault = Assert.Single(house.Faults());
        Assert.True(fault.Line > 1 && fault.Column > 1, fault.ToString());
        Assert.Contains(value, fault.Value, StringComparison.Ordinal);
        Assert.Contains("no_mains", fault.Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no_mains = true", "no_mains = true\nmains_at_greenhouse = false")]
    [InlineData("no_mains = true", "no_mains = true\nmains_cable_m = 0")]
    [InlineData("interest = 0.03", "interest = 0.03\ntariff_per_kwh = 0")]
    public void What_says_nothing_of_mains_may_stand(string from, string to)
    {
        using var house = new LonelyHouse("", (from, to));
        Assert.Empty(house.Faults());
    }

    [Fact]
    public void With_mains_the_tariff_is_still_asked_for()
    {
        using var house = new LonelyHouse("", ("no_mains = true", "mains_cable_m = 30"));
        Assert.Contains("tariff_per_kwh", Assert.Single(house.Faults()).Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("heater = [\"none\", \"fan-heater-1kw\"]", "heater")]
    [InlineData("pump = \"circulator-25w\"", "pump")]
    [InlineData("day_fan = [\"store-fan-24v-12w\", \"store-fan-mains-45w\"]", "day_fan")]
    public void A_part_on_mains_that_is_named_is_a_fault(string choice, string key)
    {
        using var house = new LonelyHouse(choice);
        Assert.Contains(house.Faults(), f => f.Expected.Contains("without mains", StringComparison.Ordinal)
            && f.Expected.Contains($"'{key}'", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_on_mains_is_offered_and_nothing_else_is_lost()
    {
        using var lonely = new LonelyHouse();
        using var joined = Joined();
        var (without, with) = (lonely.Read(), joined.Read());
        var gone = with.Choices.Zip(without.Choices, (a, b) => a.Levels.Except(b.Levels)).SelectMany(l => l).Select(l => l.Part!).ToList();
        Assert.True(gone.Count > 8, $"{gone.Count} gone");
        Assert.All(gone, p => Assert.True(p.RunsOnMains, p.Id));
        Assert.All(without.Choices.SelectMany(c => c.Levels), l => Assert.False(l.Part is { RunsOnMains: true }, l.Id));
        Assert.Contains(gone, p => p.Kind.Name == "heater");
        Assert.Contains(gone, p => p.Kind.Name == "heat-pump");
        Assert.Contains(gone, p => p.Kind.Name == "pump");
        Assert.Same(with.Catalogue, with.Offered);
        Assert.DoesNotContain(without.Offered.Of<PowerSupply>(), s => !s.IsOnBattery);
    }

    [Fact]
    public void With_mains_the_same_layout_has_no_panel_and_no_battery()
    {
        using var joined = Joined();
        var scenario = joined.Read();
        var built = LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario));
        Assert.Null(built.Supply!.Battery);
        string[] kinds = ["sun-panel", "battery", "charge-controller", "battery-fuse", "panel-bracket"];
        Assert.DoesNotContain(built.Parts, p => kinds.Contains(p.Part.Kind.Name));
        Assert.DoesNotContain(built.Parts, p => p.Part is PowerSupply { IsOnBattery: true });
    }

    private static LonelyHouse Joined() =>
        new("", ("no_mains = true", "mains_cable_m = 30"), ("interest = 0.03", "interest = 0.03\ntariff_per_kwh = 0.3"));
}
