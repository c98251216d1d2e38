using DesignSearch.Season.Glass;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>A face of the house's cover: flat, or a half hoop of several flat pieces.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Facets">Its flat pieces from below upwards.</param>
public sealed record HouseFace(FaceKind Kind, IReadOnlyList<Facet> Facets)
{
    /// <summary>Its area [m²].</summary>
    public double AreaM2 => Facets.Sum(f => f.AreaM2);
}
