using MathNet.Numerics.Statistics;

namespace DesignSearch.Benchmarks;

/// <summary>Cells of the table.</summary>
internal static class Table
{
    public static double Median(double[] values) => values.Median();

    public static double LowerQuartile(double[] values) => values.LowerQuartile();

    public static string Share(double[] values) =>
        FormattableString.Invariant($"{100 * values.Median():0.00} [{100 * values.LowerQuartile():0.00} {100 * values.UpperQuartile():0.00}]");

    public static string Count(long?[] values)
    {
        var reached = values.Count(v => v is not null);
        var text = reached * 2 > values.Length ? FormattableString.Invariant($"{values.Select(v => v ?? double.MaxValue).Median():0}") : "-";
        return reached == values.Length ? text : FormattableString.Invariant($"{text} ({reached}/{values.Length})");
    }
}
