using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Front;

/// <summary>What the chart of life cost against frost shows, the same for the picture files and for the page.</summary>
internal sealed record FrontChart
{
    private const double CrowdedShare = 0.2;
    private const double ReachBeyondFront = 1.25;

    /// <summary>The finding, one sentence.</summary>
    public required string Finding { get; init; }

    /// <summary>What must be known to read it: budget, winters, scale.</summary>
    public required string Note { get; init; }

    /// <summary>Every layout that is drawn, the bare house among them, the cheapest first.</summary>
    public required IReadOnlyList<FrontPoint> Points { get; init; }

    /// <summary>The front, the cheapest first.</summary>
    public required IReadOnlyList<FrontPoint> Front { get; init; }

    /// <summary>Cost axis.</summary>
    public required ChartScale Across { get; init; }

    /// <summary>Frost axis.</summary>
    public required ChartScale Up { get; init; }

    /// <summary>Title of the cost axis.</summary>
    public required string AcrossTitle { get; init; }

    /// <summary>Title of the frost axis.</summary>
    public required string UpTitle { get; init; }

    /// <summary>What is drawn, for those who do not see it.</summary>
    public string InWords => $"{Say.Capital(UpTitle)} against {AcrossTitle}. {Note}";

    /// <summary>Ways of turning that occur, in the order of the legend.</summary>
    public IReadOnlyList<TurningMode> Modes => [.. Points.Select(p => p.Turning).DistinctBy(m => m.Words).OrderBy(m => m.Order)];

    /// <summary>The chart of a run.</summary>
    public static FrontChart Of(StoredRun run)
    {
        var judgement = run.Judgement;
        var onFront = judgement.Front.ToHashSet();
        var names = PickNames.Of(judgement).ToDictionary(p => p.Layout.Rank, p => PickNames.Heading(p.Names));
        if (PickNames.FirstStep(judgement) is { } step)
            names.TryAdd(step.Rank, PickNames.Step);
        var all = judgement.Ranking.Prepend(judgement.BareHouse)
            .Select(l => new FrontPoint(
                l.Rank, l.FullTitle, (double)l.LifeCost, l.FrostDegreeHoursKh, TurningMode.Of(l.Turning),
                onFront.Contains(l.Rank), names.GetValueOrDefault(l.Rank, "")))
            .OrderBy(p => p.LifeCost).ThenByDescending(p => p.FrostKh).ThenBy(p => p.Rank).ToList();
        var reach = ReachBeyondFront * all.Where(p => p.OnFront || p.PickName.Length > 0 || p.Rank == 0).Max(p => p.LifeCost);
        var drawn = all.Where(p => p.LifeCost <= reach).ToList();
        var front = drawn.Where(p => p.OnFront).ToList();
        var highest = drawn.Max(p => p.FrostKh);
        var stretched = front.Count > 2 && front.Select(p => p.FrostKh).Order().ElementAt(front.Count / 2) < CrowdedShare * highest;
        return new()
        {
            Finding = FrontFinding.Of(judgement, run.Scenario.Currency),
            Note = NoteOf(run.Scenario, all.Count - drawn.Count, stretched),
            Points = drawn,
            Front = front,
            Across = new(drawn.Max(p => p.LifeCost), Stretched: false),
            Up = new(highest, stretched),
            AcrossTitle = $"life cost over {Say.Count(run.Scenario.Years, "year")} [{PlainText.Cut(run.Scenario.Currency, 24)}]",
            UpTitle = "frost degree-hours [K·h]",
        };
    }

    private static string NoteOf(ScenarioRecord scenario, int beyond, bool stretched)
    {
        var note = $"Budget for building: {Say.Money(scenario.Budget, scenario.Currency)}. The stepped line joins the layouts that no other beats on both.";
        if (stretched)
            note += " The frost scale is stretched near zero.";
        return beyond switch
        {
            0 => note,
            1 => note + " One dearer layout lies off to the right.",
            _ => note + $" {Say.Count(beyond, "dearer layout")} lie off to the right.",
        };
    }
}
