using System.Globalization;
using System.Text;
using Tomlyn;
using Tomlyn.Parsing;

namespace DesignSearch.Files.Toml;

/// <summary>Reads a TOML file into tables that know their lines. A line whose grammar is broken is reported and passed over, so that one slip does not hide the others.</summary>
public static class TomlReader
{
    private const int LargestFile = 1_000_000;
    private const int Passes = 40;
    private static readonly UTF8Encoding Utf8 = new(false, throwOnInvalidBytes: true);

    /// <summary>Reads a file.</summary>
    /// <param name="path">Where it lies.</param>
    /// <param name="shownAs">How messages name it.</param>
    /// <param name="faults">Takes every fault, also those found later by asking the tables.</param>
    /// <returns>The whole file as a table; empty where it could not be opened.</returns>
    public static TomlTable ReadFile(string path, string shownAs, FaultList faults)
    {
        if (InputFile.Read(path, LargestFile, out var expected) is { } bytes)
        {
            try
            {
                return ReadText(Utf8.GetString(bytes).TrimStart('\uFEFF'), shownAs, faults);
            }
            catch (DecoderFallbackException e)
            {
                faults.Add(
                    shownAs,
                    1 + bytes.Take(e.Index).Count(b => b == '\n'),
                    0, "",
                    "text in UTF-8, but this line holds other bytes; save the file as UTF-8 in the editor");
            }
        }
        else
        {
            faults.Add(shownAs, 0, 0, "", expected);
        }

        return new TomlTable(shownAs, "", 1, new FaultList());
    }

    /// <summary>Reads text.</summary>
    /// <inheritdoc cref="ReadFile"/>
    public static TomlTable ReadText(string text, string shownAs, FaultList faults)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        var broken = new SortedDictionary<int, string>();
        if (Slips(lines, shownAs, faults, broken) is not { } again)
            return new TomlTable(shownAs, "", 1, new FaultList());
        for (var pass = 0; pass < Passes; pass++)
        {
            // The parser stumbles over a backslash at the very end of a file, so a line end always stands behind it.
            var joined = string.Join('\n', lines) + '\n';
            if (FirstErrors(joined) is not { Count: > 0 } errors)
                return Build(joined, shownAs, faults, broken, again);
            foreach (var (line, column, message) in errors)
            {
                var at = Math.Clamp(line, 1, lines.Length);
                if (broken.ContainsKey(at))
                    continue;
                var expected = Earlier(lines, at) is { } first ? TomlWords.Twice(KeyOf(lines[at - 1]), first) : TomlWords.Unreadable(message);
                faults.Add(shownAs, at, column, lines[at - 1].Trim(), expected);
                broken.Add(at, KeyOf(lines[at - 1]));
            }

            // Where so much is wrong, what is missing too would only be noise.
            if (broken.Count > FaultList.MostKept || broken.Keys.All(line => lines[line - 1].Length == 0))
                break;
            foreach (var line in broken.Keys)
                lines[line - 1] = "";
        }

