namespace DesignSearch.Files;

/// <summary>What parts the cells of tables that are written for a spreadsheet.</summary>
public enum CellSeparator
{
    /// <summary>Commas and decimal points, as programs and English spreadsheets read it.</summary>
    Comma,

    /// <summary>Semicolons and decimal commas with a byte-order mark, as spreadsheets of half the world open it by a double click.</summary>
    Semicolon,
}
