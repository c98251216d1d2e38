using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Synthesis;

/// <summary>The counted days of a winter.</summary>
internal sealed class WinterDays
{
    private readonly Winter winter;

    private WinterDays(Winter winter)
    {
        this.winter = winter;
        Count = winter.SeasonHours / 24;
        (MeanC, LowC, HighC, LightWh) = (new double[Count], new double[Count], new double[Count], new double[Count]);
        for (var d = 0; d < Count; d++)
        {
            var air = winter.AirC.AsSpan(FirstHour(d), 24).ToArray();
            (MeanC[d], LowC[d], HighC[d]) = (air.Average(), air.Min(), air.Max());
            LightWh[d] = winter.GlobalWPerM2.AsSpan(FirstHour(d), 24).ToArray().Sum();
        }
    }

    public int Count { get; }

    public double[] MeanC { get; }

    public double[] LowC { get; }

    public double[] HighC { get; }

    public double[] LightWh { get; }

    public static WinterDays Of(Winter winter) => new(winter);

    /// <summary>First hour of a day, counted from the start of the winter.</summary>
    public int FirstHour(int day) => winter.WarmUpHours + 24 * day;

    /// <summary>Days of the coldest month that lies in the season with at least 20 days, else all days.</summary>
    public int[] ColdestMonth()
    {
        var months = Enumerable.Range(0, Count).GroupBy(d => winter.Start.AddHours(FirstHour(d)).Month).Where(m => m.Count() >= 20).ToArray();
        return months.Length == 0 ? [.. Enumerable.Range(0, Count)] : [.. months.MinBy(m => m.Average(d => MeanC[d]))!];
    }
}
