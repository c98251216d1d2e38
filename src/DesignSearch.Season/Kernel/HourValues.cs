namespace DesignSearch.Season.Kernel;

/// <summary>The sources' columns of one hour. Two are equal when their columns and values are.</summary>
public sealed class HourValues : IEquatable<HourValues>
{
    private readonly HourColumn[] columns;
    private readonly double[] values;

    internal HourValues(HourColumn[] columns, double[] values) => (this.columns, this.values) = (columns, values);

    /// <summary>The columns, source by source.</summary>
    public IReadOnlyList<HourColumn> Columns => columns;

    internal static HourValues None { get; } = new([], []);

    /// <summary>Value of a column; NaN where the layout has no such source.</summary>
    /// <param name="column">The column.</param>
    public double this[HourColumn column] => Array.IndexOf(columns, column) is >= 0 and var i ? values[i] : double.NaN;

    /// <inheritdoc/>
    public bool Equals(HourValues? other) => other is not null && columns.AsSpan().SequenceEqual(other.columns) && values.AsSpan().SequenceEqual(other.values);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as HourValues);

    /// <inheritdoc/>
    public override int GetHashCode() => values.Aggregate(17, HashCode.Combine);
}
