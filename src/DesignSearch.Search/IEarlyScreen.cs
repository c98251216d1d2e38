namespace DesignSearch.Search;

/// <summary>A problem whose screen may stop half-way: a search that repairs a point only asks whether another one misses the constraints by less.</summary>
public interface IEarlyScreen : IProblem
{
    /// <summary>
    /// As <see cref="IProblem.Screen"/>, but it may stop as soon as the violations add up to enough. Then some violations may still stand at 0, where
    /// Screen gives 0 or more; those that are filled are what Screen gives, bit for bit; and the bounds of the objectives are left as they were.
    /// </summary>
    /// <param name="point">Canonical values, one per variable.</param>
    /// <param name="objectiveBounds">One per objective.</param>
    /// <param name="violations">One per constraint, 0 at first.</param>
    /// <param name="enough">Sum of violations, added in their order, at which it may stop; above 0.</param>
    /// <returns>True when it went to the end.</returns>
    bool ScreenUntil(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations, double enough);
}
