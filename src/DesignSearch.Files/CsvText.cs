using System.Globalization;
using System.Text;
using CsvHelper;

namespace DesignSearch.Files;

/// <summary>
/// Writes tables after RFC 4180 with line feeds, harmless in a spreadsheet: text that a spreadsheet would run as a formula gets an apostrophe
/// in front, control characters are shown as pictures. Numbers stay numbers.
/// </summary>
public sealed class CsvText
{
    private readonly StringBuilder text = new();
    private readonly int width;

    /// <summary>Begins a table.</summary>
    /// <param name="comments">Lines to stand above the header, each behind a #.</param>
    /// <param name="header">Names of the columns, at least one.</param>
    public CsvText(IEnumerable<string> comments, params IReadOnlyList<string> header)
    {
        width = header.Count;
        foreach (var comment in comments)
            text.Append("# ").Append(OneLine(comment)).Append('\n');
        Append(header);
    }

    /// <summary>Adds a row.</summary>
    /// <param name="cells">As many as the header has: text, whole numbers, doubles, decimals; null for an empty cell.</param>
    /// <exception cref="ArgumentException">The number of cells is wrong, or one is of another type.</exception>
    public void Row(params IReadOnlyList<object?> cells)
    {
        if (cells.Count != width)
            throw new ArgumentException(FormattableString.Invariant($"The table has {width} columns, the row {cells.Count} cells."), nameof(cells));
        Append(cells.Select(Written).ToList());
    }

    /// <summary>The whole table.</summary>
    public override string ToString() => text.ToString();

    /// <summary>Text as a spreadsheet may show it: an apostrophe in front of what it would run, pictures for control characters.</summary>
    /// <param name="raw">Any text.</param>
    public static string Harmless(string raw)
    {
        var first = raw.AsSpan().TrimStart(' ');
        var isFormula = first.Length > 0 && "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20".Contains(first[0], StringComparison.Ordinal);
        return (isFormula ? "'" : "") + OneLine(raw);
    }

    private static string Written(object? cell) => cell switch
    {
        null => "",
        string raw => Harmless(raw),
        int or long => ((IFormattable)cell).ToString(null, CultureInfo.InvariantCulture),
        decimal value => value.ToString(CultureInfo.InvariantCulture),
        double value when double.IsFinite(value) => value.ToString("R", CultureInfo.InvariantCulture),
        _ => throw new ArgumentException($"A cell cannot hold '{cell}'.", nameof(cell)),
    };

    // Controls get their picture; marks that turn the direction of writing could make a name read as something else.
    private static string OneLine(string raw) => VisibleText.Of(string.Concat(raw.Select(c => c switch
    {
        < ' ' => (char)('\u2400' + c),
        '\u007F' => '\u2421',
        _ => c,
    })));

    private void Append(IReadOnlyList<string> cells)
    {
        using var writer = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(writer, CsvWriterOptions.Default with { NewLine = "\n", CommentPrefix = '#' }, true))
            csv.WriteRecord([.. cells]);
        text.Append(writer.GetStringBuilder());
    }
}
