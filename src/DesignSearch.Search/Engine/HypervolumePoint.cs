namespace DesignSearch.Search.Engine;

/// <summary>The dominated volume after some evaluations.</summary>
/// <param name="Evaluations">Points evaluated so far.</param>
/// <param name="Hypervolume">As <see cref="SearchProgress.Hypervolume"/>.</param>
public readonly record struct HypervolumePoint(long Evaluations, double Hypervolume);
