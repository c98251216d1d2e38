using DesignSearch.Climate.Weather;

namespace DesignSearch.Climate.Formats;

/// <summary>The rows of a file as they stand, in our units, missing values as NaN.</summary>
internal sealed class SourceTable
{
    public static SourceTable Empty => new() { Stamps = [], Lines = [], Values = [], Years = [], IsTypical = false };

    public required DateTime[] Stamps { get; init; }

    /// <summary>Line of the file each row stands on.</summary>
    public required int[] Lines { get; init; }

    public required Dictionary<WeatherField, double[]> Values { get; init; }

    /// <summary>Years the stamps carry.</summary>
    public required SortedSet<int> Years { get; init; }

    public required bool IsTypical { get; init; }

    /// <summary>True when the stamps named their zone themselves, and are UTC now.</summary>
    public bool IsUtc { get; init; }
}
