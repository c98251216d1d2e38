namespace DesignSearch.Parts.Mechanics;

/// <summary>
/// Whether what stands in the wind keeps standing: EN 1990, table A1.2(A), loss of balance (EQU). Weight that rights counts nine tenths,
/// weight that tips eleven tenths, wind one and a half times.
/// </summary>
public static class Standing
{
    /// <summary>What weight that rights counts.</summary>
    public const double Righting = 0.9;

    /// <summary>What wind counts.</summary>
    public const double Wind = 1.5;

    private const double Tipping = 1.1;

    /// <summary>What tips, as it counts: of moments [N·m] or of forces [N].</summary>
    /// <param name="wind">By wind.</param>
    /// <param name="weight">By weight on the wrong side.</param>
    public static double Tips(double wind, double weight = 0) => (Wind * wind) + (Tipping * weight);

    /// <summary>What rights, as it counts: of moments [N·m] or of forces [N].</summary>
    /// <param name="weight">By weight.</param>
    public static double Rights(double weight) => Righting * weight;

    /// <summary>
    /// Moment of the wind on a tilted plate about the edge at its footing's foot, never the line of the ground [N·m]: the level part of
    /// the force at its height above that edge, and the upright part at its distance behind it.
    /// </summary>
    /// <param name="forceN">Force square to the plate [N], positive where it lifts.</param>
    /// <param name="tiltDeg">Slope of the plate [°].</param>
    /// <param name="heightM">Where the force acts, above the ground [m].</param>
    /// <param name="depthM">Foot of the footing below the ground [m].</param>
    /// <param name="behindM">Where the force acts, level distance from the edge [m].</param>
    public static double MomentNm(double forceN, double tiltDeg, double heightM, double depthM, double behindM)
    {
        var (sin, cos) = Math.SinCos(tiltDeg * Math.PI / 180);
        return (Math.Abs(forceN) * sin * (heightM + depthM)) + (forceN * cos * behindM);
    }

    /// <summary>Weight that rights a moment of wind and bears down a lift [N], the base symmetrical.</summary>
    /// <param name="windNm">Moment of the wind about the edge [N·m].</param>
    /// <param name="liftN">Upright part of the wind [N], 0 where it presses.</param>
    /// <param name="baseM">Depth of the base in the direction of the wind [m].</param>
    public static double WeightN(double windNm, double liftN, double baseM) =>
        Math.Max(Tips(windNm) / (Righting * baseM / 2), Tips(liftN) / Righting);
}
