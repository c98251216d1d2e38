namespace DesignSearch.Search.Space;

/// <summary>
/// Stands for one canonical point: 128 mixed bits. Two different points share a key about once in 10^26 pairs of a run of a
/// million points, so the key alone says whether a point was met before and the point itself need not be kept.
/// </summary>
/// <param name="High">The upper half.</param>
/// <param name="Low">The lower half.</param>
public readonly record struct PointKey(ulong High, ulong Low);
