using DesignSearch.Season.Assumptions;

namespace DesignSearch.Season.Compost;

/// <summary>Formulas of a compost heap.</summary>
public static class CompostHeap
{
    // Height over width of a round heap with upright sides (common practice, no source), film on its outside, and ground under it (estimates).
    private const double Slender = 0.6;
    private const double OutsideFilm = 20;
    private const double GroundWPerM2K = 0.5;

    /// <summary>Rate of rotting over that at 20 °C: 1.066^(T − 20) − 1.21^(T − 60), not below 0.</summary>
    /// <param name="coreC">Core T [°C].</param>
    /// <remarks>Source: Haug, The Practical Handbook of Compost Engineering (1993), as quoted in secondary texts.</remarks>
    public static double RateFactor(double coreC) => Math.Max(0, Math.Pow(1.066, coreC - 20) - Math.Pow(1.21, coreC - 60));

    /// <summary>Surface towards the air of a round heap, sides and top [m²].</summary>
    /// <param name="volumeM3">Its volume [m³].</param>
    public static double SurfaceM2(double volumeM3)
    {
        var width = WidthM(volumeM3);
        return Math.PI * width * width * (Slender + 0.25);
    }

    /// <summary>Its sides alone [m²].</summary>
    /// <param name="volumeM3">Its volume [m³].</param>
    public static double SideM2(double volumeM3) => Math.PI * WidthM(volumeM3) * HeightM(volumeM3);

    /// <summary>Ground that it stands on [m²].</summary>
    /// <param name="volumeM3">Its volume [m³].</param>
    public static double GroundM2(double volumeM3) => Math.PI / 4 * WidthM(volumeM3) * WidthM(volumeM3);

    /// <summary>Its height [m].</summary>
    /// <param name="volumeM3">Its volume [m³].</param>
    public static double HeightM(double volumeM3) => Slender * WidthM(volumeM3);

    /// <summary>Loss of the core to the outside [W/K]: through the heap's own outer layer, the wrap and the film, and into the ground.</summary>
    /// <param name="volumeM3">Volume [m³].</param>
    /// <param name="wrapM2KPerW">Resistance of the wrap [m²K/W]; 0 without.</param>
    /// <param name="assumptions">Thickness and conductivity of the outer layer.</param>
    public static double LossWPerK(double volumeM3, double wrapM2KPerW, SeasonAssumptions assumptions)
    {
        ArgumentNullException.ThrowIfNull(assumptions);
        var shell = assumptions[CompostAssumptions.ShellM] / assumptions[CompostAssumptions.ConductivityWPerMK];
        return SurfaceM2(volumeM3) / (shell + wrapM2KPerW + 1 / OutsideFilm) + GroundM2(volumeM3) * GroundWPerM2K;
    }

    /// <summary>From core to house air through water that goes round between coil and pipe in the house [W/K]: ṁc/(1/ε₁ + 1/ε₂ − 1), ε = 1 − exp(−UA/ṁc).</summary>
    /// <param name="coilWPerK">Core to water, whole coil [W/K].</param>
    /// <param name="houseWPerK">Water to house air, whole pipe [W/K].</param>
    /// <param name="flowWPerK">Flow times specific heat ṁc [W/K].</param>
    public static double CoilWPerK(double coilWPerK, double houseWPerK, double flowWPerK)
    {
        if (!(coilWPerK > 0 && houseWPerK > 0 && flowWPerK > 0))
            return 0;
        double Share(double ua) => -Math.Exp(-ua / flowWPerK) + 1;
        return flowWPerK / (1 / Share(coilWPerK) + 1 / Share(houseWPerK) - 1);
    }

    private static double WidthM(double volumeM3) => Math.Cbrt(volumeM3 / (Math.PI / 4 * Slender));
}
