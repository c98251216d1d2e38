namespace DesignSearch.Parts.Mechanics;

/// <summary>Wind on a flat panel.</summary>
public static class WindForce
{
    /// <summary>Air density of the building code for wind [kg/m³] (EN 1991-1-4).</summary>
    public const double CodeDensityKgPerM3 = 1.25;

    /// <summary>Share of a plate's chord by which the wind's resultant may lie off its middle: EN 1991-1-4, 7.4.3 (2).</summary>
    public const double OffMiddle = 0.25;

    /// <summary>Velocity pressure ρ v² / 2 [Pa].</summary>
    /// <param name="windMPerS">Wind [m/s]: a gust for the pressure of a gust, the basic velocity for the basic pressure.</param>
    /// <param name="densityKgPerM3">Air density [kg/m³].</param>
    public static double PressurePa(double windMPerS, double densityKgPerM3 = CodeDensityKgPerM3) => densityKgPerM3 / 2 * windMPerS * windMPerS;

    /// <summary>The gust whose pressure this is [m/s].</summary>
    /// <param name="pressurePa">Pressure [Pa].</param>
    public static double GustMPerS(double pressurePa) => Math.Sqrt(2 * pressurePa / CodeDensityKgPerM3);

    /// <summary>Force on a panel [N].</summary>
    /// <param name="pressurePa">Pressure of the gust [Pa].</param>
    /// <param name="areaM2">Area [m²].</param>
    /// <param name="coefficient">Force coefficient, of <see cref="PlateWind"/>.</param>
    public static double ForceN(double pressurePa, double areaM2, double coefficient) => pressurePa * areaM2 * coefficient;

    /// <summary>Moment about an axis through the middle of a plate [N·m], the resultant a quarter of the chord off it.</summary>
    /// <param name="forceN">Force [N].</param>
    /// <param name="chordM">The plate's measure across the axis [m].</param>
    public static double MomentNm(double forceN, double chordM) => forceN * OffMiddle * chordM;
}
