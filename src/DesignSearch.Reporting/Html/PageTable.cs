using System.Globalization;

namespace DesignSearch.Reporting.Html;

/// <summary>Writes a table of the page: captioned, its first column heading each row, in a box that scrolls sideways where the screen is narrow.</summary>
internal static class PageTable
{
    /// <summary>The table.</summary>
    /// <param name="caption">What it shows.</param>
    /// <param name="columns">Columns; the first names the row.</param>
    /// <param name="rows">Rows, each as long as the columns.</param>
    /// <param name="sortable">True to let the page's script put sort buttons on the headings.</param>
    public static Markup Of(string caption, IReadOnlyList<Column> columns, IEnumerable<IReadOnlyList<Cell>> rows, bool sortable = false)
    {
        var heads = columns.Select(c => Markup.Of($"""<th scope="col"{Class(c)}>{c.Head}</th>"""));
        var lines = rows.Select(r => Markup.Of($"<tr>{r.Select((cell, i) => OneCell(cell, columns[i], i == 0))}</tr>\n"));
        return Box(caption, Markup.Of($"""
            <table{(sortable ? Markup.Of($" data-sortable") : Markup.None)}><caption>{caption}</caption>
            <thead><tr>{heads}</tr></thead>
            <tbody>
            {lines}</tbody></table>
            """));
    }

    /// <summary>The scrolling box around a table.</summary>
    public static Markup Box(string label, Markup table) => Markup.Of($"""<div class="box" role="group" tabindex="0" aria-label="{label}">{table}</div>{"\n"}""");

    private static Markup OneCell(Cell cell, Column column, bool first)
    {
        var key = cell.SortKey is { } value ? Markup.Of($""" data-key="{value.ToString("R", CultureInfo.InvariantCulture)}" """) : Markup.None;
        return first
            ? Markup.Of($"""<th scope="row"{Class(column)}{key}>{cell.Shown}</th>""")
            : Markup.Of($"<td{Class(column)}{key}>{cell.Shown}</td>");
    }

    private static Markup Class(Column column) => Markup.When(column.IsFigure, () => Markup.Of($""" class="n" """));
}
