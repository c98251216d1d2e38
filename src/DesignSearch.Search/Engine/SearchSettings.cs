namespace DesignSearch.Search.Engine;

/// <summary>How a search is run. The same settings, problem and seed give the same result at any number of threads.</summary>
public sealed record SearchSettings
{
    /// <summary>Start of every random stream.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Most points to evaluate, 1 or more.</summary>
    public long MaxEvaluations { get; init; } = 20_000;

    /// <summary>Points proposed before any of them is evaluated, 1 … 64; from 2 on they are proposed while the block before is evaluated.</summary>
    public int BlockSize { get; init; } = 16;

    /// <summary>Threads that share a block, 1 or more; no influence on the result.</summary>
    public int Threads { get; init; } = 1;

    /// <summary>How many points to keep by <see cref="Evaluation.Merit"/>, 0 or more.</summary>
    public int BestByMerit { get; init; } = 50;

    /// <summary>A finite space of no more canonical points than this is enumerated where the budget allows; 0 never.</summary>
    public long EnumerateUpTo { get; init; } = 2_000;

    /// <summary>
    /// Simulations that branch and bound may spend, after the search and besides its budget, on proving the front; 0 for no proof. Only
    /// where the problem is an <see cref="IBoundedProblem"/> and its space finite.
    /// </summary>
    public long ProofSimulations { get; init; }

    /// <summary>
    /// Boxes that branch and bound may look at, most of them without a simulation, 1 or more. On a space far too large for it this ends the
    /// proof where <see cref="ProofSimulations"/> would not, because hardly a box is ever small enough to be simulated.
    /// </summary>
    public long ProofBoxes { get; init; } = 10_000_000;

    /// <summary>Ends the search once the dominated volume grew by less than this fraction over <see cref="StagnationEvaluations"/>; null never.</summary>
    public double? Stagnation { get; init; }

    /// <summary>The window of <see cref="Stagnation"/>, in evaluations, 1 or more.</summary>
    public long StagnationEvaluations { get; init; } = 2_000;

    /// <summary>Ends the search at the first block after which this <see cref="SearchProgress.Hypervolume"/> is reached; null never.</summary>
    public double? TargetHypervolume { get; init; }

    /// <summary>
    /// Rounds of a thousand draws and a stretch of a walk through all there is that may find nothing worth an evaluation before the search
    /// ends as <see cref="StopReason.Unfound"/>, 1 or more.
    /// </summary>
    public int RoundsInVain { get; init; } = 10;

    /// <summary>Asked before each block; true means that the time is up. The engine itself has no clock.</summary>
    public Func<bool>? TimeIsUp { get; init; }

    internal void Check()
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(MaxEvaluations, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(BlockSize, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(BlockSize, 64);
        ArgumentOutOfRangeException.ThrowIfLessThan(Threads, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(BestByMerit);
        ArgumentOutOfRangeException.ThrowIfNegative(EnumerateUpTo);
        ArgumentOutOfRangeException.ThrowIfNegative(ProofSimulations);
        ArgumentOutOfRangeException.ThrowIfLessThan(ProofBoxes, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(StagnationEvaluations, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(RoundsInVain, 1);
    }
}
