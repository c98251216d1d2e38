using System.Globalization;

namespace DesignSearch.Search.Engine;

/// <summary>Turns a block of points into results: replayed ones first, the rest evaluated by all threads in stretches of the block.</summary>
internal sealed class BlockEvaluator(IProblem problem, int threads, IEnumerator<(double[] Point, Evaluation Evaluation)> replay, ISearchLog? log)
{
    private bool replaying = true;
    private long done;

    public Evaluation[] Evaluate(double[][] points)
    {
        var results = new Evaluation[points.Length];
        var replayed = 0;
        while (replaying && replayed < points.Length && (replaying = replay.MoveNext()))
        {
            var (point, evaluation) = replay.Current;
            if (!point.AsSpan().SequenceEqual(points[replayed]))
                throw new InvalidDataException(string.Create(
                    CultureInfo.InvariantCulture,
                    $"Evaluation {done + replayed} of the earlier run is of another point than this search comes to; it was made "
                        + $"with another problem, seed or version."));
            results[replayed++] = evaluation;
        }

        Fresh(points, results, replayed);
        for (var i = replayed; i < points.Length; i++)
            Check(results[i]);
        if (replayed < points.Length)
            log?.Append(done + replayed, points.AsSpan(replayed), results.AsSpan(replayed));
        done += points.Length;
        return results;
    }

    private void Fresh(double[][] points, Evaluation[] results, int from)
    {
        var left = points.Length - from;
        if (left > 0 && problem is ISharingProblem sharing)
        {
            sharing.Evaluate(points.AsSpan(from), results.AsSpan(from), threads);
            return;
        }

        var parts = Math.Min(threads, left);
        if (parts <= 1)
        {
            if (left > 0)
                Stretch(points, results, from, points.Length);
            return;
        }

        Parallel.For(0, parts, new ParallelOptions { MaxDegreeOfParallelism = parts }, part =>
        {
            int start = from + (left * part / parts), end = from + (left * (part + 1) / parts);
            Stretch(points, results, start, end);
        });
    }

    private void Stretch(double[][] points, Evaluation[] results, int from, int end) =>
        problem.Evaluate(points.AsSpan(from, end - from), results.AsSpan(from, end - from));

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
