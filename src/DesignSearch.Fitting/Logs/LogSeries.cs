namespace DesignSearch.Fitting.Logs;

/// <summary>Readings of one column.</summary>
/// <param name="Role">What they stand for.</param>
/// <param name="Name">Name of the column.</param>
/// <param name="Readings">By their times in local standard time, rising.</param>
internal sealed record LogSeries(LogRole Role, string Name, IReadOnlyList<(DateTime At, double Value)> Readings)
{
    /// <summary>True for a weather station.</summary>
    public bool IsStation { get; init; }

    /// <summary>Name of the file that it stands in: what stands in one file has one clock.</summary>
    public string Table { get; init; } = "";

    /// <summary>Usual distance of the rows [min].</summary>
    public int StepMinutes { get; init; }
}