        return new TomlTable(shownAs, "", 1, new FaultList());
    }

    // What people do is told in our own words and taken out before the parser sees it, so that nothing is told behind it.
    private static List<TomlSpare>? Slips(string[] lines, string shownAs, FaultList faults, SortedDictionary<int, string> broken)
    {
        var (slips, singles) = TomlBrackets.Find(lines);
        foreach (var slip in slips)
        {
            faults.Add(shownAs, slip.Line + 1, slip.Column, lines[slip.Line].Trim(), slip.Expected);
            broken.TryAdd(slip.First + 1, KeyOf(lines[slip.First]));
            for (var line = slip.First; line <= slip.Last; line++)
                lines[line] = "";
        }

        var walk = new TomlLines(lines, shownAs, faults, broken);
        var again = walk.Tell(singles);
        return walk.IsHopeless ? null : again;
    }

    /// <summary>True where the parser reads a text.</summary>
    internal static bool IsReadable(string text) => FirstErrors(text + "\n").Count == 0;

    // The line, from 1, in which the same key stands above under the same heading; null where it does not.
    private static int? Earlier(string[] lines, int line)
    {
        if (!lines[line - 1].Contains('=', StringComparison.Ordinal))
            return null;
        for (var above = line - 1; above > 0 && !lines[above - 1].TrimStart().StartsWith('['); above--)
        {
            if (lines[above - 1].Contains('=', StringComparison.Ordinal) && KeyOf(lines[above - 1]) == KeyOf(lines[line - 1]))
                return above;
        }

        return null;
    }

    private static List<(int Line, int Column, string Message)> FirstErrors(string text)
    {
        var found = new List<(int, int, string)>();
        try
        {
            foreach (var message in SyntaxParser.Parse(text, "input").Diagnostics)
                found.Add((message.Span.Start.Line + 1, message.Span.Start.Column + 1, message.Message.ReplaceLineEndings(" ")));
            if (found.Count > 0)
                return found;
            var parser = TomlParser.Create(text, new TomlSerializerOptions());
            while (parser.MoveNext())
            {
            }
        }
        catch (TomlException e)
        {
            found.Add((Math.Max(1, (e.Line ?? 0) + 0), Math.Max(1, e.Column ?? 1), e.Message.ReplaceLineEndings(" ")));
        }

        return found;
    }

    internal static string KeyOf(string line)
    {
        var equals = line.IndexOf('=', StringComparison.Ordinal);
        return (equals < 0 ? line : line[..equals]).Trim(' ', '\t', '"', '[', ']');
    }

    private static TomlTable Build(string text, string file, FaultList faults, SortedDictionary<int, string> broken, List<TomlSpare> again)
    {
        var root = new TomlTable(file, "", 1, faults);
        var parser = TomlParser.Create(text, new TomlSerializerOptions());
        var open = new Stack<object>();
        (string Key, int Line, int Column) key = ("", 1, 1);
        var keys = new Stack<(string Key, int Line, int Column)>();
        while (parser.MoveNext())
        {
            var e = parser.Current;
            switch (e.Kind)
            {
                case TomlParseEventKind.StartDocument or TomlParseEventKind.EndDocument or TomlParseEventKind.None:
                    break;
                case TomlParseEventKind.PropertyName:
                    key = (parser.GetPropertyName() ?? "", e.Line, e.Column);
                    break;
                case TomlParseEventKind.StartTable when open.Count == 0:
                    open.Push(root);
                    break;
                case TomlParseEventKind.StartTable:
                    var table = open.Peek() is TomlTable outer
                        ? outer.Inner(key.Key) ?? new TomlTable(file, outer.Under(key.Key), key.Line, faults)
                        : new TomlTable(file, keys.Count > 0 ? keys.Peek().Key : "", e.Line > 0 ? e.Line : key.Line, faults);
                    Place(open, key, new TomlValue(TomlKind.Table, "", 0, false, [], table, key.Line, key.Column));
                    keys.Push(key);
                    open.Push(table);
                    break;
                case TomlParseEventKind.StartArray:
                    var list = new List<TomlValue>();
                    Place(open, key, new TomlValue(TomlKind.List, "", 0, false, list, null, e.Line > 0 ? e.Line : key.Line, e.Line > 0 ? e.Column : key.Column));
                    keys.Push(key);
                    open.Push(list);
                    break;
                case TomlParseEventKind.EndTable or TomlParseEventKind.EndArray:
                    open.Pop();
                    if (keys.Count > 0)
                        keys.Pop();
                    break;
                default:
                    Place(open, key, Scalar(e, parser));
                    break;
            }
        }

        MarkUnreadable(root, text, broken);
        foreach (var spare in again)
        {
            // What stands under a heading that could not be used is not told as missing elsewhere.
            var owner = spare.Heading.Split('.').Aggregate(root, (table, part) => table.Inner(part.Trim()) ?? table);
            foreach (var under in root.Remove(spare.Name)?.Keys ?? [])
                owner.MarkUnreadable(under);
            root.MarkUnreadable(spare.Heading);
        }

        return root;
    }

    private static void Place(Stack<object> open, (string Key, int Line, int Column) key, TomlValue value)
    {
        if (open.Peek() is TomlTable table)
            table.Add(key.Key, value, key.Line, key.Column);
        else
            ((List<TomlValue>)open.Peek()).Add(value);
    }

    // A key that could not be read is not reported as missing too; it belongs to the table whose header stands last above it.
    private static void MarkUnreadable(TomlTable root, string text, SortedDictionary<int, string> broken)
    {
        var lines = text.Split('\n');
        var (owner, seen) = (root, 0);
        foreach (var (line, name) in broken)
        {
            for (; seen < line; seen++)
            {
                if (lines[seen].TrimStart().StartsWith('['))
                    owner = lines[seen].Trim().Trim('[', ']').Split('.').Aggregate(root, (table, part) => table.Inner(part.Trim().Trim('"')) ?? table);
            }

            owner.MarkUnreadable(name);
        }
    }

    private static TomlValue Scalar(TomlParseEvent e, TomlParser parser) => e.Kind switch
    {
        TomlParseEventKind.String => new(TomlKind.Text, parser.GetString() ?? "", 0, false, [], null, e.Line, e.Column),
        TomlParseEventKind.Integer => new(TomlKind.Whole, e.GetInt64().ToString(CultureInfo.InvariantCulture), e.GetInt64(), false, [], null, e.Line, e.Column),
        TomlParseEventKind.Float => new(
            TomlKind.Real, e.GetDouble().ToString(CultureInfo.InvariantCulture), PlainNumber.Unsigned(e.GetDouble()), false, [], null, e.Line, e.Column),
        TomlParseEventKind.Boolean => new(TomlKind.Flag, "", 0, e.GetBoolean(), [], null, e.Line, e.Column),
        _ => new(TomlKind.Moment, e.GetTomlDateTime().ToString(), 0, false, [], null, e.Line, e.Column),
    };
}
