namespace DesignSearch.Climate.Formats;

/// <summary>One row of a table as text.</summary>
/// <param name="Line">Line of the file, from 1.</param>
/// <param name="Where">Column of the stamp, from 1; in JSON where it stands among the bytes.</param>
/// <param name="Stamp">The stamp.</param>
/// <param name="Cells">The value of each field of the table, in its order.</param>
internal readonly record struct TextRow(int Line, int Where, string Stamp, string[] Cells);
