namespace DesignSearch.Climate.Weather;

/// <summary>Finds runs of missing values in a column and fills the short ones.</summary>
/// <param name="grid">Whose slots the columns have.</param>
internal sealed class GapFiller(SampleGrid grid)
{
    /// <summary>Longest gap that is filled [h].</summary>
    public const double LongestHours = 48;

    /// <summary>Runs of NaN, as first slot and length; a run over the end of a typical year counts as one.</summary>
    public List<(int First, int Count)> Gaps(double[] values)
    {
        var gaps = new List<(int First, int Count)>();
        var n = values.Length;
        for (var i = 0; i < n; i++)
        {
            if (!double.IsNaN(values[i]))
                continue;
            var first = i;
            while (i < n && double.IsNaN(values[i]))
                i++;
            gaps.Add((first, i - first));
        }

        if (grid.Wraps && gaps.Count > 1 && gaps[0].First == 0 && gaps[^1].First + gaps[^1].Count == n)
        {
            gaps[^1] = (gaps[^1].First, gaps[^1].Count + gaps[0].Count);
            gaps.RemoveAt(0);
        }

        return gaps;
    }

    /// <summary>Fills one gap: straight across up to the given length, else from the same hours of the days around it, shifted to meet both ends; straight
    /// across, too, where no day around has them.</summary>
    /// <param name="values">Filled in place.</param>
    /// <param name="gap">From <see cref="Gaps"/>.</param>
    /// <param name="straightHours">Longest gap that is bridged by a straight line [h].</param>
    public void Fill(double[] values, (int First, int Count) gap, double straightHours)
    {
        var before = At(values, gap.First - 1);
        var after = At(values, gap.First + gap.Count);
        if (double.IsNaN(before))
            before = after;
        if (double.IsNaN(after))
            after = before;
        // The gap and a slot on either side, as the days around have them; a record of a day or two may have none of the same hour.
        var usual = gap.Count * grid.StepHours <= straightHours ? [] : Enumerable.Range(gap.First - 1, gap.Count + 2).Select(i => Usual(values, i)).ToArray();
        var straight = usual.Length == 0 || usual.Any(double.IsNaN);
        var (low, high) = straight ? (before, after) : (before - usual[0], after - usual[^1]);
        var filled = new double[gap.Count];
        for (var j = 0; j < gap.Count; j++)
        {
            var part = (j + 1.0) / (gap.Count + 1);
            filled[j] = (straight ? 0 : usual[j + 1]) + low + part * (high - low);
        }

        for (var j = 0; j < gap.Count; j++)
            values[Slot(gap.First + j, values.Length)] = filled[j];
    }

    /// <summary>Mean of the nearest known values at the same hour before and after a slot.</summary>
    public double Usual(double[] values, int slot)
    {
        var day = 1440 / grid.StepMin;
        var (sum, count) = (0.0, 0);
        foreach (var way in (ReadOnlySpan<int>)[-1, 1])
        {
            for (var d = 1; d <= 4; d++)
            {
                var value = At(values, slot + way * d * day);
                if (double.IsNaN(value))
                    continue;
                (sum, count) = (sum + value, count + 1);
                break;
            }
        }

        return count == 0 ? double.NaN : sum / count;
    }

    /// <summary>The slot itself, or its like in a typical year that goes round.</summary>
    public int Slot(int i, int n) => grid.Wraps ? (i % n + n) % n : i;

    private double At(double[] values, int i)
    {
        var slot = Slot(i, values.Length);
        return slot >= 0 && slot < values.Length ? values[slot] : double.NaN;
    }
}
