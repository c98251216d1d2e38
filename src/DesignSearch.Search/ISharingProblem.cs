namespace DesignSearch.Search;

/// <summary>A problem that shares out the work on a block of points over threads itself, because it knows a better cut than one between points.</summary>
public interface ISharingProblem : IProblem
{
    /// <summary>As <see cref="IProblem.Evaluate(ReadOnlySpan{double[]}, Span{Evaluation})"/>, on several threads; what comes out does not depend on how many.</summary>
    /// <param name="points">Canonical points.</param>
    /// <param name="evaluations">One per point, to be filled.</param>
    /// <param name="threads">Threads to use, 1 or more.</param>
    void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations, int threads);
}
