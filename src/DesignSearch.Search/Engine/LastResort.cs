using DesignSearch.Search.Archive;
using DesignSearch.Search.Moves;
using DesignSearch.Search.Proof;
using DesignSearch.Search.Space;

namespace DesignSearch.Search.Engine;

/// <summary>
/// Where proposals fail. A violation may lead astray, so nothing is repaired here: changes of what passed lately, draws from anywhere, and a walk through
/// all there is, in turn.
/// </summary>
internal sealed class LastResort(IProblem problem, SearchSpace space, FrontArchive archive, Draws draws, Passage passage, PointSet met)
{
    // Draws and steps of a round. Without bounds only a space that can be gone through is worth a walk; a box is dear to bound.
    private const int Draws = 1000;
    private const int MostWalked = 4_000_000;
    private const int Steps = MostWalked / UsualRounds;
    private const int UsualRounds = 10;
    private const int Boxes = 1000;

    private readonly Remainder? rest = space.IsFinite && (problem is IBoundedProblem || space.HoldsAtMost(MostWalked)) ? new(problem, space, archive) : null;

    /// <summary>Whether all there is was gone through.</summary>
    public bool IsThrough => rest is { IsThrough: true };

    /// <summary>A point that was never met, passes and may better the front; null once the walk is at its end, or after rounds in vain.</summary>
    public double[]? Next(int rounds, Func<bool> isOver, ref SplitMixStream random)
    {
        for (var round = 0; round < rounds && !IsThrough && !isOver(); round++)
        {
            for (var draw = 0; draw < Draws; draw++)
            {
                var point = draws.Anywhere(ref random);
                if (draw % 2 == 0 && passage.AnyPassed(ref random) is { } passed)
                {
                    point = (double[])passed.Clone();
                    draws.Disturb(point, ref random);
                }

                if (IsLeft(point))
                    return point;
            }

            var steps = problem is IBoundedProblem ? Boxes : Steps;
            for (var step = 0; step < steps && rest?.Next(steps - step) is { } next; step++)
            {
                if (IsLeft(next))
                    return next;
            }
        }

        return null;
    }

    // It counts as met then.
    private bool IsLeft(double[] point) =>
        !met.Contains(SearchSpace.KeyOf(point)) && !passage.Refuses(point) && !archive.Covers(passage.Bounds) && passage.LetThrough(point);
}
