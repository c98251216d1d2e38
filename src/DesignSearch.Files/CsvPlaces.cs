namespace DesignSearch.Files;

/// <summary>Finds where the cells of one raw record begin.</summary>
internal static class CsvPlaces
{
    /// <summary>Line and column of each cell; quotes that hide separators and line breaks are respected.</summary>
    /// <param name="rawRecord">The record as it stands in the file, without its line end.</param>
    /// <param name="firstLine">The line on which it begins.</param>
    /// <param name="separator">What parts the cells.</param>
    public static List<TextPlace> Of(string rawRecord, int firstLine, char separator)
    {
        var places = new List<TextPlace> { new(firstLine, 1) };
        var (line, column, isQuoted) = (firstLine, 1, false);
        foreach (var c in rawRecord)
        {
            column++;
            if (c == '"')
                isQuoted = !isQuoted;
            else if (c == '\n')
                (line, column) = (line + 1, 1);
            else if (c == separator && !isQuoted)
                places.Add(new(line, column));
        }

        return places;
    }
}
