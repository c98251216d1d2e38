namespace DesignSearch.Climate.Formats;

/// <summary>Puts readings of any minute on whole hours.</summary>
internal static class NearestHours
{
    private const double HalfHourMin = 30;

    /// <summary>Each whole hour takes, column by column, the value read nearest to it within half an hour.</summary>
    /// <param name="stamps">In any order.</param>
    /// <param name="lines">Line of each row.</param>
    /// <param name="values">Columns, NaN where nothing was read.</param>
    /// <param name="repairs">Takes a sentence when rows were not on whole hours.</param>
    public static (List<DateTime> Stamps, List<int> Lines, List<double>[] Values) Take(
        List<DateTime> stamps, List<int> lines, List<double>[] values, List<string> repairs)
    {
        var hours = stamps.Select(s => s.Date.AddHours(Math.Floor(s.TimeOfDay.TotalHours + 0.5))).ToArray();
        var order = Enumerable.Range(0, stamps.Count).OrderBy(i => hours[i]).ThenBy(i => Math.Abs((stamps[i] - hours[i]).TotalMinutes)).ThenBy(i => i).ToArray();
        var (at, line) = (new List<DateTime>(), new List<int>());
        var taken = values.Select(_ => new List<double>()).ToArray();
        var between = 0;
        foreach (var i in order)
        {
            between += Math.Abs((stamps[i] - hours[i]).TotalMinutes) is > 0 and <= HalfHourMin ? 1 : 0;
            if (at.Count == 0 || at[^1] != hours[i])
            {
                at.Add(hours[i]);
                line.Add(lines[i]);
                for (var f = 0; f < values.Length; f++)
                    taken[f].Add(values[f][i]);
                continue;
            }

            for (var f = 0; f < values.Length; f++)
                taken[f][^1] = double.IsNaN(taken[f][^1]) ? values[f][i] : taken[f][^1];
        }

        if (between > 0)
            repairs.Add(FormattableString.Invariant(
                $"{stamps.Count} reports were put on {at.Count} whole hours: each hour takes what was read nearest to it, within half an hour."));
        return (at, line, taken);
    }
}
