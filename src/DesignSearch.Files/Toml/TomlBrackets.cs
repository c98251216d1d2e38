using System.Text.RegularExpressions;

namespace DesignSearch.Files.Toml;

/// <summary>
/// Goes through a TOML text once, before the parser does, for slips whose place the parser cannot tell: brackets and quotes that
/// nothing closes, and brackets nested beyond reason, which would cost the parser its stack.
/// </summary>
internal sealed partial class TomlBrackets
{
    /// <summary>Lists and tables stand at most this deep inside each other; our files need three.</summary>
    public const int Deepest = 16;

    private readonly IReadOnlyList<string> lines;
    private readonly List<TomlSlip> slips = [];
    private readonly List<(char Sign, int Line, int Column)> open = [];
    private readonly HashSet<char> neverClosed = [];
    private readonly List<int> singles = [];
    private (int Line, int Column)? tooDeep;

    private TomlBrackets(IReadOnlyList<string> lines) => this.lines = lines;

    /// <summary>The slips in the order of the text, and the lines that stand for themselves, by index; the time is linear in the text.</summary>
    public static (IReadOnlyList<TomlSlip> Slips, IReadOnlyList<int> Singles) Find(IReadOnlyList<string> lines)
    {
        var walk = new TomlBrackets(lines);
        for (var i = 0; i < lines.Count; i++)
        {
            var first = i;
            i = walk.Line(i, out var isInside);
            if (i == first && !isInside && walk.open.Count == 0)
                walk.singles.Add(i);
        }

        walk.End(lines.Count - 1);
        return (walk.slips, walk.singles);
    }

    // Returns the line it came to: a text in triple quotes ends further down.
    private int Line(int at, out bool isInside)
    {
        if (open.Count > 0 && BeginsAnew().IsMatch(lines[at]))
            End(at - 1);
        isInside = open.Count > 0;
        if (open.Count == 0 && Header().IsMatch(lines[at]))
            return at;
        for (var c = 0; c < lines[at].Length && lines[at][c] != '#'; c++)
        {
            switch (lines[at][c])
            {
                case '[' or '{':
                    open.Add((lines[at][c], at, c + 1));
                    if (open.Count > Deepest)
                        tooDeep ??= (at, c + 1);
                    break;
                case ']' or '}' when open.Count > 0:
                    if ((open[^1].Sign, lines[at][c]) is not (('[', ']') or ('{', '}')))
                        return GiveUp(at);
                    open.RemoveAt(open.Count - 1);
                    break;
                case '"' or '\'' when IsTriple(at, c):
                    if (PastTriple(at, c + 3, lines[at][c]) is not { } end)
                    {
                        return Unclosed(at, c, TomlWords.CloseTriple);
                    }

                    (at, c) = end;
                    break;
                case '"' or '\'':
                    var past = PastQuote(lines[at], c);
                    if (past < 0)
                        return Unclosed(at, c, TomlWords.CloseQuote);
                    c = past;
                    break;
            }
        }

        if (open.Count == 0)
            TellDepth(at, at);
        else if (open[^1].Sign == '{')
            End(at);
        return at;
    }

    // What stands open when the next key begins, or at the end, was forgotten.
    private void End(int last)
    {
        if (open.Count == 0)
            return;
        var (sign, line, column) = open[^1];
        if (!TellDepth(open[0].Line, last))
            slips.Add(new(line, column, open[0].Line, last, sign == '[' ? TomlWords.CloseBracket : TomlWords.CloseBrace));
        open.Clear();
    }

    // What was to stand in the quotes goes on to where the next key begins: nothing of it is told.
    private int Unclosed(int at, int column, string expected)
    {
        // 1'500 is a number to those who write it.
        var isGrouping = column > 0 && column + 1 < lines[at].Length && char.IsAsciiDigit(lines[at][column - 1]) && char.IsAsciiDigit(lines[at][column + 1]);
        if (tooDeep is not null || isGrouping)
            return GiveUp(at);
        var last = at;
        while ((expected == TomlWords.CloseTriple || open.Count > 0) && last + 1 < lines.Count && !BeginsAnew().IsMatch(lines[last + 1]))
            last++;
        var isBehind = open.Count == 0 && lines[at][..column] is var before && before[(before.IndexOf('=', StringComparison.Ordinal) + 1)..].Any(char.IsLetter);
        slips.Add(new(at, column + 1, open.Count > 0 ? open[0].Line : at, last, isBehind ? TomlWords.OpenQuote : expected));
        open.Clear();
        return last;
    }

    private bool TellDepth(int first, int last)
    {
        if (tooDeep is not { } deep)
            return false;
        slips.Add(new(deep.Line, deep.Column, Math.Min(first, deep.Line), last, FormattableString.Invariant($"at most {Deepest} brackets inside each other")));
        tooDeep = null;
        return true;
    }

    // The parser sees better what is wrong here.
    private int GiveUp(int at)
    {
        TellDepth(open.Count > 0 ? open[0].Line : at, at);
        open.Clear();
        return at;
    }

    private bool IsTriple(int line, int column) =>
        string.CompareOrdinal(lines[line], column, lines[line][column] == '"' ? "\"\"\"" : "'''", 0, 3) == 0;

    private (int Line, int Column)? PastTriple(int line, int column, char quote)
    {
        if (neverClosed.Contains(quote))
            return null;
        for (var from = column; line < lines.Count; line++, from = 0)
        {
            for (var c = from; c < lines[line].Length; c++)
            {
                if (quote == '"' && lines[line][c] == '\\')
                    c++;
                else if (lines[line][c] == quote && IsTriple(line, c))
                    return (line, c + 2);
            }
        }

        neverClosed.Add(quote);
        return null;
    }

    private static int PastQuote(string line, int column)
    {
        for (var c = column + 1; c < line.Length; c++)
        {
            if (line[column] == '"' && line[c] == '\\')
                c++;
            else if (line[c] == line[column])
                return c;
        }

        return -1;
    }

    [GeneratedRegex(@"^\s*(\[{1,2}\s*[A-Za-z][\w.-]*\s*\]{1,2}\s*(#|$)|[A-Za-z][\w.-]*\s*=)", RegexOptions.NonBacktracking)]
    private static partial Regex BeginsAnew();

    [GeneratedRegex(@"^\s*\[", RegexOptions.NonBacktracking)]
    private static partial Regex Header();
}
