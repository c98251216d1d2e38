namespace DesignSearch.Parts.Mechanics;

/// <summary>Wind on a flat panel that stands free.</summary>
public static class WindForce
{
    /// <summary>Air density of the building code for wind [kg/m³] (EN 1991-1-4).</summary>
    public const double CodeDensityKgPerM3 = 1.25;

    /// <summary>Gust pressure ρ v² / 2 [Pa].</summary>
    /// <param name="windMPerS">Gust [m/s].</param>
    /// <param name="densityKgPerM3">Air density [kg/m³].</param>
    public static double PressurePa(double windMPerS, double densityKgPerM3 = CodeDensityKgPerM3) => densityKgPerM3 / 2 * windMPerS * windMPerS;

    /// <summary>Force on a panel [N].</summary>
    /// <param name="pressurePa">Gust pressure [Pa].</param>
    /// <param name="areaM2">Area [m²].</param>
    /// <param name="coefficient">Force coefficient: 1.2 to 1.5 for a plate that stands free, both ways (common practice, no source).</param>
    public static double ForceN(double pressurePa, double areaM2, double coefficient) => pressurePa * areaM2 * coefficient;

    /// <summary>Moment about an axis [N·m].</summary>
    /// <param name="forceN">Force [N].</param>
    /// <param name="eccentricityM">Distance between the axis and where the force acts [m]: at least a tenth of the panel's chord
    /// (common practice, no source), half of it for a hinge at the edge.</param>
    public static double MomentNm(double forceN, double eccentricityM) => forceN * eccentricityM;
}
