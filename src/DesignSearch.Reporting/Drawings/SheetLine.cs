namespace DesignSearch.Reporting.Drawings;

/// <summary>A line on a sheet.</summary>
/// <param name="Kind">How it is drawn: its class in the style.</param>
/// <param name="Points">Where it bends, ends included.</param>
/// <param name="IsClosed">True where it comes back to its beginning.</param>
internal sealed record SheetLine(string Kind, IReadOnlyList<(double X, double Y)> Points, bool IsClosed = false);
