namespace DesignSearch.Files;

/// <summary>A place in a text file, as an editor counts it.</summary>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column in characters, counted from 1; 0 for the whole line.</param>
public readonly record struct TextPlace(int Line, int Column);
