namespace DesignSearch.Climate.Formats;

/// <summary>Splits one line of a weather file, keeping where each field starts so that a fault can point at it.</summary>
internal static class CsvFields
{
    /// <summary>What parts the fields of a line: the commonest of comma, semicolon and tab.</summary>
    public static char DelimiterOf(string line) => ",;\t".MaxBy(d => line.Count(c => c == d));

    /// <summary>The fields with their first character's column, counted from 1. Quotes around a field are taken off.</summary>
    public static List<(string Text, int Column)> Split(string line, char delimiter)
    {
        var fields = new List<(string, int)>();
        var start = 0;
        var quoted = false;
        for (var i = 0; i <= line.Length; i++)
        {
            if (i < line.Length && line[i] == '"')
                quoted = !quoted;
            if (i < line.Length && (quoted || line[i] != delimiter))
                continue;
            fields.Add((line[start..i].Trim().Trim('"').Trim(), start + 1));
            start = i + 1;
        }

        return fields;
    }
}
