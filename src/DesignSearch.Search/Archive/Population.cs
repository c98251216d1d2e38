namespace DesignSearch.Search;

/// <summary>
/// A small set of parents. When it is full, each newcomer costs one member: the worst violator while there is one, else the
/// one that most others dominate, and among equals the one with the nearest neighbour.
/// </summary>
internal sealed class Population(int capacity, int objectives)
{
    private readonly EvaluatedPoint[] members = new EvaluatedPoint[capacity + 1];
    private readonly double[] figures = new double[(capacity + 1) * objectives];
    private readonly double[] violations = new double[capacity + 1];
    private readonly int[] beaten = new int[capacity + 1];
    private readonly double[] width = new double[objectives];

    public int Count { get; private set; }

    public EvaluatedPoint this[int place] => members[place];

    public void Add(EvaluatedPoint point)
    {
        Put(Count, point);
        beaten[Count] = 0;
        for (var i = 0; i < Count; i++)
            Compare(i, Count, 1);
        Count++;
        if (Count > capacity)
            Remove(Worst());
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

        return furthest > 0 ? worst : Crowded(most);
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
