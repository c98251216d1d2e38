using DesignSearch.Layouts.Decide.Judging;

namespace DesignSearch.Reporting.Words;

/// <summary>The picks of a run, one entry a layout: a layout that wins twice stands once, under both names.</summary>
internal static class PickNames
{
    /// <summary>Name of a best value that does not hold though others do.</summary>
    public const string Step = "First step";

    /// <summary>Picked layouts in the order first choice, cheapest, best value, most protection, each with the names it was picked for.</summary>
    /// <remarks>The best value is a pick only where it holds, or where nothing does: else it is a first step, <see cref="FirstStep"/>.</remarks>
    public static IReadOnlyList<(JudgedLayout Layout, IReadOnlyList<string> Names)> Of(Judgement judgement)
    {
        var picks = new (string Name, int? Rank)[]
        {
            ("first choice", judgement.Sureness.Count > 0 ? judgement.Picks.First : null),
            ("cheapest that holds", judgement.Picks.CheapestThatHolds),
            ("best value", FirstStep(judgement) is null ? judgement.Picks.BestValue : null),
            ("most protection", judgement.Picks.MostProtection),
        };
        return
        [
            .. picks.Where(p => p.Rank is not null)
                .GroupBy(p => p.Rank!.Value)
                .Select(g => (judgement.Ranking[g.Key - 1], (IReadOnlyList<string>)[.. g.Select(p => p.Name)])),
        ];
    }

    /// <summary>The best value where it does not hold though others do: something to begin with, and no solution; null where there is none.</summary>
    public static JudgedLayout? FirstStep(Judgement judgement) =>
        judgement is { AnythingHolds: true, Picks.BestValue: { } rank } && judgement.Ranking[rank - 1] is { Holds: false } step ? step : null;

    /// <summary>The names of one pick as a heading.</summary>
    public static string Heading(IReadOnlyList<string> names) => Say.Capital(Say.Joined(names));
}
