using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;

namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>
/// What a layout costs at least, beside whatever else: packs are taken by what is used of them, since another system may use the rest, so
/// that the costs of several systems add up to no more than a bill of all.
/// </summary>
/// <param name="assessor">Scenario and prices.</param>
internal sealed class OwnCosts(LayoutAssessor assessor)
{
    /// <summary>All of a priced layout.</summary>
    public Costs Floor(PricedLayout priced)
    {
        var sum = new Costs(0, (double)Pricer.OverTheYears(priced.UpkeepPerYear, assessor.Scenario.Money));
        foreach (var need in priced.Built.Parts)
            sum += CostOf(need.Part, need.Quantity, need.IsHired);
        return sum;
    }

    /// <summary>How much is listed of each part.</summary>
    public IEnumerable<(string Id, decimal Quantity)> Quantities(Layout layout) =>
        Listed(LayoutBuilder.Begin(assessor.Scenario, layout)).Parts.GroupBy(n => n.Part.Id, StringComparer.Ordinal).Select(g => (g.Key, g.Sum(n => n.Quantity)));

    /// <summary>What so much of a part costs, what is owned left out.</summary>
    public Costs CostOf(IPart part, decimal quantity, bool isHired = false)
    {
        var (stock, money, info) = (assessor.Scenario.Stock, assessor.Scenario.Money, part.Info);
        var owned = stock.QuantityOf(info.Id);
        var build = (double)(Math.Max(0, quantity - owned) * info.PriceAt(money.Prices));
        var comesAgain = info.LifeYears < money.Years && !(isHired && owned >= quantity);
        var again = comesAgain ? (double)(quantity * info.PriceAt(money.Prices)) * PresentValue.OfReplacements(money.Interest, info.LifeYears, money.Years) : 0;
        var work = (double)quantity * info.LabourHours * (double)money.LabourRatePerHour;
        return new(build, build + again + work);
    }

    private Needs Listed(BegunLayout begun)
    {
        var scenario = assessor.Scenario;
        var needs = new Needs(scenario.Offered, scenario.Money.Prices) { LicensedRate = scenario.Money.LicensedRatePerHour };
        foreach (var system in begun.Systems)
            system.List(needs);
        return needs;
    }
}
