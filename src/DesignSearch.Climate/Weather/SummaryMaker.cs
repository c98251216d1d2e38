namespace DesignSearch.Climate.Weather;

/// <summary>Makes the summary of a record from the samples as recorded, not from hour means.</summary>
internal static class SummaryMaker
{
    /// <param name="grid">Samples with gaps filled.</param>
    /// <param name="recordedAir">Air as recorded, gaps still NaN.</param>
    /// <param name="centreMin">Middle of a radiation sample after its stamp [min]; months are cut by it.</param>
    /// <param name="hours">Hour means, for what the file does not have.</param>
    public static WeatherSummary Make(SampleGrid grid, double[] recordedAir, double centreMin, SummaryHours hours)
    {
        var air = grid.Values[WeatherField.Air];
        var global = grid.Values.GetValueOrDefault(WeatherField.Global);
        var wind = grid.Values.GetValueOrDefault(WeatherField.Wind);
        var byMonth = Enumerable.Range(0, grid.Count).GroupBy(i => MonthOf(grid, i, centreMin)).OrderBy(g => g.Key);
        var months = new List<MonthSummary>();
        foreach (var month in byMonth)
        {
            int[] slots = [.. month];
            var recorded = slots.Where(i => !double.IsNaN(recordedAir[i])).ToArray();
            months.Add(new(
                month.Key,
                slots.Average(i => air[i]),
                recorded.Length == 0 ? double.NaN : recorded.Min(i => recordedAir[i]),
                (global is null ? hours.MeanOfMonth(hours.Global, month.Key) : slots.Average(i => global[i])) * 24 / 1000,
                recorded.Count(i => recordedAir[i] < 0) * grid.StepHours / YearsOf(grid),
                wind is null ? hours.MeanOfMonth(hours.Wind, month.Key) : slots.Average(i => wind[i])));
        }

        var days = DayMeans(grid, air, centreMin);
        double Coldest(int length) => LowestRun(days, length, grid.Wraps);
        return new(months, months.Sum(m => m.FrostHours), Coldest(1), Coldest(3), Coldest(7));
    }

    private static double YearsOf(SampleGrid grid) => Math.Max(1, Math.Round(grid.Count * grid.StepHours / 8766));

    private static int MonthOf(SampleGrid grid, int slot, double centreMin) => grid.Stamp(slot).AddMinutes(centreMin).Month;

    private static double[] DayMeans(SampleGrid grid, double[] air, double centreMin)
    {
        var first = grid.Stamp(0).AddMinutes(centreMin).Date;
        return [.. Enumerable.Range(0, grid.Count)
            .GroupBy(i => (int)(grid.Stamp(i).AddMinutes(centreMin).Date - first).TotalDays)
            .Where(d => d.Count() * grid.StepHours > 20).OrderBy(d => d.Key).Select(d => d.Average(i => air[i]))];
    }

    private static double LowestRun(double[] days, int length, bool wraps)
    {
        var lowest = double.PositiveInfinity;
        for (var d = 0; d < (wraps ? days.Length : days.Length - length + 1); d++)
            lowest = Math.Min(lowest, Enumerable.Range(d, length).Average(i => days[i % days.Length]));
        return lowest;
    }
}
