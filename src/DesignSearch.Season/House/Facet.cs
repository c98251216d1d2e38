namespace DesignSearch.Season;

/// <summary>One flat face of a greenhouse's cover.</summary>
/// <param name="AreaM2">Area [m²].</param>
/// <param name="TiltDeg">Tilt from flat [°].</param>
/// <param name="AzimuthDeg">Direction it faces, clockwise from true north [°].</param>
public readonly record struct Facet(double AreaM2, double TiltDeg, double AzimuthDeg);
