namespace DesignSearch.Climate;

/// <summary>The rows of a file as they stand, in our units, missing values as NaN.</summary>
internal sealed class SourceTable
{
    public required DateTime[] Stamps { get; init; }

    /// <summary>Line of the file each row stands on.</summary>
    public required int[] Lines { get; init; }

    public required Dictionary<WeatherField, double[]> Values { get; init; }

    /// <summary>Sentences about what was wrong with single values.</summary>
    public List<string> Remarks { get; } = [];
}
