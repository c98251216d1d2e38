using DesignSearch.Search.Archive;
using DesignSearch.Search.Indicators;
using DesignSearch.Search.Space;

namespace DesignSearch.Search.Proof;

/// <summary>
/// Branch and bound over boxes of levels. A box is dropped once the front covers its bounds; the box that could add most is split
/// first. Variables that do not act one way are split into single levels before anything is simulated.
/// </summary>
internal sealed class Prover(IBoundedProblem problem, SearchSpace space, FrontArchive archive, Func<double[], bool> settle, long most, long mostBoxes, Func<bool> stop)
{
    private readonly PriorityQueue<Open, (double, long)> open = new();
    private readonly double[] scale = new double[problem.Objectives.Count];
    private long bounds;
    private long evaluated;
    private long made;
    private long looked;

    private sealed record Open(int[] Low, int[] High, double[] Bounds);

    public SearchProof Run()
    {
        for (var k = 0; k < scale.Length; k++)
        {
            var figures = Enumerable.Range(0, archive.Count).Select(i => archive[i].Evaluation.Objectives[k]).DefaultIfEmpty(0).ToArray();
            scale[k] = 1 / Math.Max(figures.Max() - figures.Min(), 1e-300);
        }

        Offer(new int[space.Count], [.. space.Variables.Select(v => v.Levels - 1)], [.. scale.Select(_ => double.NegativeInfinity)]);
        while (bounds + evaluated < most && looked < mostBoxes && !stop() && open.TryDequeue(out var box, out _))
        {
            if (!archive.Covers(box.Bounds))
                Split(box);
        }

        double[][] left = [.. open.UnorderedItems.Select(o => o.Element.Bounds).Where(b => !archive.Covers(b))];
        return new(left.Length == 0, bounds, evaluated, looked, left.Length == 0 ? 0 : Gap(left));
    }

    private void Split(Open box)
    {
        var at = Widest(box);
        var step = problem.ActsOneWay[at] ? (box.High[at] - box.Low[at] + 2) / 2 : 1;
        for (var from = box.Low[at]; from <= box.High[at]; from += step)
        {
            int[] low = [.. box.Low], high = [.. box.High];
            (low[at], high[at]) = (from, Math.Min(from + step - 1, box.High[at]));
            Offer(low, high, box.Bounds);
        }
    }

    // A variable that does not act one way before all others, then the one with most levels left.
    private int Widest(Open box)
    {
        var widest = -1;
        for (var i = 0; i < box.Low.Length; i++)
        {
            var levels = box.High[i] - box.Low[i];
            if (levels == 0)
                continue;
            if (!problem.ActsOneWay[i])
                return i;
            if (widest < 0 || levels > box.High[widest] - box.Low[widest])
                widest = i;
        }

        return widest;
    }

    private void Offer(int[] low, int[] high, double[] parent)
    {
        looked++;
        space.Pin(low, high);
        var box = new LevelBox(low, high);
        var figures = new double[parent.Length];
        Array.Fill(figures, double.NegativeInfinity);
        if (!problem.BoundCheaply(box, figures) || Beaten(figures, parent))
            return;
        if (low.AsSpan().SequenceEqual(high))
        {
            if (settle([.. low.Select(level => (double)level)]))
                evaluated++;
            return;
        }

        var cheap = (double[])figures.Clone();
        if (Enumerable.Range(0, low.Length).All(i => problem.ActsOneWay[i] || box.IsSingle(i)))
        {
            problem.BoundBySimulation(box, figures);
            bounds++;
            if (Beaten(figures, cheap))
                return;
        }

        open.Enqueue(new(low, high, figures), (-Promise(figures), made++));
    }

    // Keeps the tighter of two bounds in the first.
    private bool Beaten(double[] figures, double[] other)
    {
        for (var k = 0; k < figures.Length; k++)
            figures[k] = Math.Max(figures[k], other[k]);
        return archive.Covers(figures);
    }

    // How far below the front the bounds lie, in the objective where that is least.
    private double Promise(double[] figures)
    {
        var least = double.PositiveInfinity;
        for (var k = 0; k < figures.Length; k++)
            least = Math.Min(least, (archive.Limit(figures, k) - figures[k]) * scale[k]);
        return least;
    }

    private double Gap(double[][] left)
    {
        if (archive.Count < 2 || left.Any(b => !Array.TrueForAll(b, double.IsFinite)))
            return 1;
        double[][] front = [.. Enumerable.Range(0, archive.Count).Select(i => archive[i].Evaluation.Objectives)];
        double[] reference = [.. scale.Select((s, k) => front.Max(f => f[k]) + (0.1 / s))];
        return 1 - (Hypervolume.Of(front, reference) / Hypervolume.Of([.. front, .. left], reference));
    }
}
