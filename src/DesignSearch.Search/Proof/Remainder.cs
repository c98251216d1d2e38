using DesignSearch.Search.Archive;
using DesignSearch.Search.Space;

namespace DesignSearch.Search.Proof;

/// <summary>
/// Goes through a finite space from its beginning to its end, once, a stretch at a time: box by box where the problem bounds boxes, which
/// passes over whatever cannot meet the constraints or better the front, else point by point. What was passed over stays so, since the front only grows.
/// </summary>
internal sealed class Remainder
{
    private readonly IBoundedProblem? bounded;
    private readonly SearchSpace space;
    private readonly FrontArchive archive;
    private readonly IEnumerator<double[]>? points;
    private readonly Stack<(int[] Low, int[] High)> open = new();
    private readonly double[] bounds;

    public Remainder(IProblem problem, SearchSpace space, FrontArchive archive)
    {
        (this.space, this.archive) = (space, archive);
        bounds = new double[problem.Objectives.Count];
        bounded = problem as IBoundedProblem;
        if (bounded is null)
            points = space.Points().GetEnumerator();
        else
            open.Push((new int[space.Count], [.. space.Variables.Select(v => v.Levels - 1)]));
    }

    /// <summary>Whether the end was reached.</summary>
    public bool IsThrough { get; private set; }

    /// <summary>The next point that may be worth a look, or null after so many steps without one; the screen is still to be asked.</summary>
    public double[]? Next(int steps)
    {
        for (var step = 0; step < steps && !IsThrough; step++)
        {
            if (bounded is null)
            {
                if (points!.MoveNext())
                    return points.Current;
                IsThrough = true;
            }
            else if (open.TryPop(out var box))
            {
                if (Look(box.Low, box.High))
                    return [.. box.Low.Select(level => (double)level)];
            }
            else
                IsThrough = true;
        }

        return null;
    }

    // True for a single point; else the box is split along its first variable that is still open.
    private bool Look(int[] low, int[] high)
    {
        space.Pin(low, high);
        Array.Fill(bounds, double.NegativeInfinity);
        if (!bounded!.BoundCheaply(new(low, high), bounds) || archive.Covers(bounds))
            return false;
        var at = 0;
        while (at < low.Length && low[at] == high[at])
            at++;
        if (at == low.Length)
            return true;
        for (var level = high[at]; level >= low[at]; level--)
        {
            int[] from = [.. low], to = [.. high];
            from[at] = to[at] = level;
            open.Push((from, to));
        }

        return false;
    }
}
