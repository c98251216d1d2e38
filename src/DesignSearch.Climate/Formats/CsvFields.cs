namespace DesignSearch.Climate.Formats;

/// <summary>Splits one line of a weather file, keeping where each field starts so that a fault can point at it.</summary>
internal static class CsvFields
{
    /// <summary>What parts the fields of a line: the commonest of comma, semicolon and tab.</summary>
    public static char DelimiterOf(string line) => ",;\t".MaxBy(d => line.Count(c => c == d));

    /// <summary>The fields with their first character's column, counted from 1. Quotes around a field are taken off.</summary>
    public static List<(string Text, int Column)> Split(string line, char delimiter)
    {
        var bounds = new List<(int Start, int End)>();
        Scan(line, delimiter, bounds);
        return [.. bounds.Select(b => (Bare(line.AsSpan(b.Start, b.End - b.Start)).ToString(), b.Start + 1))];
    }

    /// <summary>Finds where the fields of a line begin and end, without making text of them.</summary>
    /// <param name="line">The line.</param>
    /// <param name="delimiter">What parts the fields.</param>
    /// <param name="bounds">Emptied and filled.</param>
    public static void Scan(ReadOnlySpan<char> line, char delimiter, List<(int Start, int End)> bounds)
    {
        bounds.Clear();
        var start = 0;
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '"')
                quoted = !quoted;
            if (quoted || line[i] != delimiter)
                continue;
            bounds.Add((start, i));
            start = i + 1;
        }

        bounds.Add((start, line.Length));
    }

    /// <summary>A field without the blanks and quotes around it.</summary>
    public static ReadOnlySpan<char> Bare(ReadOnlySpan<char> field) => field.Trim().Trim('"').Trim();
}
