using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Tests;

/// <summary>A whole stored run made up for tests of the report; place, house and figures are invented.</summary>
internal static class InventedRun
{
    /// <summary>A finished run in which several layouts hold.</summary>
    public static StoredRun Finished() => Of(InventedLayouts.All());

    /// <summary>A run stopped by hand in which nothing holds.</summary>
    public static StoredRun NothingHolds()
    {
        var run = Of(InventedLayouts.All().Where(l => !l.Holds));
        return run with
        {
            Search = run.Search with { IsPartial = true, IsExact = false, StoppedBecause = "stopped", StoppedInWords = "It was stopped by hand." },
            Judgement = run.Judgement with
            {
                Answer = "Nothing within the budget holds 2 °C through the hard winter; the nearest is a night cover with barrels and four collectors.",
                NearestMiss = ["The nearest layout still has frost in the hard winter.", "A stand-by heater of 1 kW would close the gap."],
            },
        };
    }

    /// <summary>Ranks, front and picks of any set of layouts, as the judging floor would give them.</summary>
    public static StoredRun Of(IEnumerable<JudgedLayout> layouts)
    {
        var bare = InventedLayouts.Bare;
        var ranking = layouts.OrderByDescending(l => l.Holds).ThenByDescending(l => l.PassesChecks).ThenByDescending(l => l.Score).Select((l, i) => l with { Rank = i + 1 }).ToList();
        var all = ranking.Where(l => l.PassesChecks).Prepend(bare).ToList();
        var front = all.Where(a => !all.Any(b => Beats(b, a))).OrderBy(l => l.LifeCost).Select(l => l.Rank).ToList();
        var passing = ranking.Where(l => l.PassesChecks).ToList();
        var cheapest = ranking.Where(l => l.Holds).MinBy(l => l.LifeCost);
        var picks = new Picks(cheapest?.Rank, cheapest?.Rank, passing.MaxBy(l => l.Score)?.Rank, passing.OrderBy(l => l.FrostDegreeHoursKh).ThenByDescending(l => l.LowestAirC).ThenBy(l => l.LifeCost).FirstOrDefault()?.Rank);
        return new()
        {
            FormatVersion = StoredRun.CurrentFormat,
            ProgramVersion = "0.1.0",
            Inputs = [new("scenario.toml", new string('a', 64)), new("catalogs/starter/collectors.csv", new string('b', 64))],
            Search = new(7, ranking.Count, ranking.Count, "exhausted", "Every layout was simulated, so there was nothing left to try.", true, false, 12.4),
            Scenario = Scenario(),
            Judgement = new()
            {
                Answer = cheapest is null ? "Nothing holds." : $"{cheapest.Title} holds the house above 2 °C through both winters, for {Say.Whole((double)cheapest.BuildPrice)} crowns to build and {Say.Whole((double)cheapest.LifeCost)} crowns over 15 years.",
                AnythingHolds = cheapest is not null,
                BareHouse = bare,
                Ranking = ranking,
                Front = front,
                Picks = picks,
                NearestMiss = [],
                Doubts = ["If the door leaks like most doors, frost degree-hours double; seal it before buying anything.", "The cover's U-value is the maker's; a fifth worse and the second-best layout wins."],
            },
            Weighing = InventedWeighing.Of(ranking, picks, bare),
        };
    }

    private static ScenarioRecord Scenario() => new()
    {
        Name = "frost-hollow",
        Description = "An invented place, house and builder, made up to show how the program works; all prices and names are invented too.",
        Currency = "crowns",
        PlaceName = "Frost Hollow, an invented valley",
        LatitudeDeg = 47.25,
        LongitudeDeg = -9.5,
        Season = "1 November to 31 March",
        FrostLimitC = 2,
        Budget = 6000,
        Years = 15,
        Interest = 0.03,
        TariffPerKwh = 0.31m,
        House = "24 m² of twin-wall sheet on a timber frame, leaning on a brick wall",
        Winters =
        [
            new("typical", "typical", 0.75, 1.6, -11.2, 1720, 1.42, ["Made from twelve monthly means with seed 7."]) { Start = new(2001, 10, 2) },
            new("hard", "hard", 0.25, -0.9, -18.7, 2390, 1.5, ["The same means, 2.5 K colder."]) { Start = new(2001, 10, 2) },
        ],
        WeatherSource = "Twelve monthly means written into the scenario, invented.",
        WeatherShares = [new("air temperature", 0.9, 0, 0.02, 0.08), new("sun on the level", 0, 1, 0, 0)],
        Assumptions =
        [
            new("leakage_per_hour", 1.2, "1/h", true, "common practice, no source"),
            new("soil_conductivity", 1.4, "W/(m·K)", true, "from memory"),
            new("sun_to_air_share", 0.55, "–", false, "measured by the builder"),
        ],
    };

    private static bool Beats(JudgedLayout a, JudgedLayout b) =>
        a.LifeCost <= b.LifeCost && a.FrostDegreeHoursKh <= b.FrostDegreeHoursKh && (a.LifeCost < b.LifeCost || a.FrostDegreeHoursKh < b.FrostDegreeHoursKh || a.Rank < b.Rank);
}
