using DesignSearch.Search.Archive;
using DesignSearch.Search.Indicators;

namespace DesignSearch.Search.Engine;

/// <summary>
/// Follows the dominated volume in a box that is fixed once: its far corner is the worst of the first points that meet every
/// constraint, its size reaches to their best. The volume is counted anew only when the front changed.
/// </summary>
internal sealed class VolumeTrend(int objectives)
{
    private const int Wanted = 32;

    private readonly double[] reference = [.. Enumerable.Repeat(double.NegativeInfinity, objectives)];
    private readonly double[] best = [.. Enumerable.Repeat(double.PositiveInfinity, objectives)];
    private readonly List<HypervolumePoint> points = [];
    private FrontArchive? changed;
    private double scale;
    private int taken;
    private long due;

    public IReadOnlyList<HypervolumePoint> Points => points;

    public IReadOnlyList<double> Best => taken == 0 ? [] : [.. best];

    public double Now => points.Count == 0 ? 0 : points[^1].Hypervolume;

    public void Take(double[] figures, bool entered, FrontArchive archive)
    {
        for (var k = 0; k < objectives; k++)
        {
            best[k] = Math.Min(best[k], figures[k]);
            if (scale == 0)
                reference[k] = Math.Max(reference[k], figures[k]);
        }

        taken++;
        if (scale == 0 && taken >= Wanted)
            scale = Enumerable.Range(0, objectives).Aggregate(1.0, (product, k) => product * (reference[k] - best[k]));
        if (entered)
            changed = archive;
    }

    /// <summary>Measures again where enough was evaluated since the last time; a large front is measured less often.</summary>
    public void Mark(long evaluations)
    {
        if (scale <= 0 || evaluations < due)
            return;
        var volume = Now;
        if (changed is { } archive)
            volume = Math.Max(volume, Hypervolume.Of(Enumerable.Range(0, archive.Count).Select(i => archive[i].Evaluation.Objectives), reference) / scale);
        points.Add(new(evaluations, volume));
        due = evaluations + Wanted + ((changed?.Count ?? 0) / 2) + (objectives > 2 ? changed?.Count ?? 0 : 0);
        changed = null;
    }

    public bool GrewLessThan(double fraction, long window)
    {
        if (points.Count == 0 || points[^1].Evaluations - points[0].Evaluations < window)
            return false;
        var since = points[^1].Evaluations - window;
        int low = 0, high = points.Count - 1;
        while (low < high)
        {
            var middle = (low + high + 1) >>> 1;
            if (points[middle].Evaluations <= since)
                low = middle;
            else
                high = middle - 1;
        }

        return Now - points[low].Hypervolume < fraction * Now;
    }
}
