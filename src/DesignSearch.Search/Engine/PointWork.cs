namespace DesignSearch.Search.Engine;

/// <summary>The work on a block of a problem that does not cut it itself: a stretch of points for each thread.</summary>
internal sealed class PointWork(IProblem problem, double[][] points, int threads) : IBlockWork
{
    private readonly Evaluation[] evaluations = new Evaluation[points.Length];

    public int Pieces { get; } = Math.Min(threads, points.Length);

    public void Do(int piece)
    {
        int start = points.Length * piece / Pieces, end = points.Length * (piece + 1) / Pieces;
        problem.Evaluate(points.AsSpan(start..end), evaluations.AsSpan(start..end));
    }

    public void Finish(Span<Evaluation> evaluations) => this.evaluations.CopyTo(evaluations);
}
