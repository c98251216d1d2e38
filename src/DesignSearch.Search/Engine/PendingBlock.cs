namespace DesignSearch.Search.Engine;

/// <summary>A block of which the work has begun.</summary>
/// <param name="Points">Its points.</param>
/// <param name="Results">One per point; those that were replayed are there already.</param>
/// <param name="Replayed">How many were replayed.</param>
/// <param name="Work">The work on the others; null where there are none.</param>
/// <param name="Shared">The same as the crew shares it.</param>
internal sealed record PendingBlock(double[][] Points, Evaluation[] Results, int Replayed, IBlockWork? Work, SharedWork? Shared);
