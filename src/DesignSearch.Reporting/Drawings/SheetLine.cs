namespace DesignSearch.Reporting.Drawings;

/// <summary>A line on a sheet.</summary>
/// <param name="Kind">How it is drawn: its class in the style.</param>
/// <param name="Points">Where it bends, ends included.</param>
/// <param name="IsClosed">True where it comes back to its beginning.</param>
internal sealed record SheetLine(string Kind, IReadOnlyList<(double X, double Y)> Points, bool IsClosed = false)
{
    /// <summary>Its length.</summary>
    public double Length => Points.Zip(Points.Skip(1), (a, b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)))).Sum();
}
