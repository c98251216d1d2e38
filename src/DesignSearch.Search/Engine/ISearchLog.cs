namespace DesignSearch.Search.Engine;

/// <summary>Is told every freshly evaluated stretch of points, in order, so that a journal can be kept.</summary>
public interface ISearchLog
{
    /// <summary>Called once a block on the searching thread, before the next block is proposed. Replayed points are not told again.</summary>
    /// <param name="firstIndex">Place of the first point in the order of evaluation, from 0.</param>
    /// <param name="points">Canonical points.</param>
    /// <param name="evaluations">One per point.</param>
    void Append(long firstIndex, ReadOnlySpan<double[]> points, ReadOnlySpan<Evaluation> evaluations);
}
