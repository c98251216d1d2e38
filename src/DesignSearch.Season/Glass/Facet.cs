namespace DesignSearch.Season.Glass;

/// <summary>One flat piece of the cover.</summary>
/// <param name="AreaM2">Area [m²].</param>
/// <param name="TiltDeg">Tilt, 0 flat to 90 upright [°].</param>
/// <param name="AzimuthDeg">Direction it faces, clockwise from true north [°].</param>
public readonly record struct Facet(double AreaM2, double TiltDeg, double AzimuthDeg);
