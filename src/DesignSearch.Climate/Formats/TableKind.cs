namespace DesignSearch.Climate.Formats;

/// <summary>How a format lays out its rows.</summary>
internal enum TableKind
{
    /// <summary>Fields parted by comma, semicolon or tab, with or without a line of names.</summary>
    Columns,

    /// <summary>Every field between fixed characters of the line, no line of names.</summary>
    Fixed,

    /// <summary>JSON: a list of rows, or one list a column.</summary>
    Json,

    /// <summary>One value a row: day, name of the element, value.</summary>
    Elements,

    /// <summary>One month of one element a line, a fixed number of characters a day.</summary>
    MonthLines,
}
