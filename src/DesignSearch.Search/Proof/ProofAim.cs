namespace DesignSearch.Search.Proof;

/// <summary>A question of its own about some of the points: what the cheapest of those costs that serves.</summary>
/// <param name="Levels">For each variable the levels that its points may have, in any order; null for all of them.</param>
/// <param name="Known">What the cheapest such point costs that is known; infinite without one.</param>
public sealed record ProofAim(IReadOnlyList<IReadOnlySet<int>?> Levels, double Known)
{
    /// <summary>All points.</summary>
    /// <param name="variables">How many variables there are.</param>
    /// <param name="known">What the cheapest point costs that is known.</param>
    public static ProofAim Everything(int variables, double known) => new(new IReadOnlySet<int>?[variables], known);

    /// <summary>Whether a set may hold a point that is asked for; of a single point, whether it is one.</summary>
    /// <param name="set">Any set.</param>
    public bool Meets(LevelSets set)
    {
        ArgumentNullException.ThrowIfNull(set);
        for (var i = 0; i < Levels.Count; i++)
        {
            if (Levels[i] is { } allowed && !Any(set[i], allowed))
                return false;
        }

        return true;
    }

    private static bool Any(ReadOnlySpan<int> levels, IReadOnlySet<int> allowed)
    {
        foreach (var level in levels)
        {
            if (allowed.Contains(level))
                return true;
        }

        return false;
    }
}
