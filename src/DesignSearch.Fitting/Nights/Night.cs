namespace DesignSearch.Fitting.Nights;

/// <summary>Hours of a night of a log.</summary>
/// <param name="Evening">The day it begins on.</param>
/// <param name="First">First hour, from the start of the log.</param>
/// <param name="Count">How many.</param>
public sealed record Night(DateTime Evening, int First, int Count)
{
    /// <summary>The hours.</summary>
    public IEnumerable<int> Hours => Enumerable.Range(First, Count);
}
