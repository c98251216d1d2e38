using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Front;

/// <summary>What the chart of life cost against frost shows, the same for the picture files and for the page.</summary>
internal sealed record FrontChart
{
    private const double CrowdedShare = 0.2;
    private const double ReachBeyondFront = 1.25;

    // The axis goes on to the budget, unless that would squeeze the points.
    private const double ReachToBudget = 1.5;

    /// <summary>What stands across and up.</summary>
    public required FrontReading Reading { get; init; }

    /// <summary>The finding, one sentence.</summary>
    public required string Finding { get; init; }

    /// <summary>What must be known to read it: budget, winters, scale.</summary>
    public required string Note { get; init; }

    /// <summary>Every layout that is drawn, the bare house among them, the cheapest first.</summary>
    public required IReadOnlyList<FrontPoint> Points { get; init; }

    /// <summary>The front, the cheapest first; empty in a reading that has another.</summary>
    public required IReadOnlyList<FrontPoint> Front { get; init; }

    /// <summary>A level line with its words, for instance the limit; null for none.</summary>
    public (double At, string Words)? LevelLine { get; init; }

    /// <summary>An upright line with its words, for instance the budget; null for none, or where it lies off to the right.</summary>
    public (double At, string Words)? UprightLine { get; init; }

    /// <summary>The axis across, of cost.</summary>
    public required ChartScale Across { get; init; }

    /// <summary>The axis up.</summary>
    public required ChartScale Up { get; init; }

    /// <summary>Title of the axis across.</summary>
    public required string AcrossTitle { get; init; }

    /// <summary>Title of the axis up.</summary>
    public required string UpTitle { get; init; }

    /// <summary>What is drawn, for those who do not see it.</summary>
    public string InWords => $"{Say.Capital(UpTitle)} against {AcrossTitle}. {Note}";

    /// <summary>Ways of turning that occur, in the order of the legend.</summary>
    public IReadOnlyList<TurningMode> Modes => [.. Points.Select(p => p.Turning).DistinctBy(m => m.Words).OrderBy(m => m.Order)];

    /// <summary>The chart of a run.</summary>
    /// <param name="run">The run.</param>
    /// <param name="reading">How it is read.</param>
    public static FrontChart Of(StoredRun run, FrontReading reading)
    {
        var all = All(run).OrderBy(reading.Across).ThenByDescending(p => p.FrostKh).ThenBy(p => p.Rank).ToList();
        var reach = ReachBeyondFront * all.Where(p => p.Stands).Max(reading.Across);
        var drawn = all.Where(p => reading.Across(p) <= reach).ToList();
        return reading.ShowsHolding ? Coldest(run, drawn, all.Count - drawn.Count) : Frost(run, drawn, all.Count - drawn.Count);
    }

    private static IEnumerable<FrontPoint> All(StoredRun run)
    {
        var judgement = run.Judgement;
        var onFront = judgement.Front.ToHashSet();
        var names = PickNames.Of(judgement).ToDictionary(p => p.Layout.Rank, p => PickNames.Heading(p.Names));
        if (PickNames.FirstStep(judgement) is { } step)
            names.TryAdd(step.Rank, PickNames.Step);
        return judgement.Ranking.Prepend(judgement.BareHouse).Select(l => new FrontPoint(
            l.Rank, l.FullTitle, (double)l.LifeCost, (double)l.BuildPrice, l.FrostDegreeHoursKh, l.LowestAirC, l.Holds, TurningMode.Of(l.Turning),
            onFront.Contains(l.Rank), names.GetValueOrDefault(l.Rank, "")));
    }

    private static FrontChart Frost(StoredRun run, List<FrontPoint> drawn, int beyond)
    {
        var front = drawn.Where(p => p.OnFront).ToList();
        var highest = drawn.Max(p => p.FrostKh);
        var stretched = front.Count > 2 && front.Select(p => p.FrostKh).Order().ElementAt(front.Count / 2) < CrowdedShare * highest;
        return new()
        {
            Reading = FrontReading.Frost,
            Finding = FrontFinding.Of(run.Judgement, run.Scenario.Currency),
            Note = NoteOf(run.Scenario, beyond, stretched),
            Points = drawn,
            Front = front,
            Across = new(drawn.Max(p => p.LifeCost), Stretched: false),
            Up = new(highest, stretched),
            AcrossTitle = $"cost over {Say.Count(run.Scenario.Years, "year")} [{PlainText.Cut(run.Scenario.Currency, 24)}]",
            UpTitle = "frost, hours × degrees too cold [K·h]",
        };
    }

    private static FrontChart Coldest(StoredRun run, List<FrontPoint> drawn, int beyond)
    {
        var scenario = run.Scenario;
        var (limit, budget) = (scenario.FrostLimitC, (double)scenario.Budget);
        var (lowest, highest) = (Math.Min(limit, drawn.Min(p => p.LowestAirC)), Math.Max(limit, drawn.Max(p => p.LowestAirC)));
        var dearest = drawn.Max(p => p.BuildPrice);
        var across = new ChartScale(budget <= ReachToBudget * dearest ? Math.Max(dearest, budget) : dearest, Stretched: false);
        return new()
        {
            Reading = FrontReading.ColdestHour,
            Finding = FrontFinding.Coldest(run.Judgement, scenario),
            Note = "Above the level line the limit is kept; grey is what does not hold." + Beyond(beyond),
            Points = drawn,
            Front = [],
            Across = across,
            Up = new(highest, Stretched: false, lowest),
            AcrossTitle = $"price to build [{PlainText.Cut(scenario.Currency, 24)}]",
            UpTitle = "coldest hour inside [°C]",
            LevelLine = (limit, $"limit {Say.Plain(limit)}\u00A0°C"),
            UprightLine = across.Share(budget) <= 1 ? (budget, "budget") : null,
        };
    }

    private static string NoteOf(ScenarioRecord scenario, int beyond, bool stretched)
    {
        var note = $"Budget for building: {Say.Money(scenario.Budget, scenario.Currency)}. The stepped line joins the layouts that no other beats on both.";
        if (stretched)
            note += " The frost scale is stretched near zero.";
        return note + Beyond(beyond);
    }

    private static string Beyond(int count) => count switch
    {
        0 => "",
        1 => " One dearer layout lies off to the right.",
        _ => $" {Say.Count(count, "dearer layout")} lie off to the right.",
    };
}
