namespace DesignSearch.Climate.Formats;

/// <summary>Where the rows of a format stand in its file.</summary>
/// <param name="Kind">How they are laid out.</param>
internal sealed record TableMap(TableKind Kind)
{
    /// <summary>A regular expression that every row fits; it knows a format that has no head. Empty: the head tells.</summary>
    public string Row { get; init; } = "";

    /// <summary>Names of the fields, for rows without a line of names.</summary>
    public IReadOnlyList<string> Names { get; init; } = [];

    /// <summary>Fields of fixed width; for lines of months the first day's value and flags are among them as "value" and "flag".</summary>
    public IReadOnlyList<FixedPlace> Places { get; init; } = [];

    /// <summary>Path of the rows in JSON, names parted by dots.</summary>
    public string Path { get; init; } = "";

    /// <summary>Path of the units in JSON, one a column.</summary>
    public string Units { get; init; } = "";

    /// <summary>Characters from one day to the next in lines of months.</summary>
    public int DayWidth { get; init; }
}
