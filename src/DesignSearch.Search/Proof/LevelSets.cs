using DesignSearch.Search.Space;

namespace DesignSearch.Search.Proof;

/// <summary>A set of points of a finite space: for each variable the levels that are left, in rising order. Immutable.</summary>
public sealed class LevelSets
{
    private readonly int[][] left;

    private LevelSets(int[][] left) => this.left = left;

    /// <summary>Whether only one level of every variable is left.</summary>
    public bool IsPoint => Array.TrueForAll(left, l => l.Length == 1);

    /// <summary>Levels that are left of a variable, one or more.</summary>
    /// <param name="variable">Its place, from 0.</param>
    public ReadOnlySpan<int> this[int variable] => left[variable];

    /// <summary>All points of a space.</summary>
    /// <param name="variables">Its variables, none of them real.</param>
    public static LevelSets All(IReadOnlyList<Variable> variables) =>
        new LevelSets([.. variables.Select(v => Enumerable.Range(0, v.Levels).ToArray())]).AtRest(variables);

    /// <summary>One point alone.</summary>
    /// <param name="point">One level a variable.</param>
    public static LevelSets At(IReadOnlyList<double> point) => new([.. point.Select(level => new[] { (int)level })]);

    /// <summary>Whether only one level of a variable is left.</summary>
    /// <param name="variable">Its place, from 0.</param>
    public bool IsSingle(int variable) => left[variable].Length == 1;

    /// <summary>The point of the lowest levels left.</summary>
    public double[] Lowest() => [.. left.Select(l => (double)l[0])];

    /// <summary>Those of them with one of some levels of a variable; variables that then sleep are put to rest.</summary>
    /// <param name="variable">Its place, from 0.</param>
    /// <param name="levels">Levels, one or more, in rising order.</param>
    /// <param name="variables">The variables of the space.</param>
    public LevelSets With(int variable, int[] levels, IReadOnlyList<Variable> variables)
    {
        var next = (int[][])left.Clone();
        next[variable] = levels;
        return new LevelSets(next).AtRest(variables);
    }

    // Whatever is known to sleep stands at its first level.
    private LevelSets AtRest(IReadOnlyList<Variable> variables)
    {
        var known = new PartialPoint(left.Length);
        for (var i = 0; i < left.Length; i++)
        {
            if (variables[i].AwakeWhen is not null && !known.Ask(variables[i], out var missing) && missing < 0)
                left[i] = [0];
            if (left[i].Length == 1)
                known.Set(i, left[i][0]);
        }

        return this;
    }
}
