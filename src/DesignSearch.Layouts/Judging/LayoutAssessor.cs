using DesignSearch.Climate;
using DesignSearch.Parts;
using DesignSearch.Season;

namespace DesignSearch.Layouts;

/// <summary>Prices, checks and simulates layouts of one scenario; the same figures in a search, in a ranking and for a layout file. Safe to use from several threads.</summary>
/// <param name="scenario">The scenario.</param>
/// <param name="winters">Its winters.</param>
public sealed class LayoutAssessor(Scenario scenario, WinterSet winters)
{
    private readonly Lazy<double> bareFrostHours = new(() => Simulate(winters, [LayoutBuilder.Build(scenario, Layout.Bare(scenario.Catalogue))])[0].Select((o, i) => o.FrostHours * winters.Winters[i].Weight).Sum());

    /// <summary>The scenario.</summary>
    public Scenario Scenario => scenario;

    /// <summary>Its winters.</summary>
    public WinterSet Winters => winters;

    /// <summary>Frost hours of the bare house, weighted over the winters.</summary>
    public double BareFrostHours => bareFrostHours.Value;

    /// <summary>Works a layout out and prices it; nothing is simulated.</summary>
    public PricedLayout Price(Layout layout)
    {
        var built = LayoutBuilder.Build(scenario, layout);
        var bill = Pricer.Bill(built.Parts, scenario.Stock, scenario.Money.Prices);
        return new PricedLayout(built, bill, Pricing.Total(bill), Pricer.Replacements(built.Parts, scenario.Money), Pricer.LabourHours(built.Parts));
    }

    /// <summary>Checks of a layout; without outcomes only those that need no season.</summary>
    public IReadOnlyList<Check> Checks(PricedLayout priced, IReadOnlyList<Outcome> outcomes) =>
        CheckList.Of(scenario, priced.Built, priced.BuildPrice, priced.LabourHours, winters.LowestOutsideC, outcomes);

    /// <summary>Simulates layouts through every winter.</summary>
    /// <returns>For each layout, one outcome a winter.</returns>
    public Outcome[][] Simulate(IReadOnlyList<BuiltLayout> layouts) => Simulate(winters, layouts);

    /// <summary>Figures of a simulated layout.</summary>
    public LayoutFigures Figures(PricedLayout priced, IReadOnlyList<Outcome> outcomes, bool passesChecks)
    {
        var kwh = Weighted(outcomes, (o, i) => o.StandbyKwh + o.PumpKwh + DriveKwh(priced.Built, winters.Winters[i].Winter));
        var running = Pricer.Running(kwh, Weighted(outcomes, (o, _) => o.CheapKwh), priced.Replacements, scenario.Money);
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

    /// <summary>Electricity of the drives over a season [kWh].</summary>
    public double DriveKwh(BuiltLayout built, Winter winter) => built.Solar is { Drive: { } drive } solar && Plane(built, winter) is { } plane
        ? plane.TravelDeg / drive.SpeedDegPerS * drive.Watts * solar.Frames / 3.6e6
        : 0;

    private static Outcome[][] Simulate(WinterSet winters, IReadOnlyList<BuiltLayout> layouts)
    {
        var results = layouts.Select(_ => new Outcome[winters.Winters.Count]).ToArray();
        var cases = new LayoutCase[layouts.Count];
        var outcomes = new Outcome[layouts.Count];
        for (var w = 0; w < winters.Winters.Count; w++)
        {
            var (winter, _, forcing) = winters.Winters[w];
            for (var i = 0; i < cases.Length; i++)
                cases[i] = new LayoutCase(layouts[i].Installation, layouts[i].Mount is { } mount ? winters.Planes.Get(winter, mount) : null);
            SeasonSimulator.Run(forcing, cases, outcomes);
            for (var i = 0; i < outcomes.Length; i++)
                results[i][w] = outcomes[i];
        }

        return results;
    }
}
