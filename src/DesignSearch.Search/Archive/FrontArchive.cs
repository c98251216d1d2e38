namespace DesignSearch.Search;

/// <summary>Every point met that meets all constraints and that no other beats; grows without bound. Of equals the first stays.</summary>
internal abstract class FrontArchive
{
    public abstract int Count { get; }

    /// <summary>The member at a place; by rising first objective where there are two objectives.</summary>
    public abstract EvaluatedPoint this[int place] { get; }

    /// <summary>Whether a member is nowhere worse than these figures.</summary>
    public abstract bool Covers(ReadOnlySpan<double> objectives);

    /// <summary>Takes the point in unless a member covers it, and drops those that it covers.</summary>
    public abstract bool Add(EvaluatedPoint point);

    public static FrontArchive For(int objectives) => objectives == 2 ? new SortedFront() : new ListedFront();
}
