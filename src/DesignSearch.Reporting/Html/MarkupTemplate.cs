using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Html;

/// <summary>Collects an interpolated string as markup: whatever text stands in a hole can neither open an element nor leave an attribute.</summary>
[InterpolatedStringHandler]
internal readonly ref struct MarkupTemplate
{
    private readonly StringBuilder text;

    /// <summary>Called by the compiler.</summary>
    public MarkupTemplate(int literalLength, int formattedCount) => text = new StringBuilder(literalLength + (16 * formattedCount));

    /// <summary>A literal part of the template.</summary>
    public void AppendLiteral(string literal) => text.Append(literal);

    /// <summary>Text: escaped, made visible and cut.</summary>
    public void AppendFormatted(string? value)
    {
        foreach (var c in PlainText.Cut(value, PlainText.LongestSentence))
        {
            _ = c switch
            {
                '&' => text.Append("&amp;"),
                '<' => text.Append("&lt;"),
                '>' => text.Append("&gt;"),
                '"' => text.Append("&quot;"),
                '\'' => text.Append("&#39;"),
                _ => text.Append(c),
            };
        }
    }

    /// <summary>Markup, kept as it is.</summary>
    public void AppendFormatted(Markup value) => text.Append(value.Text);

    /// <summary>Several pieces of markup.</summary>
    public void AppendFormatted(IEnumerable<Markup> values)
    {
        foreach (var value in values)
            text.Append(value.Text);
    }

    /// <summary>A whole number, for identifiers and counts in attributes.</summary>
    public void AppendFormatted(int value) => text.Append(value.ToString(CultureInfo.InvariantCulture));

    /// <summary>A number for an attribute of a drawing, to two decimals.</summary>
    public void AppendFormatted(double value) => text.Append(value.ToString("0.##", CultureInfo.InvariantCulture));

    /// <summary>What was collected.</summary>
    public string Finish() => text.ToString();
}
