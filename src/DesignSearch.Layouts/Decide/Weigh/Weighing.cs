using System.Text.Json.Serialization;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>What a search's result is worth: picks on other winters, with one part changed, with doubtful figures; ways compared; what to buy first.</summary>
public sealed record Weighing
{
    /// <summary>Nothing weighed: of a search whose result is stored before it is weighed.</summary>
    public static Weighing None { get; } = new()
    {
        UnseenFrom = "",
        Picks = [],
        Comparisons = [],
        Turning = new(null, null, null, null, null, null, null, TurningWords.NotWorkedOut),
        Purchases = [],
        PurchaseStep = 1,
        Stages = [],
        CheckCosts = [],
        Miss = null,
    };

    /// <summary>How the unseen winters were made, in a sentence; empty without them.</summary>
    public required string UnseenFrom { get; init; }

    /// <summary>One entry a picked layout, in the order of the picks.</summary>
    public required IReadOnlyList<PickWeighing> Picks { get; init; }

    /// <summary>Ways to protect the house against each other at equal protection.</summary>
    public required IReadOnlyList<Comparison> Comparisons { get; init; }

    /// <summary>A heater and nothing else: the cheapest that holds, or the nearest to it; null where none is allowed or none passes.</summary>
    [JsonIgnore]
    public WayLayout? HeaterAlone => Comparisons.FirstOrDefault(c => c.Question == WayWords.HeaterAlone)?.Ways.FirstOrDefault(w => w.Name == WayWords.Alone)?.Best;

    /// <summary>A turning collector against more fixed area.</summary>
    public required TurningGain Turning { get; init; }

    /// <summary>What more money buys, from the bare house up.</summary>
    public required IReadOnlyList<Purchase> Purchases { get; init; }

    /// <summary>Sum of money by which <see cref="Purchases"/> climbs.</summary>
    public required decimal PurchaseStep { get; init; }

    /// <summary>The first pick in stages, each a sensible layout.</summary>
    public required IReadOnlyList<Stage> Stages { get; init; }

    /// <summary>What each check kept the builder from, the costliest first; empty where no check cost anything that was found.</summary>
    public required IReadOnlyList<CheckCost> CheckCosts { get; init; }

    /// <summary>Where nothing holds: the nearest miss looked at closely; else null.</summary>
    public required Miss? Miss { get; init; }
}
