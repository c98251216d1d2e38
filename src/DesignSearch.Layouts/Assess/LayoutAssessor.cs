using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Assess.Checks;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Parts.Money;
using DesignSearch.Parts.Small;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Assess;

/// <summary>Prices, checks and simulates layouts of one scenario; the same figures in a search, in a ranking and for a layout file. Safe to use from several threads.</summary>
/// <param name="scenario">The scenario.</param>
/// <param name="winters">Its winters.</param>
public sealed class LayoutAssessor(Scenario scenario, WinterSet winters)
{
    private readonly Lazy<double> bareFrostHours = new(
        () => Simulate(winters, [LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices))], 1)[0]
            .Select((o, i) => o.FrostHours * winters.Winters[i].Weight)
            .Sum());

    /// <summary>The scenario.</summary>
    public Scenario Scenario => scenario;

    /// <summary>Its winters.</summary>
    public WinterSet Winters => winters;

    /// <summary>Frost hours of the bare house, weighted over the winters.</summary>
    public double BareFrostHours => bareFrostHours.Value;

    /// <summary>Works a layout out and prices it; nothing is simulated.</summary>
    public PricedLayout Price(Layout layout) => Price(LayoutBuilder.Begin(scenario, layout));

    /// <summary>Screens a layout: prices it, and says by how much it misses the checks that need no season.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="violations">Filled by the order of the systems' rules, 0 where a check is met.</param>
    /// <param name="enough">Where the violations add up to this before the parts are listed, it stops.</param>
    /// <returns>The layout, priced; null where it stopped, with violations that are known so far.</returns>
    public PricedLayout? Screen(Layout layout, Span<double> violations, double enough = double.PositiveInfinity)
    {
        var begun = LayoutBuilder.Begin(scenario, layout);
        if (double.IsFinite(enough))
        {
            CheckList.Violations(scenario.Systems, CheckList.BeforeTheList(Under(begun.Systems, []), begun.Systems), violations);
            if (begun.LacksParts)
                violations[scenario.Systems.PlaceOf(PlantRules.Parts.Id)] = CheckList.PartsMissed;
            var sum = 0.0;
            foreach (var violation in violations)
                sum += violation;
            if (sum >= enough)
                return null;
        }

        var priced = Price(begun);
        CheckList.Violations(scenario.Systems, CheckList.Unsorted(Under(priced.Built.Systems, []), priced), violations);
        return priced;
    }

    private PricedLayout Price(BegunLayout begun)
    {
        var built = LayoutBuilder.Build(begun);
        return new PricedLayout(
            built,
            Pricer.BuildPrice(built.Parts, scenario.Stock, scenario.Money.Prices),
            Pricer.Replacements(built.Parts, scenario.Stock, scenario.Money),
            Pricer.LabourHours(built.Parts))
        {
            UpkeepPerYear = Pricer.UpkeepPerYear(built.Systems, LicensedPerHour, scenario.Money),
        };
    }

    /// <summary>What an hour of a licensed person costs: the scenario's word, else the catalogue's price; 0 where neither says.</summary>
    public decimal LicensedPerHour => scenario.Money.LicensedRatePerHour ?? PartShelf.Of(scenario.Catalogue, scenario.Money.Prices) switch
    {
        var shelf when shelf.Cheapest(SmallPartRole.LicensedHour) is { } hour => shelf.PriceOf(hour),
        _ => 0,
    };

    /// <summary>The shopping list of a layout; its sum is the build price.</summary>
    public IReadOnlyList<BillLine> Bill(PricedLayout priced) => Pricer.Bill(priced.Built.Parts, scenario.Stock, scenario.Money.Prices);

    /// <summary>Checks of a layout; without outcomes only those that need no season.</summary>
    public IReadOnlyList<Check> Checks(PricedLayout priced, IReadOnlyList<Outcome> outcomes) =>
        CheckList.Of(Under(priced.Built.Systems, outcomes), priced);

    /// <summary>Simulates layouts through every winter.</summary>
    /// <param name="layouts">The layouts.</param>
    /// <param name="threads">Threads to use, 1 or more; what comes out does not depend on how many.</param>
    /// <returns>For each layout, one outcome a winter.</returns>
    public Outcome[][] Simulate(IReadOnlyList<BuiltLayout> layouts, int threads = 1) => Simulate(winters, layouts, threads);

    /// <summary>Begins to simulate layouts through every winter, in pieces that threads may share.</summary>
    internal SeasonPieces Begin(IReadOnlyList<BuiltLayout> layouts, int threads) => new(winters, layouts, threads);

    /// <summary>Figures of a simulated layout.</summary>
    public LayoutFigures Figures(PricedLayout priced, IReadOnlyList<Outcome> outcomes, bool passesChecks)
    {
        var kwh = Weighted(outcomes, (o, i) => o.ElectricKwh + DriveKwh(priced.Built, winters.Winters[i].Winter));
        var cheapKwh = Weighted(outcomes, (o, _) => o.CheapKwh);
        var running = Pricer.Running(kwh, cheapKwh, priced.Replacements, scenario.Money, priced.UpkeepPerYear);
        return new LayoutFigures(
            priced.BuildPrice,
            priced.BuildPrice + running.PresentValue + Pricer.Labour(priced.LabourHours, scenario.Money),
            running,
            Weighted(outcomes, (o, _) => o.FrostHours),
            Weighted(outcomes, (o, _) => o.FrostDegreeHoursKh),
            outcomes.Max(o => o.FrostHours),
            outcomes.Min(o => o.LowestAirC),
            passesChecks);
    }

    /// <summary>A weighted mean over the winters.</summary>
    public double Weighted(IReadOnlyList<Outcome> outcomes, Func<Outcome, int, double> figure) => outcomes.Select((o, i) => figure(o, i) * winters.Winters[i].Weight).Sum();

    /// <summary>What the mount does in a winter; null without a collector.</summary>
    public PlaneIrradiance? Plane(BuiltLayout built, Winter winter) => built.Mount is { } mount ? winters.Planes.Get(winter, mount) : null;

    /// <summary>How much more sun falls on the collector in the season by the sky of Hay and Davies than by that of Perez, as a share; null without a collector.</summary>
    public double? OtherSkyShare(BuiltLayout built)
    {
        if (built.Mount is not { } mount)
            return null;
        double Sun(PlaneCache planes) => winters.Winters.Sum(w => w.Weight * planes.Get(w.Winter, mount).KwhPerM2(w.Winter.WarmUpHours));
        return Sun(winters.OtherSky) / Sun(winters.Planes) - 1;
    }

    /// <summary>Electricity of a season that the season model does not count: that of the drives [kWh].</summary>
    public double DriveKwh(BuiltLayout built, Winter winter)
    {
        var plane = Plane(built, winter);
        return built.Systems.Sum(s => s.ExtraKwh(plane));
    }

    private Conditions Under(IReadOnlyList<DesignedSystem> systems, IReadOnlyList<Outcome> outcomes)
    {
        var apart = false;
        foreach (var system in systems)
            apart |= system.Plants is not null;
        return new(scenario, winters.LowestOutsideC, apart, outcomes);
    }

    private static Outcome[][] Simulate(WinterSet winters, IReadOnlyList<BuiltLayout> layouts, int threads)
    {
        var work = new SeasonPieces(winters, layouts, threads);
        Share.Out(work.Pieces, threads, work.Do);
        return work.Outcomes;
    }
}
