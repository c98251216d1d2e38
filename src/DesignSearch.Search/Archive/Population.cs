using DesignSearch.Search.Engine;
using DesignSearch.Search.Indicators;
using DesignSearch.Search.Space;

namespace DesignSearch.Search.Archive;

/// <summary>
/// A small set of parents. When it is full, each newcomer costs one member: the worst violator while there is one, else the
/// one that most others dominate, and among equals the one with the nearest neighbour. With a single objective figures cannot
/// keep the members apart, so there a newcomer takes the place of the member most like it, and only if it is no worse.
/// </summary>
internal sealed class Population(SearchSpace space, int capacity, int objectives)
{
    private readonly EvaluatedPoint[] members = new EvaluatedPoint[capacity + 1];
    private readonly double[] figures = new double[(capacity + 1) * objectives];
    private readonly double[] violations = new double[capacity + 1];
    private readonly int[] beaten = new int[capacity + 1];
    private readonly int[] order = new int[capacity + 1];
    private readonly double[] width = new double[objectives];

    /// <summary>How many it holds at most.</summary>
    public int Capacity => capacity;

    public int Count { get; private set; }

    public EvaluatedPoint this[int place] => members[place];

    /// <summary>Takes a point in where it deserves a place; says whether it did, with several objectives always true.</summary>
    public bool Add(EvaluatedPoint point)
    {
        if (objectives == 1 && Count == capacity)
        {
            // Every second one against the worst of all, so that the whole closes in; the others keep niches alive.
            var like = point.Index % 3 != 0 ? MostLike(point.Point) : WorstOfOne();
            if (Dominance.Dominates(members[like].Evaluation, point.Evaluation))
                return false;
            Put(like, point);
            return true;
        }

        Put(Count, point);
        beaten[Count] = 0;
        for (var i = 0; i < Count; i++)
            Compare(i, Count, 1);
        Count++;
        if (Count > capacity)
            Remove(Worst());
        return true;
    }

    private int WorstOfOne()
    {
        var worst = 0;
        for (var i = 1; i < Count; i++)
        {
            if (Dominance.Dominates(members[worst].Evaluation, members[i].Evaluation))
                worst = i;
        }

        return worst;
    }

    private int MostLike(double[] point)
    {
        var like = 0;
        var least = double.PositiveInfinity;
        for (var i = 0; i < Count; i++)
        {
            var distance = 0.0;
            for (var k = 0; k < point.Length && distance < least; k++)
            {
                var step = Math.Abs(members[i].Point[k] - point[k]);
                distance += space.Variables[k].Kind == VariableKind.Category ? Math.Min(step, 1) : step / Math.Max(space.HighOf(k) - space.LowOf(k), 1e-300);
            }

            if (distance < least)
                (like, least) = (i, distance);
        }

        return like;
    }

    private void Put(int place, EvaluatedPoint point)
    {
        members[place] = point;
        violations[place] = point.Evaluation.TotalViolation;
        point.Evaluation.Objectives.CopyTo(figures, place * objectives);
    }

    private ReadOnlySpan<double> Figures(int place) => figures.AsSpan(place * objectives, objectives);

    private void Compare(int a, int b, int change)
    {
        if (Dominance.Dominates(Figures(a), Figures(b)))
            beaten[b] += change;
        else if (Dominance.Dominates(Figures(b), Figures(a)))
            beaten[a] += change;
    }

    private void Remove(int place)
    {
        for (var i = 0; i < Count; i++)
        {
            if (i != place)
                Compare(i, place, -1);
        }

        Count--;
        Put(place, members[Count]);
        beaten[place] = beaten[Count];
    }

    private int Worst()
    {
        int worst = 0, most = 0;
        var furthest = 0.0;
        for (var i = 0; i < Count; i++)
        {
            if (violations[i] > furthest)
                (worst, furthest) = (i, violations[i]);
            most = Math.Max(most, beaten[i]);
        }

        return furthest > 0 ? worst : objectives == 2 ? Least(most) : Crowded(most);
    }

    // Of those that most others dominate, none of which dominates another: the one without which the least area is lost; never an end.
    private int Least(int most)
    {
        var count = 0;
        for (var i = 0; i < Count; i++)
        {
            if (beaten[i] < most)
                continue;
            var at = count++;
            for (; at > 0 && figures[2 * order[at - 1]] > figures[2 * i]; at--)
                order[at] = order[at - 1];
            order[at] = i;
        }

        if (count < 3)
            return order[count - 1];
        var worst = -1;
        var least = double.PositiveInfinity;
        for (var at = 1; at < count - 1; at++)
        {
            var own = 2 * order[at];
            var area = (figures[2 * order[at + 1]] - figures[own]) * (figures[(2 * order[at - 1]) + 1] - figures[own + 1]);
            if (area < least)
                (worst, least) = (order[at], area);
        }

        return worst;
    }

    private int Crowded(int most)
    {
        for (var k = 0; k < objectives; k++)
        {
            double low = double.PositiveInfinity, high = double.NegativeInfinity;
            for (var i = 0; i < Count; i++)
                (low, high) = (Math.Min(low, figures[(i * objectives) + k]), Math.Max(high, figures[(i * objectives) + k]));
            width[k] = high > low ? 1 / (high - low) : 0;
        }

        var worst = -1;
        var least = double.PositiveInfinity;
        for (var i = 0; i < Count; i++)
        {
            if (beaten[i] < most)
                continue;
            var nearest = Nearest(i);
            if (worst < 0 || nearest < least)
                (worst, least) = (i, nearest);
        }

        return worst;
    }

    private double Nearest(int place)
    {
        var nearest = double.PositiveInfinity;
        for (var j = 0; j < Count; j++)
        {
            if (j == place)
                continue;
            var distance = 0.0;
            for (var k = 0; k < objectives; k++)
            {
                var step = (figures[(place * objectives) + k] - figures[(j * objectives) + k]) * width[k];
                distance += step * step;
            }

            nearest = Math.Min(nearest, distance);
        }

        return nearest;
    }
}
