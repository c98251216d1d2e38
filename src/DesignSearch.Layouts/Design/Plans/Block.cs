namespace DesignSearch.Layouts.Design.Plans;

/// <summary>A square block of concrete under a foot or a post, level with the ground.</summary>
/// <param name="X">Its middle from the lower edge of the plate [m].</param>
/// <param name="Y">Its middle along that edge [m].</param>
/// <param name="SideM">Side [m].</param>
/// <param name="DepthM">Depth [m].</param>
public sealed record Block(double X, double Y, double SideM, double DepthM)
{
    /// <summary>Concrete in it [m³].</summary>
    public double VolumeM3 => SideM * SideM * DepthM;
}
