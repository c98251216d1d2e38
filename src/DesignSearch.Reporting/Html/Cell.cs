namespace DesignSearch.Reporting.Html;

/// <summary>One cell of a table on the page.</summary>
/// <param name="Shown">What is read.</param>
/// <param name="SortKey">What sorting goes by, where that is not the text itself.</param>
internal sealed record Cell(Markup Shown, double? SortKey = null)
{
    /// <summary>A cell of plain text.</summary>
    public static implicit operator Cell(string text) => new(Markup.Of($"{text}"));

    /// <summary>A cell of a figure that sorts by its full value.</summary>
    public static Cell Figure(string text, double value) => new(Markup.Of($"{text}"), double.IsFinite(value) ? value : null);
}
