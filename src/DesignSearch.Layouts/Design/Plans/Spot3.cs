namespace DesignSearch.Layouts.Design.Plans;

/// <summary>A point at a frame [m].</summary>
/// <param name="X">From the lower edge of the plate to its upper one.</param>
/// <param name="Y">Along the lower edge.</param>
/// <param name="Z">Above the ground.</param>
public readonly record struct Spot3(double X, double Y, double Z)
{
    /// <summary>Way to another point [m].</summary>
    /// <param name="other">The other.</param>
    public double To(Spot3 other) =>
        Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)) + ((Z - other.Z) * (Z - other.Z)));
}
