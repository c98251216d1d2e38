namespace DesignSearch.Climate.Weather;

/// <summary>Hour means that stand in for columns a file does not have.</summary>
internal sealed record SummaryHours(DateTime Start, double[] Global, double[] Wind)
{
    /// <summary>Mean of the hours that lie in a month.</summary>
    public double MeanOfMonth(double[] values, int month) =>
        Enumerable.Range(0, values.Length).Where(h => Start.AddHours(h).Month == month).Select(h => values[h]).DefaultIfEmpty(double.NaN).Average();
}
