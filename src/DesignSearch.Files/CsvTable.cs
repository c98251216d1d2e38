namespace DesignSearch.Files;

/// <summary>
/// Reads tables strictly: commas, or semicolons with decimal commas, double quotes, a header, UTF-8 with or without a byte-order mark, any line end,
/// lines that begin with # left out.
/// Everything that is wrong is found in one reading.
/// </summary>
public static class CsvTable
{
    /// <summary>Greatest size of a table [bytes].</summary>
    public const int MostBytes = 5_000_000;

    /// <summary>Reads a file.</summary>
    /// <typeparam name="T">What a row becomes.</typeparam>
    /// <param name="path">The file; it is named in faults as given.</param>
    /// <param name="readRow">Reads one row and asks for every column, whatever the answers are.</param>
    /// <param name="faults">Receives everything that is wrong.</param>
    /// <returns>The rows without a fault.</returns>
    public static IReadOnlyList<CsvEntry<T>> ReadFile<T>(string path, Func<ICsvCells, T> readRow, FaultList faults)
    {
        if (InputFile.Read(path, MostBytes, out var expected) is not { } bytes)
        {
            faults.Add(path, 0, 0, "", expected);
            return [];
        }

        return Read(path, bytes, readRow, faults);
    }

    /// <summary>Reads a table that stands in memory.</summary>
    /// <typeparam name="T">What a row becomes.</typeparam>
    /// <param name="file">Its name for faults.</param>
    /// <param name="bytes">The content, UTF-8.</param>
    /// <param name="readRow">Reads one row and asks for every column, whatever the answers are.</param>
    /// <param name="faults">Receives everything that is wrong.</param>
    /// <returns>The rows without a fault.</returns>
    public static IReadOnlyList<CsvEntry<T>> Read<T>(string file, byte[] bytes, Func<ICsvCells, T> readRow, FaultList faults)
    {
        if (bytes.Length > MostBytes)
        {
            faults.Add(file, 0, 0, "", FormattableString.Invariant($"a table of at most {MostBytes / 1_000_000} MB"));
            return [];
        }

        if (!CsvEncoding.TryDecode(file, bytes, faults, out var text))
            return [];
        var reading = new CsvReading(file, CsvColumns.Of(readRow), faults);
        var entries = new List<CsvEntry<T>>();
        foreach (var (line, cells, places) in reading.Rows(text))
        {
            var before = faults.Count;
            var value = readRow(new CsvRow(file, line, cells, places, reading.HasCommas, faults));
            if (faults.Count == before && reading.HasEveryColumn)
                entries.Add(new(value, file, line, places));
        }

        return entries;
    }
}
