namespace DesignSearch.Reporting.Html;

/// <summary>One column of a table on the page.</summary>
/// <param name="Head">Its heading, unit included.</param>
/// <param name="IsFigure">True to set it flush right.</param>
internal sealed record Column(string Head, bool IsFigure = false);
