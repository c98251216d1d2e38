using DesignSearch.Search.Space;

namespace DesignSearch.Search.Moves;

/// <summary>
/// Learns by what changes which constraint comes to be missed by less. Of fifty variables mostly two or three bear on what is missed, and a draw among all
/// of them screens ten points for one that helps.
/// </summary>
internal sealed class RepairGuide
{
    // What an untried change is believed to help, and how firmly.
    private const double Helps = 0.3;
    private const double Uses = 1;
    private const double Forgets = 200;

    private readonly SearchSpace space;
    private readonly int[] free;
    private readonly double[][] helped;
    private readonly double[][] tried;
    private readonly double[] worth;

    public RepairGuide(SearchSpace space, int constraints)
    {
        this.space = space;
        free = [.. Enumerable.Range(0, space.Count).Where(i => space.HighOf(i) > space.LowOf(i))];
        helped = [.. Enumerable.Range(0, constraints).Select(_ => new double[space.Count])];
        tried = [.. Enumerable.Range(0, constraints).Select(_ => new double[space.Count])];
        worth = new double[space.Count];
    }

    /// <summary>Draws a variable to change; those that helped more often come more often.</summary>
    /// <param name="constraint">What is missed.</param>
    /// <param name="point">Where, canonical.</param>
    /// <param name="random">Draws.</param>
    /// <returns>Its place; −1 where nothing can change.</returns>
    public int Choose(int constraint, double[] point, ref SplitMixStream random)
    {
        var (help, use) = (helped[constraint], tried[constraint]);
        var sum = 0.0;
        foreach (var i in free)
        {
            var share = (help[i] + (Helps * Uses)) / (use[i] + Uses);
            worth[i] = space.IsAwake(i, point) ? share * share : 0;
            sum += worth[i];
        }

        var at = random.Unit() * sum;
        foreach (var i in free)
        {
            at -= worth[i];
            if (at < 0 && worth[i] > 0)
                return i;
        }

        return -1;
    }

    /// <summary>Books whether the change of a variable let a constraint be missed by less.</summary>
    public void Book(int constraint, int variable, bool helps)
    {
        var (help, use) = (helped[constraint], tried[constraint]);
        if (use[variable] >= Forgets)
        {
            help[variable] /= 2;
            use[variable] /= 2;
        }

        use[variable]++;
        help[variable] += helps ? 1 : 0;
    }
}
