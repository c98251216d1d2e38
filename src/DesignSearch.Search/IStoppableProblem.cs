namespace DesignSearch.Search;

/// <summary>A problem that can end an evaluation early, once it is certain that the point is already beaten.</summary>
public interface IStoppableProblem : IProblem
{
    /// <summary>
    /// As <see cref="IProblem.Evaluate"/>, but a point may be given up as soon as one of its objectives is certain to reach its limit.
    /// Such an evaluation has <see cref="Evaluation.IsBound"/> set and holds lower bounds, of which one has reached its limit; it
    /// serves the engine as knowledge and never becomes a result. What is not given up must be what Evaluate gives, bit for bit.
    /// </summary>
    /// <param name="points">Canonical points.</param>
    /// <param name="limits">For each point one limit per objective; infinity for none.</param>
    /// <param name="evaluations">One per point, to be filled.</param>
    void EvaluateUntil(ReadOnlySpan<double[]> points, ReadOnlySpan<double[]> limits, Span<Evaluation> evaluations);
}
