namespace DesignSearch.Layouts.Design.Plans;

/// <summary>A thing with a size, as it stands on floor or ground.</summary>
/// <param name="Name">Name of its component in the scheme.</param>
/// <param name="Shape">What it looks like from above.</param>
/// <param name="Count">How many alike.</param>
/// <param name="WidthM">Width of each [m].</param>
/// <param name="DepthM">Depth of each, square to its width [m].</param>
/// <param name="HeightM">Height of each [m].</param>
public sealed record Body(string Name, BodyShape Shape, int Count, double WidthM, double DepthM, double HeightM)
{
    /// <summary>Its lower edge above the ground [m]; below it where that is negative.</summary>
    public double LiftM { get; init; }

    /// <summary>True where only the area of its base is known, so that width and depth are those of a square of it.</summary>
    public bool IsOnlyArea { get; init; }
}
