namespace DesignSearch.Search.Space;

/// <summary>A box of levels: for each variable of a finite space the levels from the lower to the upper, both included.</summary>
/// <param name="Low">Lowest level of each variable, 0 or more.</param>
/// <param name="High">Highest level of each variable, not below the lowest.</param>
public sealed record LevelBox(IReadOnlyList<int> Low, IReadOnlyList<int> High)
{
    /// <summary>Whether only one level of a variable is left.</summary>
    /// <param name="variable">Its place, from 0.</param>
    public bool IsSingle(int variable) => Low[variable] == High[variable];
}
