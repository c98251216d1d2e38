namespace DesignSearch.Search.Proof;

/// <summary>
/// A problem of which the cheapest point that serves can be proved: sets of points can be bounded and split. The proof is worth what the
/// bounds are: no point of a set that serves may cost less than its set's bound. Test them on points drawn at random.
/// </summary>
public interface ICheapestProblem
{
    /// <summary>All points.</summary>
    LevelSets All { get; }

    /// <summary>The least that a point of a set can cost, as far as it is known without a simulation.</summary>
    /// <param name="set">Any set.</param>
    /// <returns>A lower bound; infinite where none of the set can serve. For a single point it is exact but for what simulation adds.</returns>
    double Cheaply(LevelSets set);

    /// <summary>Whether a set is narrow enough to be simulated as a whole.</summary>
    /// <param name="set">Any set.</param>
    bool CanSimulate(LevelSets set);

    /// <summary>By one simulation each: the least that simulation adds to the bounds of sets.</summary>
    /// <param name="sets">Sets that can be simulated.</param>
    /// <param name="added">One a set, 0 or more; infinite where none of it serves.</param>
    /// <param name="threads">Threads to use; what comes out does not depend on how many.</param>
    void Simulate(ReadOnlySpan<LevelSets> sets, Span<double> added, int threads);

    /// <summary>What single points cost.</summary>
    /// <param name="points">Sets of one point each.</param>
    /// <param name="costs">One a point; infinite where it does not serve.</param>
    /// <param name="threads">Threads to use; what comes out does not depend on how many.</param>
    void Evaluate(ReadOnlySpan<LevelSets> points, Span<double> costs, int threads);

    /// <summary>Splits a set of several points.</summary>
    /// <param name="set">The set.</param>
    Branching Split(LevelSets set);
}
