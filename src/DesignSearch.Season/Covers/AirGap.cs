using DesignSearch.Physics;

namespace DesignSearch.Season.Covers;

/// <summary>Convection in a closed gap of air between two sheets, EN 673.</summary>
public static class AirGap
{
    /// <summary>Difference over all gaps of a pane together [K].</summary>
    public const double StandardDifferenceK = 15;

    // Air at 10 °C and the sea (from memory).
    private const double DensityKgPerM3 = 1.232, ViscosityPaS = 1.761e-5, ConductivityWPerMK = 0.02496, HeatJPerKgK = 1008;

    /// <summary>Convection and conduction from sheet to sheet, warmer below or inside [W/(m²K)].</summary>
    /// <param name="gapM">Its width [m], above 0.</param>
    /// <param name="tiltDeg">0 flat, 90 upright; the constants of the standard run straight between [°].</param>
    /// <param name="differenceK">Between its two sides [K].</param>
    public static double ConvectionWPerM2K(double gapM, double tiltDeg, double differenceK)
    {
        var grashof = Gravity.StandardMPerS2 * Math.Pow(gapM, 3) * differenceK * DensityKgPerM3 * DensityKgPerM3 / (CoverMakeUp.MeanK * ViscosityPaS * ViscosityPaS);
        var prandtl = ViscosityPaS * HeatJPerKgK / ConductivityWPerMK;
        var (factor, power) = tiltDeg >= 45
            ? (Between(0.10, 0.035, (tiltDeg - 45) / 45), Between(0.31, 0.38, (tiltDeg - 45) / 45))
            : (Between(0.16, 0.10, tiltDeg / 45), Between(0.28, 0.31, tiltDeg / 45));
        return Math.Max(1, factor * Math.Pow(grashof * prandtl, power)) * ConductivityWPerMK / gapM;
    }

    private static double Between(double from, double to, double share) => from + (to - from) * share;
}
