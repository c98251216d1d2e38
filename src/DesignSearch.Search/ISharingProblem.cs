namespace DesignSearch.Search;

/// <summary>A problem that cuts the work on a block of points into pieces itself, because it knows a better cut than one between points.</summary>
public interface ISharingProblem : IProblem
{
    /// <summary>Begins the work on a block; what comes out does not depend on the number of threads.</summary>
    /// <param name="points">Canonical points.</param>
    /// <param name="threads">Threads that will share it, 1 or more.</param>
    IBlockWork Begin(IReadOnlyList<double[]> points, int threads);
}
