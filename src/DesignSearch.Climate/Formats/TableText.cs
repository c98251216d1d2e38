namespace DesignSearch.Climate.Formats;

/// <summary>The rows of a table as text, with the fields they hold.</summary>
/// <param name="Line">Line of the names of its columns, or of its first row.</param>
internal sealed record TableText(int Line)
{
    /// <summary>What the cells of a row are, with the unit of each and the place of its name.</summary>
    public List<(FieldMap Map, string Unit, int Column)> Fields { get; } = [];

    public List<TextRow> Rows { get; } = [];

    /// <summary>Column of a row's stamp, from 1.</summary>
    public Func<TextRow, int> ColumnOf { get; init; } = row => row.Where;

    /// <summary>True when fields are not parted by commas, so that a comma in a number is a decimal one.</summary>
    public bool DecimalCommas { get; init; }
}
