namespace DesignSearch.Climate.Loggers;

/// <summary>A table of times with anything in its columns, as loggers and meters write it.</summary>
public sealed record LoggerTable
{
    /// <summary>The file.</summary>
    public required string Path { get; init; }

    /// <summary>Times of the rows, rising: the file's own clock without daylight saving, or UTC.</summary>
    public required IReadOnlyList<DateTime> Stamps { get; init; }

    /// <summary>Line of each row.</summary>
    public required IReadOnlyList<int> Lines { get; init; }

    /// <summary>True where the stamps named their zone, so that they are UTC now.</summary>
    public required bool IsUtc { get; init; }

    /// <summary>The columns beside the times.</summary>
    public required IReadOnlyList<LoggerColumn> Columns { get; init; }

    /// <summary>What stands above the table as "# key: value", keys in small letters.</summary>
    public required IReadOnlyDictionary<string, string> Head { get; init; }

    /// <summary>The usual distance of the rows [min].</summary>
    public required int StepMinutes { get; init; }

    /// <summary>What was changed, in plain sentences.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }
}
