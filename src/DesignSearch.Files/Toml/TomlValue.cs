namespace DesignSearch.Files.Toml;

/// <summary>One value of a TOML file with the place where it stands.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">The words of a text, or the digits as they were read.</param>
/// <param name="Number">A whole or real number; 0 for other kinds.</param>
/// <param name="Flag">A truth value; false for other kinds.</param>
/// <param name="Items">Items of a list; empty for other kinds.</param>
/// <param name="Table">A table; null for other kinds.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1.</param>
public sealed record TomlValue(
    TomlKind Kind,
    string Text,
    double Number,
    bool Flag,
    IReadOnlyList<TomlValue> Items,
    TomlTable? Table,
    int Line,
    int Column);
