using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Systems.Heaters;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Looks closely at the nearest miss where nothing holds.</summary>
/// <param name="book">Simulates.</param>
/// <param name="threads">Threads to work on.</param>
internal sealed class MissWeighing(TrialBook book, int threads)
{
    private const decimal NoLimit = 1_000_000_000;

    private readonly Scenario scenario = book.Scenario;

    /// <summary>The nearest miss.</summary>
    /// <param name="rank">Rank of the layout.</param>
    /// <param name="nearest">The layout.</param>
    public Miss Of(int rank, Trial nearest)
    {
        var winters = book.Assessor.Winters.Winters;
        var w = Enumerable.Range(0, winters.Count)
            .OrderByDescending(i => nearest.Outcomes[i].FrostHours).ThenBy(i => nearest.Outcomes[i].LowestAirC).First();
        var (winter, _, forcing) = winters[w];
        var (outcome, built) = (nearest.Outcomes[w], nearest.Priced.Built);
        var row = default(HourRow);
        var layout = new LayoutCase(built.Installation, book.Assessor.Plane(built, winter));
        SeasonSimulator.Run(forcing, layout, r => row = r.Hour == outcome.ColdestHour ? r : row);
        var balance = Balance(built.Installation.House, row, winter.WindMPerS[row.Hour], winter.Place.ElevationM);
        string[] sentences =
        [
            MissWords.ColdestHour(row, built.Installation.PlantsStandApart, balance),
            Help(nearest),
            Budget(nearest),
        ];
        var shortK = scenario.Greenhouse.FrostLimitC - outcome.LowestAirC;
        return new(rank, winter.Name, outcome.FrostHours, shortK, row.LocalTime, balance, sentences);
    }

    // What the cover lost less what floor and barrels gave is what is left of the balance: the air stores next to nothing.
    private List<HourFlow> Balance(HouseNumbers house, HourRow row, double windMPerS, double elevationM)
    {
        var assumptions = scenario.Assumptions;
        var changes = house.AirChangesPerHour + house.AirChangesPerHourPerMPerS * assumptions.RoofWindFactor * windMPerS;
        var leak = assumptions.AirVolumetricCapacityJPerM3K * WinterForcing.Density(row.OutsideC, elevationM)
            * house.VolumeM3 * changes / 3600 * (row.AirMeanC - row.OutsideC);
        List<HourFlow> flows =
        [
            new(HeaterWords.Device, row.HeaterW),
            .. row.More.Columns.Where(c => c.Unit == "W").Select(c => new HourFlow(c.Words, row.More[c])),
            new(MissWords.Release, double.IsFinite(row.ReleaseW) ? row.ReleaseW : 0),
            new(MissWords.Sun, row.HouseSunW),
        ];
        flows.RemoveAll(f => Math.Abs(f.Watts) < 0.5);
        var rest = flows.Sum(f => f.Watts) - leak;
        flows.Add(new(MissWords.Leak, -leak));
        flows.Add(new(rest >= 0 ? MissWords.CoverRest : MissWords.FloorRest, -rest));
        return flows;
    }

    private string Help(Trial nearest)
    {
        static bool MayHelp(Trial trial) =>
            trial.Checks.All(c => c.Passed || c.Id == PlantRules.Budget.Id || c.Id == PlantRules.BuildHours.Id);
        var changes = Neighbours.All(scenario, nearest.Layout).ToList();
        var trials = book.Of([.. changes.Select(c => c.Layout)]);
        var may = Enumerable.Range(0, changes.Count).Where(i => MayHelp(trials[i])).ToList();
        if (may.Count == 0)
            return MissWords.NothingHelps;
        var best = may.MinBy(
            i => (trials[i].Figures.WorstFrostHours, trials[i].Figures.FrostDegreeHoursKh), Comparer<(int, double)>.Default);
        if (trials[best].Figures.FrostDegreeHoursKh >= nearest.Figures.FrostDegreeHoursKh)
            return MissWords.NothingHelps;
        var (choice, layout) = changes[best];
        var (to, from) = (choice.Words(layout.ValueOf(choice)), choice.Words(nearest.Layout.ValueOf(choice)));
        var figures = trials[best].Figures;
        var more = figures.BuildPrice - nearest.Figures.BuildPrice;
        return MissWords.HelpsMost(
            choice.Title, to, from, figures.WorstFrostHours, more, scenario.Money.Currency, trials[best].Failed);
    }

    private string Budget(Trial nearest)
    {
        var rich = scenario with { Money = scenario.Money with { Budget = NoLimit, BuildHours = null } };
        var free = new TrialBook(new LayoutAssessor(rich, book.Assessor.Winters), threads);
        var found = new WayFinder(free, [], isExact: false).Best(_ => true, nearest.Layout);
        return found is { Holds: true }
            ? MissWords.HoldsFor(found.Figures.BuildPrice, scenario.Money, PlantWords.Title(found.Priced.Built))
            : MissWords.NoBudgetHelps;
    }
}
