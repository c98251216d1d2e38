namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>What is proved of one way to protect the house.</summary>
/// <param name="Way">Its key, as <see cref="WayClass.Key"/>.</param>
/// <param name="NoneBelow">No layout of the way that holds costs less over the years; null where none holds at all.</param>
/// <param name="IsProvedWithoutCollector">Whether, of its layouts without a collector, none that holds is cheaper than what was found of the way.</param>
public sealed record WayBound(string Way, decimal? NoneBelow, bool IsProvedWithoutCollector);
