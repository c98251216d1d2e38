using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Parts.Money;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class MoneyReadingTests
{
    private const string Tariff = "tariff_per_kwh = 0.42";

    [Fact]
    public void Price_level_night_tariff_labour_and_limits_are_read()
    {
        using var small = new SmallScenario((Tariff, Tariff + "\nprice_level = \"second-hand\"\nnight_tariff_per_kwh = 0.18\nnight_from_hour = 22\nnight_to_hour = 6\nlabour_rate_per_hour = 12.5"), ("mains_at_greenhouse = false", "mains_at_greenhouse = false\nmains_limit_a = 10\nfloor_bears_kg_per_m2 = 900\nanchor_holds_n = 1500"));
        var scenario = small.Read();
        Assert.Equal((PriceLevel.SecondHand, new NightTariff(0.18m, 22, 6), 12.5m), (scenario.Money.Prices, scenario.Money.Night, scenario.Money.LabourRatePerHour));
        Assert.Equal((10.0, 900, 1500), (scenario.Site.MainsLimitA, scenario.Site.FloorBearsKgPerM2, scenario.Site.AnchorHoldsN));
        Assert.Equal([true, true, true, false, false, true], new[] { 22, 23, 5, 6, 21, 0 }.Select(scenario.Money.Night!.Holds));
    }

    [Theory]
    [InlineData("price_level = \"cheap\"", "cheap")]
    [InlineData("price_level = 3", "3")]
    [InlineData("night_tariff_per_kwh = -0.1\nnight_from_hour = 22\nnight_to_hour = 6", "-0.1")]
    [InlineData("night_tariff_per_kwh = 0.1\nnight_from_hour = 22\nnight_to_hour = 22", "22")]
    [InlineData("night_tariff_per_kwh = 0.1\nnight_from_hour = 24\nnight_to_hour = 6", "24")]
    [InlineData("night_tariff_per_kwh = 0.1\nnight_from_hour = 22", "")]
    [InlineData("night_to_hour = 6", "")]
    [InlineData("labour_rate_per_hour = \"ten\"", "ten")]
    [InlineData("labour_rate_per_hour = -1", "-1")]
    [InlineData("build_hours = 0", "0")]
    public void A_bad_value_is_told_with_its_place(string line, string value)
    {
        using var small = new SmallScenario((Tariff, Tariff + "\n" + line));
        Assert.Contains(small.Faults(), f => f.Value == value && f.Line > 0 && (f.Column > 0 || value.Length == 0) && f.Expected.Length > 0);
    }

    [Theory]
    [InlineData("mains_limit_a = 0", "0")]
    [InlineData("floor_bears_kg_per_m2 = 5", "5")]
    [InlineData("anchor_holds_n = \"much\"", "much")]
    public void A_bad_limit_of_the_site_is_told_with_its_place(string line, string value)
    {
        using var small = new SmallScenario(("mains_at_greenhouse = false", "mains_at_greenhouse = false\n" + line));
        Assert.Contains(small.Faults(), f => f.Value == value && f.Line > 0 && f.Column > 0 && f.Expected.Length > 0);
    }

    [Fact]
    public void What_is_owned_must_be_in_the_catalogue()
    {
        using var small = new SmallScenario(("\n[site]", "\nstock = \"stock.csv\"\n\n[site]"));
        File.WriteAllText(Path.Combine(small.Folder, "stock.csv"), "id,quantity\nbarrel-200-usde,3\n");
        Assert.Contains(small.Faults(), f => f.Value == "barrel-200-usde" && f.Line == 2 && f.Expected.Contains("barrel-200-used", StringComparison.Ordinal));
    }
}
