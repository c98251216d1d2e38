using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Words;
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
        var w = Enumerable.Range(0, winters.Count).OrderByDescending(i => nearest.Outcomes[i].FrostHours).ThenBy(i => nearest.Outcomes[i].LowestAirC).First();
        var (winter, _, forcing) = winters[w];
        var outcome = nearest.Outcomes[w];
        var row = default(HourRow);
        SeasonSimulator.Run(forcing, new LayoutCase(nearest.Priced.Built.Installation, book.Assessor.Plane(nearest.Priced.Built, winter)), r => row = r.Hour == outcome.ColdestHour ? r : row);
        var balance = Balance(nearest.Priced.Built.Installation.House, row, winter.WindMPerS[row.Hour], winter.Place.ElevationM);
        var sentences = new List<string>
        {
            Written.Sentence($"Its coldest hour begins at {row.LocalTime:HH:mm} on {row.LocalTime:d MMMM}: {(nearest.Priced.Built.Installation.PlantsStandApart ? Written.Sentence($"{row.PlantsC:0.0} °C among the plants, {row.AirMeanC:0.0}") : Written.Sentence($"{row.AirMeanC:0.0}"))} °C inside, {row.OutsideC:0.0} °C outside. {string.Join(", ", balance.Select(f => Written.Sentence($"{f.Name} {f.Watts:0} W")))}."),
            Help(nearest),
            Budget(nearest),
        };
        return new(rank, winter.Name, outcome.FrostHours, scenario.Greenhouse.FrostLimitC - outcome.LowestAirC, row.LocalTime, balance, sentences);
    }

    // What the cover lost less what floor and barrels gave is what is left of the balance: the air stores next to nothing.
    private List<HourFlow> Balance(HouseNumbers house, HourRow row, double windMPerS, double elevationM)
    {
        var assumptions = scenario.Assumptions;
        var changes = house.AirChangesPerHour + house.AirChangesPerHourPerMPerS * assumptions.RoofWindFactor * windMPerS;
        var leak = assumptions.AirVolumetricCapacityJPerM3K * WinterForcing.Density(row.OutsideC, elevationM) * house.VolumeM3 * changes / 3600 * (row.AirMeanC - row.OutsideC);
        List<HourFlow> flows = [new("stand-by heater", row.HeaterW), .. row.More.Columns.Where(c => c.Unit == "W").Select(c => new HourFlow(c.Words, row.More[c])), new("heat release from the tank", double.IsFinite(row.ReleaseW) ? row.ReleaseW : 0), new("sun", row.HouseSunW)];
        flows.RemoveAll(f => Math.Abs(f.Watts) < 0.5);
        var rest = flows.Sum(f => f.Watts) - leak;
        flows.Add(new("leaking air", -leak));
        flows.Add(rest >= 0 ? new("through the cover, less what floor and water gave", -rest) : new("floor and water, less what went through the cover", -rest));
        return flows;
    }

    private string Help(Trial nearest)
    {
        var changes = Neighbours.All(scenario, nearest.Layout).ToList();
        var trials = book.Of([.. changes.Select(c => c.Layout)]);
        var best = Enumerable.Range(0, changes.Count).Where(i => trials[i].Checks.All(c => c.Passed || c.Id == PlantRules.Budget.Id || c.Id == PlantRules.BuildHours.Id)).MinBy(i => (trials[i].Figures.WorstFrostHours, trials[i].Figures.FrostDegreeHoursKh), Comparer<(int, double)>.Default);
        if (changes.Count == 0 || trials[best].Figures.FrostDegreeHoursKh >= nearest.Figures.FrostDegreeHoursKh)
            return "No single change among the choices of the scenario brings it nearer.";
        var (choice, layout) = changes[best];
        var trial = trials[best];
        var (to, from) = (choice.Words(layout.ValueOf(choice)), choice.Words(nearest.Layout.ValueOf(choice)));
        var more = trial.Figures.BuildPrice - nearest.Figures.BuildPrice;
        var over = trial.Failed is { } failed ? $" (over the limit: {failed.Title})" : "";
        return $"What would help most is another {choice.Title}: {to} instead of {from} leaves {Trial.Hours(trial.Figures.WorstFrostHours)} in the worst winter"
            + Written.Sentence($" and costs {more:0} {scenario.Money.Currency} more to build{over}.");
    }

    private string Budget(Trial nearest)
    {
        var rich = scenario with { Money = scenario.Money with { Budget = NoLimit, BuildHours = null } };
        var free = new TrialBook(new LayoutAssessor(rich, book.Assessor.Winters), threads);
        var found = new WayFinder(free, [], isExact: false).Best(_ => true, nearest.Layout);
        return found is { Holds: true }
            ? Written.Sentence($"With {found.Figures.BuildPrice:0} instead of {scenario.Money.Budget:0} {scenario.Money.Currency} to build, {PlantWords.Title(found.Priced.Built)} holds (found by changing one choice at a time; a cheaper one may exist).")
            : "Changing one choice at a time, nothing that holds was found at any budget: allow more kinds of parts, or a lower limit.";
    }
}
