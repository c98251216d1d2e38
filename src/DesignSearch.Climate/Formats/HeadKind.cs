namespace DesignSearch.Climate.Formats;

/// <summary>How a format writes what it knows of the place.</summary>
internal enum HeadKind
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>Lines "label: value", with or without a # before them.</summary>
    Labels,

    /// <summary>A line of names and a line of values.</summary>
    NamesThenValues,

    /// <summary>Values at fixed fields of line 1.</summary>
    Positions,

    /// <summary>Anywhere in the head: a regular expression finds each value.</summary>
    Patterns,

    /// <summary>In columns of the table, the same in every row: those of the first row count.</summary>
    FirstRow,

    /// <summary>In JSON: the path of each value, names parted by dots.</summary>
    Paths,
}
