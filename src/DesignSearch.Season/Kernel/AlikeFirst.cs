namespace DesignSearch.Season.Kernel;

/// <summary>
/// Puts layouts with the same kinds of sources beside each other: lanes that step together step every source that any of them has, and a
/// layout without one pays for its neighbour's.
/// </summary>
internal static class AlikeFirst
{
    /// <summary>An order of the layouts, those with the fewest kinds first, equal ones as they came; null where all are alike.</summary>
    /// <param name="block">The layouts.</param>
    public static int[]? Order(ReadOnlySpan<LayoutCase> block)
    {
        var alike = true;
        for (var i = 1; i < block.Length && alike; i++)
            alike = Compare(block[0], block[i]) == 0;
        if (alike)
            return null;
        var order = new int[block.Length];
        for (var i = 0; i < order.Length; i++)
        {
            var at = i;
            for (; at > 0 && Compare(block[order[at - 1]], block[i]) > 0; at--)
                order[at] = order[at - 1];
            order[at] = i;
        }

        return order;
    }

    private static int Compare(LayoutCase one, LayoutCase other)
    {
        var (a, b) = (one.Installation.Sources, other.Installation.Sources);
        var result = a.Count.CompareTo(b.Count);
        for (var i = 0; i < a.Count && result == 0; i++)
            result = a[i].Kind.CompareTo(b[i].Kind);
        return result;
    }
}
