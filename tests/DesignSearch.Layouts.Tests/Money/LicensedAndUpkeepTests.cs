using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Parts.Money;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>What an electrician, hire, upkeep and wear cost: in the bill, in the life cost and on the page, worked out by hand.</summary>
public sealed class LicensedAndUpkeepTests
{
    // 1/1.03 + … + 1/1.03^11 and … + 1/1.03^12 (annuity table, 3 %).
    private const double Eleven = 9.25262;
    private const double Twelve = 9.95400;

    private static readonly (string Key, object Value)[] Heap =
    [
        ("compost_mix", "chips-manure"), ("compost_m3", 12), ("compost_wrap", "wrap-straw-bales"), ("compost_coil", "coil-pex-20"),
        ("compost_coil_m", 100), ("compost_pump", "solar-pump-19w"), ("compost_set_c", 5), ("compost_rest_c", 40), ("compost_glycol_percent", 48),
    ];

    private static decimal Hours(Scenario scenario, Layout layout) =>
        LayoutBuilder.Build(scenario, layout).Parts.Where(p => p.Part.Id == "licensed-electrician").Sum(p => p.Quantity);

    private static Scenario Read(params (string From, string To)[] changes)
    {
        using var small = new SmallScenario(changes);
        return small.Read();
    }

    // A new line 3 h, box 2 h, test and certificate 1.5 h, each device 1 h: none for low voltage from a socket, none for what no current needs.
    [Theory]
    [InlineData(false, 7.5)]
    [InlineData(true, 4.5)]
    public void The_electrician_is_paid_for_what_is_on_the_mains(bool hasMains, double hours)
    {
        var scenario = hasMains ? Read(("mains_at_greenhouse = false", "mains_at_greenhouse = true")) : Read(("mains_cable_m = 85", "mains_cable_m = 20"));
        Assert.Equal((decimal)hours, Hours(scenario, SmallScenario.Of(scenario, ("heater", "fan-heater-1500"), ("heater_set_c", 4))));
        Assert.Equal(0, Hours(scenario, SmallScenario.Of(scenario, ("lining", "bubble-lining-large"))));
        Assert.Equal(hasMains ? 4.5m : 0, Hours(scenario, SmallScenario.Of(scenario, ("night_cover", "aluminised-motor"), ("control_box", "cheapest"))));
    }

