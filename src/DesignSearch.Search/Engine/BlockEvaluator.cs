namespace DesignSearch.Search.Engine;

/// <summary>Turns a block of points into results: replayed ones first, the rest evaluated by all threads in stretches of the block.</summary>
internal sealed class BlockEvaluator(IProblem problem, int threads, IEnumerator<(double[] Point, Evaluation Evaluation)> replay, ISearchLog? log)
{
    private bool replaying = true;
    private long done;

    public Evaluation[] Evaluate(double[][] points, double[][]? limits = null)
    {
        var results = new Evaluation[points.Length];
        var replayed = 0;
        while (replaying && replayed < points.Length && (replaying = replay.MoveNext()))
        {
            var (point, evaluation) = replay.Current;
            if (!point.AsSpan().SequenceEqual(points[replayed]))
                throw new InvalidDataException(FormattableString.Invariant($"Evaluation {done + replayed} of the earlier run is of another point than this search comes to; it was made with another problem, seed or version."));
            results[replayed++] = evaluation;
        }

        Fresh(points, limits, results, replayed);
        for (var i = replayed; i < points.Length; i++)
            Check(results[i], limits is not null);
        if (replayed < points.Length)
            log?.Append(done + replayed, points.AsSpan(replayed), results.AsSpan(replayed));
        done += points.Length;
        return results;
    }

    private void Fresh(double[][] points, double[][]? limits, Evaluation[] results, int from)
    {
        var left = points.Length - from;
        if (left > 0 && limits is null && problem is ISharingProblem sharing)
        {
            sharing.Evaluate(points.AsSpan(from), results.AsSpan(from), threads);
            return;
        }

        var parts = Math.Min(threads, left);
        if (parts <= 1)
        {
            if (left > 0)
                Stretch(points, limits, results, from, points.Length);
            return;
        }

        Parallel.For(0, parts, new ParallelOptions { MaxDegreeOfParallelism = parts }, part =>
        {
            int start = from + (left * part / parts), end = from + (left * (part + 1) / parts);
            Stretch(points, limits, results, start, end);
        });
    }

    private void Stretch(double[][] points, double[][]? limits, Evaluation[] results, int from, int end)
    {
        if (limits is not null && problem is IStoppableProblem stoppable)
            stoppable.EvaluateUntil(points.AsSpan(from, end - from), limits.AsSpan(from, end - from), results.AsSpan(from, end - from));
        else
            problem.Evaluate(points.AsSpan(from, end - from), results.AsSpan(from, end - from));
    }

    private void Check(Evaluation evaluation, bool stopping)
    {
        if (evaluation.Objectives.Length != problem.Objectives.Count || evaluation.Violations.Length != problem.Constraints.Count)
            throw new InvalidOperationException(FormattableString.Invariant($"The problem gave {evaluation.Objectives.Length} objectives and {evaluation.Violations.Length} violations; expected {problem.Objectives.Count} and {problem.Constraints.Count}."));
        if (evaluation.IsBound && !stopping)
            throw new InvalidOperationException("The problem gave up a point that it was asked to evaluate to the end.");
        if (!Array.TrueForAll(evaluation.Objectives, double.IsFinite) || Array.Exists(evaluation.Violations, double.IsNaN))
            throw new InvalidOperationException("The problem gave an objective that is not finite or a violation that is not a number.");
    }
}
