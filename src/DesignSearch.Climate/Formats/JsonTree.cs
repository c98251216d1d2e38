using System.Text;
using System.Text.Json;
using DesignSearch.Files;

namespace DesignSearch.Climate.Formats;

/// <summary>What stands in a JSON file: single values by path, and columns by path, whether the file lists rows or columns.</summary>
/// <remarks>A path is the names from the outside in, parted by dots. Lists in lists, and lists in rows, are passed over.</remarks>
internal sealed class JsonTree
{
    private const int Deepest = 24;
    private const int MostValues = 20_000_000;
    private const int MostPaths = 10_000;
    private readonly byte[] bytes;
    private readonly Dictionary<string, JsonCell> facts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<JsonCell>> columns = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> rows = new(StringComparer.Ordinal);
    private readonly Lazy<int[]> lineStarts;
    private int values;

    private JsonTree(byte[] bytes)
    {
        this.bytes = bytes;
        lineStarts = new(() => [0, .. Enumerable.Range(0, bytes.Length).Where(i => bytes[i] == '\n').Select(i => i + 1)]);
    }

    /// <summary>Reads a whole file.</summary>
    /// <exception cref="InputException">It is no JSON, too deep or too large; with its place.</exception>
    public static JsonTree Read(string path, byte[] bytes)
    {
        var tree = new JsonTree(bytes);
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { MaxDepth = Deepest });
        try
        {
            while (reader.Read())
                tree.Take(ref reader, "", -1);
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            if (tree.values > MostValues || tree.facts.Count + tree.columns.Count > MostPaths)
                throw new InputException(new InputFault(path, 0, 0, "", FormattableString.Invariant($"JSON of at most {MostValues} values under {MostPaths} names")));
            var (line, column) = tree.PlaceOf(new((int)Math.Min(reader.BytesConsumed, Math.Max(0, bytes.Length - 1)), 0));
            throw new InputException(new InputFault(
                path, line, column, "",
                reader.CurrentDepth >= Deepest - 1
                    ? FormattableString.Invariant($"JSON of at most {Deepest} brackets in each other")
                    : "JSON that is whole; it cannot be read from here on (cut short, or not JSON?)"));
        }
        return tree;
    }

    /// <summary>A single value by its path.</summary>
    public JsonCell? Fact(string path) => facts.TryGetValue(path, out var cell) ? cell : null;

    /// <summary>True when a value, a column or anything below stands at a path.</summary>
    public bool Has(string path) =>
        facts.ContainsKey(path) || columns.ContainsKey(path) || rows.ContainsKey(path)
        || columns.Keys.Concat(facts.Keys).Any(k => k.StartsWith(path + ".", StringComparison.Ordinal));

    /// <summary>Names of the columns at a path.</summary>
    public IReadOnlyList<string> Names(string path)
    {
        var prefix = path.Length == 0 ? "" : path + ".";
        return [.. columns.Keys.Where(k => k.StartsWith(prefix, StringComparison.Ordinal)).Select(k => k[prefix.Length..])];
    }

    /// <summary>A column; where the file lists rows it is as long as there are rows.</summary>
    public IReadOnlyList<JsonCell> Column(string path, string name)
    {
        var column = columns[path.Length == 0 ? name : path + "." + name];
        if (rows.TryGetValue(path, out var count))
            column.AddRange(Enumerable.Repeat(JsonCell.None, Math.Max(0, count - column.Count)));
        return column;
    }

    /// <summary>The text of a value, unescaped; empty for none and null.</summary>
    public string TextOf(JsonCell cell)
    {
        if (cell.Length <= 0)
            return "";
        var span = bytes.AsSpan(cell.Start, cell.Length);
        if (!span.Contains((byte)'\\'))
            return Encoding.UTF8.GetString(span);
        var reader = new Utf8JsonReader(bytes.AsSpan(cell.Start - 1, cell.Length + 2));
        try
        {
            reader.Read();
            return reader.GetString() ?? "";
        }
        catch (InvalidOperationException)
        {
            // Half a sign outside the first plane is no text.
            return Encoding.UTF8.GetString(span);
        }
    }

    /// <summary>Line and column of a value, from 1.</summary>
    public (int Line, int Column) PlaceOf(JsonCell cell)
    {
        var line = LineOf(cell);
        var from = lineStarts.Value[line - 1];
        return (line, Encoding.UTF8.GetCharCount(bytes, from, Math.Max(0, cell.Start - from)) + 1);
    }

    /// <summary>Line of a value, from 1.</summary>
    public int LineOf(JsonCell cell)
    {
        var line = Array.BinarySearch(lineStarts.Value, cell.Start);
        return line < 0 ? ~line : line + 1;
    }

    // Takes the value the reader stands at; row is the row it belongs to, or below 0.
    private void Take(ref Utf8JsonReader reader, string path, int row)
    {
        if (reader.TokenType == JsonTokenType.StartObject)
        {
            while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
            {
                var name = reader.GetString()!;
                reader.Read();
                Take(ref reader, path.Length == 0 ? name : path + "." + name, row);
            }
        }
        else if (reader.TokenType == JsonTokenType.StartArray && row >= 0)
        {
            reader.Skip();
        }
        else if (reader.TokenType == JsonTokenType.StartArray)
        {
            TakeList(ref reader, path);
        }
        else if (row >= 0)
        {
            var column = ColumnAt(path);
            // A row far down that holds a new name would ask for many empty cells.
            Count(Math.Max(1, row - column.Count));
            for (var missing = row - column.Count; missing > 0; missing--)
                column.Add(JsonCell.None);
            if (column.Count == row)
                column.Add(Cell(ref reader));
        }
        else
        {
            facts.TryAdd(path, Cell(ref reader));
            Count(1);
        }
    }

    private void TakeList(ref Utf8JsonReader reader, string path)
    {
        List<JsonCell>? column = null;
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            if (reader.TokenType == JsonTokenType.StartArray)
            {
                reader.Skip();
            }
            else if (reader.TokenType == JsonTokenType.StartObject)
            {
                var row = rows.GetValueOrDefault(path);
                rows[path] = row + 1;
                Take(ref reader, path, row);
            }
            else
            {
                column ??= ColumnAt(path);
                column.Add(Cell(ref reader));
                Count(1);
            }
        }
    }

    private List<JsonCell> ColumnAt(string path)
    {
        if (!columns.TryGetValue(path, out var column))
            columns[path] = column = [];
        return column;
    }

    private void Count(int more)
    {
        values += more;
        if (values > MostValues || facts.Count + columns.Count > MostPaths)
            throw new JsonException();
    }

    private static JsonCell Cell(ref Utf8JsonReader reader) => reader.TokenType switch
    {
        JsonTokenType.Null => JsonCell.None,
        JsonTokenType.String => new((int)reader.TokenStartIndex + 1, reader.ValueSpan.Length),
        _ => new((int)reader.TokenStartIndex, reader.ValueSpan.Length),
    };
}
