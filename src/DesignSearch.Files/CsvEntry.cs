namespace DesignSearch.Files;

/// <summary>What one row of a file became, and where it stands.</summary>
/// <typeparam name="T">What a row becomes.</typeparam>
/// <param name="Value">The row's content.</param>
/// <param name="File">The file as the person named it.</param>
/// <param name="Line">Line on which the row begins, counted from 1.</param>
/// <param name="Places">Line and column of each cell, by column name.</param>
public sealed record CsvEntry<T>(T Value, string File, int Line, IReadOnlyDictionary<string, TextPlace> Places)
{
    /// <summary>Where a cell stands; the row's line when the file lacks the column.</summary>
    /// <param name="column">Name of the column.</param>
    public TextPlace PlaceOf(string column) => Places.TryGetValue(column, out var place) ? place : new(Line, 0);
}
