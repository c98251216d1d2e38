namespace DesignSearch.Fitting.Estimate;

/// <summary>Finds the stretch of nights in which the house was another one: a door ajar, snow on the cover, a sensor that was moved.</summary>
internal static class OtherNights
{
    // A stretch is told when it lies so many of its own errors off the rest: in loss, or in kelvin where it was hardly heated.
    private const double Errors = 3.5;
    private const double OneNightErrors = 5;
    private const double LeastLoss = 0.15;
    private const double LeastK = 1.5;

    // What one night scatters whatever the fit says, and what a spell of weather that nobody measured moves all its nights together [K].
    private const double ScatterK = 0.7;
    private const double SpellK = 0.5;

    // A night that feels the loss less than this says nothing of it [K].
    private const double LeastSensitivityK = 2.5;

    /// <summary>The stretch.</summary>
    /// <param name="found">A fit of all nights that are left.</param>
    /// <returns>First night and how many, and how much warmer they stand than the rest would have them [K]; null where all are of one house.</returns>
    public static (int First, int Count, double OffK)? Find(GroupFound found)
    {
        var n = found.Own.Length;
        var byLoss = Worst(found.Own, Weights(found), LeastLoss);
        var usual = Median([.. found.NightMeansK.Select(Math.Abs)]) / 0.6745;
        var byAir = Worst(found.NightMeansK, [.. Enumerable.Repeat(1 / Math.Pow(Math.Max(ScatterK, usual), 2), n)], LeastK);
        if ((byLoss ?? byAir) is null)
            return null;
        var (first, count, _, _) = byAir is null || (byLoss is { } loss && loss.Size >= byAir.Value.Size) ? byLoss!.Value : byAir.Value;
        var others = Enumerable.Range(first, count);
        return (first, count, others.Average(i => found.NightMeansK[i]) - Enumerable.Range(0, n).Except(others).Average(i => found.NightMeansK[i]));
    }

    /// <summary>The least change of the loss, as a logarithm, that half of the nights would show against the other half; NaN where too few were heated.</summary>
    /// <param name="found">A fit of the nights.</param>
    public static double Least(GroupFound found)
    {
        double[] telling = [.. Weights(found).Where(w => w > 0)];
        if (telling.Length < 2)
            return double.NaN;
        var spell = SpellK / ScatterK / Math.Sqrt(telling.Average());
        return Math.Max(LeastLoss, Errors * Math.Sqrt(4 / telling.Sum() + spell * spell));
    }

    private static double[] Weights(GroupFound found) => [.. found.SensitivityK.Select(s => s < LeastSensitivityK ? 0 : s * s / (ScatterK * ScatterK))];

    private static (int First, int Count, double Off, double Size)? Worst(double[] own, double[] weights, double least)
    {
        var worst = ((int First, int Count, double Off, double Size)?)null;
        var (all, allAt) = (weights.Sum(), weights.Select((w, i) => w * own[i]).Sum());
        var telling = weights.Count(w => w > 0);
        for (var first = 0; first < own.Length; first++)
        {
            var (inside, at, count) = (0.0, 0.0, 0);
            for (var last = first; last < own.Length; last++)
            {
                inside += weights[last];
                at += weights[last] * own[last];
                count += weights[last] > 0 ? 1 : 0;
                var rest = all - inside;
                // Fewer nights are the other house: which of two is meant no log can say.
                if (weights[last] <= 0 || weights[first] <= 0 || 2 * count > telling)
                    continue;
                var off = at / inside - (allAt - at) / rest;
                var spell = SpellK / ScatterK / Math.Sqrt(inside / count);
                var size = Math.Abs(off) / Math.Sqrt(1 / inside + 1 / rest + spell * spell);
                if (Math.Abs(off) >= least && size >= (last == first ? OneNightErrors : Errors) && size > (worst?.Size ?? 0))
                    worst = (first, last - first + 1, off, size);
            }
        }

        return worst;
    }

    private static double Median(double[] values) => MathNet.Numerics.Statistics.Statistics.Median(values);
}
