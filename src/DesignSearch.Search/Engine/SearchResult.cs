using DesignSearch.Search.Proof;

namespace DesignSearch.Search.Engine;

/// <summary>What a search found.</summary>
public sealed record SearchResult
{
    /// <summary>Points that meet every constraint and that no other beats, by rising first objective.</summary>
    public required IReadOnlyList<EvaluatedPoint> Front { get; init; }

    /// <summary>The best by <see cref="Evaluation.Merit"/> of those that meet every constraint, best first.</summary>
    public required IReadOnlyList<EvaluatedPoint> BestByMerit { get; init; }

    /// <summary>The point that misses its constraints least; null once one meets them all, or where none was evaluated.</summary>
    public required EvaluatedPoint? NearestMiss { get; init; }

    /// <summary>Points evaluated, replayed ones included; each point counts once because none is evaluated twice.</summary>
    public required long Evaluations { get; init; }

    /// <summary>Different canonical points looked at: evaluated or refused by the screen.</summary>
    public required long DistinctPoints { get; init; }

    /// <summary>Why the search ended.</summary>
    public required StopReason StoppedBecause { get; init; }

    /// <summary>The same in a sentence.</summary>
    public required string StoppedInWords { get; init; }

    /// <summary>Whether the whole space was gone through or the front proved by branch and bound, so that the front is the true one.</summary>
    public required bool IsExact { get; init; }

    /// <summary>What branch and bound could say; null where none was asked for or the problem offers no bounds.</summary>
    public required SearchProof? Proof { get; init; }

    /// <summary>How the dominated volume grew.</summary>
    public required IReadOnlyList<HypervolumePoint> HypervolumeTrend { get; init; }
}