    [Fact]
    public void A_heat_pump_brings_its_own_joining_and_no_hour_is_counted_twice()
    {
        var scenario = Read();
        var built = LayoutBuilder.Build(scenario, SmallScenario.Of(scenario, ("heat_pump", "hp-cold-climate"), ("heat_pump_set_c", 8)));
        var line = built.Parts.Single(p => p.Part.Id == "licensed-electrician");
        Assert.Equal(6.5m, line.Quantity);
        Assert.Contains("The heat pump's own joining is in its price", line.Purpose.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void The_scenarios_own_rate_is_paid_and_the_catalogues_where_it_says_nothing()
    {
        (string, object)[] heater = [("heater", "fan-heater-1500"), ("heater_set_c", 4)];
        decimal Paid(Scenario scenario) => Pricer.Bill(LayoutBuilder.Build(scenario, SmallScenario.Of(scenario, heater)).Parts, Stock.Empty).Single(l => l.PartId == "licensed-electrician").Total;
        Assert.Equal(7.5m * RawPrices.Price("licensed-electrician"), Paid(Read()));
        var own = Read(("interest = 0.03", "interest = 0.03\nlicensed_rate_per_hour = 71.5"));
        Assert.Equal(536.25m, Paid(own));
        // Half an hour a year is looked at: 35.75 a year over 12 years.
        var priced = new LayoutAssessor(own, WinterSet.Make(own)).Price(SmallScenario.Of(own, heater));
        Assert.Equal(35.75m, priced.UpkeepPerYear);
        Assert.Equal(35.75 * Twelve, (double)(priced.LifeCostWithoutCurrent(own.Money) - priced.BuildPrice - priced.Replacements), 0.01);
    }

    // Fresh every season: mix 12 m³ at 18 = 216.00, hire 190.00, straw 24.3 m² in 61 bales of 0.4 m² at 8 = 195.20, test strips 6.00: 607.20, now and after each of 11 years.
    [Fact]
    public void Twelve_years_of_a_heap_agree_with_a_hand_sum()
    {
        var scenario = Read();
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario));
        var priced = assessor.Price(SmallScenario.Of(scenario, Heap));
        var yearly = priced.Built.Parts.Where(p => p.Part.Info.LifeYears == 1).ToList();
        Assert.Equal(["chips-manure", "heap-hire", "test-strips", "wrap-straw-bales"], yearly.Select(p => p.Part.Id).Order(StringComparer.Ordinal));
        Assert.Equal(607.20m, Pricer.BuildPrice(yearly, Stock.Empty, PriceLevel.Usual));
        Assert.Equal(607.20 * Eleven, (double)Pricer.Replacements(yearly, Stock.Empty, scenario.Money), 0.01);

        // All of it, straight from the catalogue's text; the whole heap runs on low voltage from a socket, so nobody licensed is paid.
        var (build, later) = (0m, 0.0);
        foreach (var article in priced.Built.Parts.GroupBy(p => p.Part.Id))
        {
            var price = RawPrices.Bought(article.Key, article.Sum(p => p.Quantity)) * RawPrices.Price(article.Key);
            build += Math.Round(price, 2, MidpointRounding.AwayFromZero);
            for (var year = RawPrices.LifeYears(article.Key); year < 12; year += RawPrices.LifeYears(article.Key))
                later += (double)price / Math.Pow(1.03, year);
        }

        var outcomes = assessor.Simulate([priced.Built])[0];
        var current = (double)Math.Round((decimal)(assessor.Weighted(outcomes, (o, _) => o.ElectricKwh) * 0.42), 2, MidpointRounding.AwayFromZero) * Twelve;
        Assert.Equal((double)build + later + current, (double)assessor.Figures(priced, outcomes, true).LifeCost, 0.02);
    }

    [Fact]
    public void Own_hours_of_upkeep_are_priced_only_at_the_builders_own_rate()
    {
        var scenario = Read();
        PricedLayout Priced(decimal rate)
        {
            var at = scenario with { Money = scenario.Money with { LabourRatePerHour = rate } };
            return new LayoutAssessor(at, WinterSet.Make(at)).Price(SmallScenario.Of(at, ("night_cover", "aluminised-hand")));
        }

        // A cover that is drawn by hand: 25 h a year.
        Assert.Equal(0, Priced(0).UpkeepPerYear);
        Assert.Equal(375.00m, Priced(15).UpkeepPerYear);
    }

    [Fact]
    public void What_wears_out_is_told_with_its_years_and_what_it_costs_a_year()
    {
        var scenario = Read();
        var judged = new Judge(new LayoutAssessor(scenario, WinterSet.Make(scenario))).Of(SmallScenario.Of(scenario, Heap));
        var hire = judged.Wears.Single(w => w.Name.StartsWith("Machine hire", StringComparison.Ordinal));
        Assert.Equal((1, 190.00m, 190.0), (hire.EveryYears, hire.Price, hire.CostPerYear));
        // Glycol: 42.2 L, 47.1 % of it by volume and a tenth: 21.9 L, 5 canisters of 5 L at 11 a litre, every 4 years.
        var glycol = judged.Wears.Single(w => w.Name.StartsWith("Propylene", StringComparison.Ordinal));
        Assert.Equal((4, 275.00m, 68.75), (glycol.EveryYears, glycol.Price, glycol.CostPerYear));
        Assert.DoesNotContain(judged.Wears, w => w.EveryYears >= 12);
        Assert.Equal(judged.Wears.OrderByDescending(w => w.CostPerYear).Select(w => w.Name), judged.Wears.Select(w => w.Name));
    }
}
