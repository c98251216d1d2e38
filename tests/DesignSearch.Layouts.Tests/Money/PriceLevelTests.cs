using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Parts.Money;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class PriceLevelTests
{
    [Fact]
    public void Each_price_level_is_paid()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var layout = SmallScenario.Of(scenario, ("barrel", "steel-drum-205"), ("barrel_count", 3));
        var prices = Enum.GetValues<PriceLevel>().Select(level =>
        {
            var at = scenario with { Money = scenario.Money with { Prices = level } };
            return Pricing.Total(Pricer.Bill(LayoutBuilder.Build(at, layout).Parts, at.Stock, level));
        });
        // Drum 28 (15 to 45, used 15), lid 10 (6 to 16, no used one), water treatment 15 (9 to 24, no used one).
        Assert.Equal([3 * 28 + 3 * 10 + 15m, 3 * 15 + 3 * 6 + 9m, 3 * 45 + 3 * 16 + 24m, 3 * 15 + 3 * 10 + 15m], prices);
    }

    [Fact]
    public void Night_kilowatt_hours_cost_the_night_tariff()
    {
        // 1000 kWh, 600 of them by night: 400 · 0.30 + 600 · 0.12 = 192.00.
        var terms = new MoneyTerms("crowns", 1000, 1, 0, 0.30m, null) { Night = new NightTariff(0.12m, 22, 6) };
        Assert.Equal(192.00m, Pricer.Running(1000, 600, 0, terms).ElectricityPerYear);
        Assert.Equal(300.00m, Pricer.Running(1000, 600, 0, terms with { Night = null }).ElectricityPerYear);
    }

    [Fact]
    public void The_season_counts_the_kilowatt_hours_of_the_night_by_themselves()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var layout = SmallScenario.Solar(scenario, ("heater", "fan-heater-1kw"), ("heater_set_c", 4));
        double Share(NightTariff? night)
        {
            var at = scenario with { Money = scenario.Money with { Night = night } };
            var assessor = new LayoutAssessor(at, WinterSet.Make(at));
            var outcome = assessor.Simulate([LayoutBuilder.Build(at, layout)])[0][0];
            return outcome.CheapKwh / (outcome.StandbyKwh + outcome.PumpKwh);
        }

        // The night from 20 to 8 and the day from 8 to 20 are all hours there are, and it is by night that the heater works.
        var (none, night, day) = (Share(null), Share(new NightTariff(0.1m, 20, 8)), Share(new NightTariff(0.1m, 8, 20)));
        Assert.Equal(0, none);
        Assert.Equal(1, night + day, 1e-9);
        Assert.InRange(night, 0.6, 0.95);
    }

    [Fact]
    public void Own_work_costs_only_where_there_is_a_rate()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var layout = SmallScenario.Of(scenario, ("sealing", "sealing-basic"));
        (decimal Build, decimal Life) At(decimal rate)
        {
            var at = scenario with { Money = scenario.Money with { LabourRatePerHour = rate } };
            var assessor = new LayoutAssessor(at, WinterSet.Make(at));
            var priced = assessor.Price(layout);
            return (priced.BuildPrice, assessor.Figures(priced, assessor.Simulate([priced.Built])[0], true).LifeCost);
        }

        var hours = (decimal)Pricer.LabourHours(LayoutBuilder.Build(scenario, layout).Parts);
        Assert.True(hours > 0);
        Assert.Equal(At(0).Build, At(20).Build);
        // Besides an hour of upkeep a year: 12 years at 3 %, UPV 9.9540 (annuity table).
        Assert.Equal((double)(At(0).Life + 20 * hours) + (20 * 9.9540), (double)At(20).Life, 0.01);
    }
}
