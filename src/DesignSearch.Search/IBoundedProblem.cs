using DesignSearch.Search.Space;

namespace DesignSearch.Search;

/// <summary>
/// A problem that can bound a whole box of levels, so that a front can be proved. The answer is exact only as far as the bounds
/// are true: test them on random boxes and random points inside.
/// </summary>
public interface IBoundedProblem : IProblem
{
    /// <summary>
    /// For each variable, whether everything that its levels change has one best direction whatever the other variables are. A
    /// variable that does not act one way is split into single levels before <see cref="BoundBySimulation"/> is asked.
    /// </summary>
    IReadOnlyList<bool> ActsOneWay { get; }

    /// <summary>Lower bounds without a simulation, over every point of the box; the exact screen where the box is a single point.</summary>
    /// <param name="box">Any box.</param>
    /// <param name="objectiveBounds">One per objective, to be filled; negative infinity where nothing is known.</param>
    /// <returns>False where no point of the box can meet every constraint.</returns>
    bool BoundCheaply(LevelBox box, Span<double> objectiveBounds);

    /// <summary>Lower bounds from one simulation of the optimistic composite: every coefficient at its best within the box.</summary>
    /// <param name="box">A box in which each variable that does not act one way has a single level.</param>
    /// <param name="objectiveBounds">One per objective, to be filled.</param>
    void BoundBySimulation(LevelBox box, Span<double> objectiveBounds);
}
