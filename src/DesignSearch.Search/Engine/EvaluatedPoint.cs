namespace DesignSearch.Search.Engine;

/// <summary>A point with its result.</summary>
/// <param name="Point">Canonical values, one per variable.</param>
/// <param name="Evaluation">What the problem answered.</param>
/// <param name="Index">Its place in the order of evaluation, from 0.</param>
public sealed record EvaluatedPoint(double[] Point, Evaluation Evaluation, long Index);
