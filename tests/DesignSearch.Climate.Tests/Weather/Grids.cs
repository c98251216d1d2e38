using DesignSearch.Climate.Weather;

namespace DesignSearch.Climate.Tests;

/// <summary>Columns of a file laid on a grid, without a file: slot i stands on line i + 10.</summary>
internal static class Grids
{
    public const int FirstLine = 10;

    public static readonly DateTime Start = new(2021, 1, 1);

    public static SampleGrid Hourly(params (WeatherField Field, double[] Values)[] columns) => Every(60, columns);

    public static SampleGrid Every(int minutes, params (WeatherField Field, double[] Values)[] columns)
    {
        var count = columns[0].Values.Length;
        return SampleGrid.Lay(new()
        {
            Stamps = [.. Enumerable.Range(0, count).Select(i => Start.AddMinutes((double)i * minutes))],
            Lines = [.. Enumerable.Range(FirstLine, count)],
            Values = columns.ToDictionary(c => c.Field, c => c.Values),
            Years = [Start.Year],
            IsTypical = false,
        }, 0, false);
    }

    /// <summary>So many values of a kind.</summary>
    public static double[] Of(int count, Func<int, double> value) => [.. Enumerable.Range(0, count).Select(value)];
}
