using DesignSearch.Layouts.Design.Plans;

namespace DesignSearch.Reporting.Drawings;

/// <summary>A body on a plan.</summary>
/// <param name="Body">The body.</param>
/// <param name="Corners">Its corners [m]; of a round one those of the square around it.</param>
internal sealed record PlannedBody(Body Body, IReadOnlyList<(double X, double Y)> Corners)
{
    /// <summary>Its middle [m].</summary>
    public (double X, double Y) Middle => (Corners.Average(c => c.X), Corners.Average(c => c.Y));
}
