namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>By how much the cheapest of a way costs more over the years than the best found.</summary>
/// <param name="AtMost">As it was found.</param>
/// <param name="AtLeast">As it is proved, down to less than nothing; null where nothing is.</param>
/// <param name="IsExact">Whether every layout was gone through.</param>
/// <param name="IsProvedWithoutCollector">Whether it is the one figure as long as no collector is built.</param>
internal sealed record Apart(decimal AtMost, decimal? AtLeast, bool IsExact, bool IsProvedWithoutCollector = false)
{
    // Less than this is a matter of rounding.
    private const decimal Rounding = 1;

    // Two figures as near as this say nothing of which is the better (docs/guide.md: two layouts a few per cent apart are equal).
    private const decimal LeastApart = 0.03m;

    /// <summary>Whether two costs are too near to tell them apart.</summary>
    public static bool IsNone(decimal one, decimal other) => Math.Abs(one - other) < LeastApart * Math.Min(one, other);

    /// <summary>Whether the two are one figure.</summary>
    public bool IsOne => IsExact || (AtLeast is { } least && least > AtMost - Rounding);
}
