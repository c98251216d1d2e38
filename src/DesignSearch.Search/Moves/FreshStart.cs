using DesignSearch.Search.Archive;
using DesignSearch.Search.Engine;
using DesignSearch.Search.Space;

namespace DesignSearch.Search.Moves;

/// <summary>
/// A short search of its own beside the long one, with a population and a front that begin anew each time: where reals must fit kinds, other kinds look
/// bad until their reals have been fitted, and beside a front that is already fine they never get the time. What it finds the long search takes up.
/// </summary>
internal sealed class FreshStart(SearchSpace space, Draws draws, int objectives, int size)
{
    private const int Length = 200;

    private FrontArchive front = FrontArchive.For(objectives);
    private Population population = new(space, size, objectives);
    private Proposer? proposer;
    private int made;

    /// <summary>How the last point was made; negative for one drawn anywhere.</summary>
    public int Way { get; private set; } = -1;

    /// <summary>A point in canonical form, counted towards the length of this search once <see cref="Made"/> is called.</summary>
    public double[] Propose(ref SplitMixStream random)
    {
        if (made >= Length || proposer is null)
        {
            (front, population, made) = (FrontArchive.For(objectives), new(space, size, objectives), 0);
            proposer = new(space, draws, front, population);
        }

        var point = made < size ? draws.Anywhere(ref random) : proposer.Propose(long.MaxValue, ref random, 0);
        Way = made < size ? -1 : proposer.Way;
        return point;
    }

    /// <summary>Counts the point that was proposed last as one that will be evaluated.</summary>
    public void Made() => made++;

    /// <summary>Takes the result of a point that it proposed.</summary>
    public void Take(EvaluatedPoint point, int way)
    {
        var entered = point.Evaluation.TotalViolation == 0 && front.Add(point);
        population.Add(point);
        proposer!.Book(way, entered ? 1 : 0);
    }
}
