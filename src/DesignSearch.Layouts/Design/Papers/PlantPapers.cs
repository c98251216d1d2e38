using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Design.Papers;

/// <summary>The papers of a plant: what to try, what to ask licensed people, what to write down.</summary>
public sealed record PlantPapers
{
    /// <summary>No papers.</summary>
    public static PlantPapers Empty { get; } = new();

    /// <summary>What to try before the plant is left to itself, in the order in which it is tried.</summary>
    public IReadOnlyList<CommissioningStep> Steps { get; init; } = [];

    /// <summary>What a licensed person must know to make an offer; empty where no licensed work is on the plant.</summary>
    public IReadOnlyList<EnquiryFact> Enquiry { get; init; } = [];

    /// <summary>Columns of the log sheet, the date left out.</summary>
    public IReadOnlyList<LogColumn> Log { get; init; } = [];

    /// <summary>The papers of a layout; each system answers for its own. Mains are tried first, for all else hangs on them.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="built">The layout worked out.</param>
    public static PlantPapers Of(Scenario scenario, BuiltLayout built)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(built);
        var ground = new PaperGround(scenario, built);
        return built.Systems.Count == 0 ? Empty : new()
        {
            Steps = [.. built.Systems.OrderByDescending(s => s is SuppliedSystem).SelectMany(s => s.Commissioning(ground))],
            Enquiry = [.. built.Systems.SelectMany(s => s.Enquiry(ground)).OrderBy(f => f.Trade)],
            Log = [.. PaperWords.Always, .. built.Systems.SelectMany(s => s.Log).DistinctBy(c => c.What)],
        };
    }
}
