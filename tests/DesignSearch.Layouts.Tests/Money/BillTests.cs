using System.Globalization;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Parts.Money;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Bills worked by hand from the rows of the starter catalogue.</summary>
public sealed class BillTests
{
    [Fact]
    public void A_bill_worked_on_paper_agrees_to_the_cent()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var priced = Price(scenario, SmallScenario.Of(scenario, ("lining", "bubble-lining-large"), ("sealing", "sealing-basic"), ("barrel", "barrel-200-used"), ("barrel_count", 4)));
        // Cover of the 5 x 3 m house: walls 2·5·1.9 + gables 2·3·(1.9+2.7)/2 + slopes 2·5·sqrt(1.5²+0.8²) = 19 + 13.8 + 17 = 49.8 m²;
        // 5 % for cuts: 52.29, to the tenth: 52.3 m², four rolls of 15 m². Seals: one set. Four barrels, four lids, one set of water treatment.
        var hand = 4 * 15 * Price("linings", "bubble-lining-large")
            + Price("sealings", "sealing-basic") + 4 * Price("barrels", "barrel-200-used") + 4 * Price("small-parts", "lid-safe") + Price("small-parts", "treatment-water");
        Assert.Equal(hand, priced.BuildPrice);
        Assert.Equal(Pricer.Bill(priced.Built.Parts, scenario.Stock).Sum(l => l.Total), priced.BuildPrice);
    }

    [Fact]
    public void A_heater_pays_for_its_cable()
    {
        using var small = new SmallScenario(("mains_cable_m = 85", "mains_cable_m = 20"));
        var scenario = small.Read();
        var priced = Price(scenario, SmallScenario.Of(scenario, ("heater", "fan-heater-1kw"), ("heater_set_c", 4)));
        // 1000 W at 230 V: 4.35 A; over 20 m in 2.5 mm² the drop is 2·20·4.35·8.87e-3 = 1.5 V, far below 5 %; 21 m of cable, 20 m of duct (a coil of 25) and
        // tape (a roll of 100), 3 m more to the cut-out; the heater is plugged in.
        var hand = Price("heaters", "fan-heater-1kw") + 24.2m * Price("cables", "mains-3x2-5") + 25 * Price("small-parts", "conduit-25") + 100 * Price("small-parts", "tape-warning")
            + new[] { "earth-rod", "surge-protection-mains", "isolator-40a", "socket-outlet", "cutout-high-limit" }.Sum(id => Price("small-parts", id))
            + Price("small-parts", "rcd-30ma") + Price("small-parts", "breaker-6a") + Price("small-parts", "box-mains") + 4 * Price("small-parts", "gland-20")
            // New line 3 h, box 2 h, one device 1 h, test and certificate 1.5 h.
            + 7.5m * Price("small-parts", "licensed-electrician");
        Assert.Equal(hand, priced.BuildPrice);
        using var far = new SmallScenario(("mains_cable_m = 85", "mains_cable_m = 200"));
        Assert.True(Price(far.Read(), SmallScenario.Of(scenario, ("heater", "fan-heater-1kw"), ("heater_set_c", 4))).BuildPrice > hand + 180 * Price("cables", "mains-3x2-5"));
    }

    [Fact]
    public void What_is_owned_costs_nothing_up_to_its_quantity()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var layout = SmallScenario.Of(scenario, ("barrel", "barrel-200-used"), ("barrel_count", 4));
        var bought = Price(scenario, layout).BuildPrice;
        foreach (var (owned, saved) in new[] { (3m, 3m), (9m, 4m) })
            Assert.Equal(bought - saved * Price("barrels", "barrel-200-used"), Price(scenario with { Stock = Stock.Of(("barrel-200-used", owned)) }, layout).BuildPrice);
    }

    [Fact]
    public void Life_cost_is_build_price_and_present_values()
    {
        var terms = new MoneyTerms("crowns", 1000, 10, 0.05, 0.30m, null);
        // 1000 kWh at 0.30 is 300.00 a year; ten years at 5 %: 7.7217 (annuity table, UPV): 2316.52.
        var running = Pricer.Running(1000, 0, 12.34m, terms);
        Assert.Equal(300.00m, running.ElectricityPerYear);
        Validation.Equal("money life cost of 1000 kWh a year", "present value, currency", 300 * 7.7217, (double)(running.PresentValue - 12.34m), 0.02, "annuity table, UPV 5 %, 10 years", "Pricer");
    }

    private static PricedLayout Price(Scenario scenario, Layout layout)
    {
        var built = LayoutBuilder.Build(scenario, layout);
        return new PricedLayout(built, Pricer.BuildPrice(built.Parts, scenario.Stock, PriceLevel.Usual), 0, 0);
    }

    // Read without product code, so that the bill is checked against the file itself.
    private static decimal Price(string file, string id)
    {
        var row = File.ReadLines(Repository.At("catalogs", "starter", file + ".csv")).Single(l => l.StartsWith(id + ",", StringComparison.Ordinal));
        var quoted = row.Contains('"', StringComparison.Ordinal) ? row[..row.IndexOf('"', StringComparison.Ordinal)] + row[(row.IndexOf('"', row.IndexOf('"', StringComparison.Ordinal) + 1) + 1)..] : row;
        return decimal.Parse(quoted.Split(',')[3], CultureInfo.InvariantCulture);
    }
}
