namespace DesignSearch.Files;

/// <summary>One column that a file may have.</summary>
/// <param name="Name">Name in the header, its unit at the end.</param>
/// <param name="Expected">What a cell may hold, as a plain sentence part.</param>
/// <param name="What">What it means.</param>
/// <param name="IsOptional">True when the column may be left out or its cells left empty.</param>
public sealed record CsvColumn(string Name, string Expected, string What, bool IsOptional);
