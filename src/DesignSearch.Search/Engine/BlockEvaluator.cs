using System.Globalization;

namespace DesignSearch.Search.Engine;

/// <summary>Turns blocks of points into results, in their order: replayed ones first, the rest evaluated in pieces that all threads share.</summary>
internal sealed class BlockEvaluator(IProblem problem, int threads, IEnumerator<(double[] Point, Evaluation Evaluation)> replay, ISearchLog? log) : IDisposable
{
    private readonly Crew crew = new(threads);
    private bool replaying = true;
    private long begun;
    private long done;

    /// <summary>Begins the work on a block; while it goes on, another may be begun.</summary>
    public PendingBlock Begin(double[][] points)
    {
        var results = new Evaluation[points.Length];
        var replayed = 0;
        while (replaying && replayed < points.Length && (replaying = replay.MoveNext()))
        {
            var (point, evaluation) = replay.Current;
            if (!point.AsSpan().SequenceEqual(points[replayed]))
                throw new InvalidDataException(string.Create(
                    CultureInfo.InvariantCulture,
                    $"Evaluation {begun + replayed} of the earlier run is of another point than this search comes to; it was made "
                        + $"with another problem, seed or version."));
            results[replayed++] = evaluation;
        }

        begun += points.Length;
        if (replayed == points.Length)
            return new(points, results, replayed, null, null);
        var fresh = points[replayed..];
        var work = problem is ISharingProblem sharing ? sharing.Begin(fresh, threads) : new PointWork(problem, fresh, threads);
        return new(points, results, replayed, work, crew.Begin(work));
    }

    /// <summary>The results of the block that was begun first of those not yet finished.</summary>
    public Evaluation[] Finish(PendingBlock block)
    {
        var (points, results, replayed, work, shared) = block;
        if (work is not null && shared is not null)
        {
            crew.Finish(shared);
            work.Finish(results.AsSpan(replayed));
            for (var i = replayed; i < points.Length; i++)
                Check(results[i]);
            log?.Append(done + replayed, points.AsSpan(replayed), results.AsSpan(replayed));
        }

        done += points.Length;
        return results;
    }

    /// <summary>Begins a block and waits for it.</summary>
    public Evaluation[] Evaluate(double[][] points) => Finish(Begin(points));

    /// <summary>Sends the threads home.</summary>
    public void Dispose() => crew.Dispose();

    private void Check(Evaluation evaluation)
    {
        if (evaluation.Objectives.Length != problem.Objectives.Count || evaluation.Violations.Length != problem.Constraints.Count)
            throw new InvalidOperationException(string.Create(
                CultureInfo.InvariantCulture,
                $"The problem gave {evaluation.Objectives.Length} objectives and {evaluation.Violations.Length} violations; expected "
                    + $"{problem.Objectives.Count} and {problem.Constraints.Count}."));
        if (!Array.TrueForAll(evaluation.Objectives, double.IsFinite) || Array.Exists(evaluation.Violations, double.IsNaN))
            throw new InvalidOperationException("The problem gave an objective that is not finite or a violation that is not a number.");
    }
}
