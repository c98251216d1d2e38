namespace DesignSearch.Search;

/// <summary>What the engine needs to know of a problem. Every objective is minimised. Called from many threads at once.</summary>
public interface IProblem
{
    /// <summary>The variables.</summary>
    IReadOnlyList<Variable> Variables { get; }

    /// <summary>Names of the objectives, one or more.</summary>
    IReadOnlyList<string> Objectives { get; }

    /// <summary>Names of the constraints; may be empty.</summary>
    IReadOnlyList<string> Constraints { get; }

    /// <summary>
    /// The cheap part, before any simulation: fills the violations (0 = met) of the constraints that are known without one, leaves
    /// the others 0, and fills lower bounds of the objectives (the exact value where it is known, negative infinity where nothing is).
    /// A point refused here is never evaluated and costs no evaluation.
    /// </summary>
    /// <param name="point">Canonical values, one per variable.</param>
    /// <param name="objectiveBounds">One per objective.</param>
    /// <param name="violations">One per constraint.</param>
    void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations);

    /// <summary>Evaluates a block of points; the order of the results is the order of the block, whatever the threads do.</summary>
    /// <param name="points">Canonical points, each with one value per variable.</param>
    /// <param name="evaluations">One per point, to be filled.</param>
    void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations);
}
