namespace DesignSearch.Season;

/// <summary>Power of a collector in the form of ISO 9806.</summary>
public static class CollectorEfficiency
{
    /// <summary>q = η0 (Kb Gb + Kd Gd) − a1 ΔT − a2 ΔT² [W/m²], steady.</summary>
    /// <param name="eta0Beam">η0 for beam.</param>
    /// <param name="beamWPerM2">Beam on the plane, times its modifier [W/m²].</param>
    /// <param name="diffuseModifier">Kd.</param>
    /// <param name="diffuseWPerM2">Diffuse on the plane [W/m²].</param>
    /// <param name="a1WPerM2K">a1 [W/(m²K)].</param>
    /// <param name="a2WPerM2K2">a2 [W/(m²K²)].</param>
    /// <param name="differenceK">Mean fluid minus air [K].</param>
    public static double PowerWPerM2(double eta0Beam, double beamWPerM2, double diffuseModifier, double diffuseWPerM2, double a1WPerM2K, double a2WPerM2K2, double differenceK) =>
        eta0Beam * (beamWPerM2 + diffuseModifier * diffuseWPerM2) - a1WPerM2K * differenceK - a2WPerM2K2 * differenceK * differenceK;

    /// <summary>Incidence modifier for beam: 1 − b0 (1/cos θ − 1), not below 0; 0 behind the plane.</summary>
    /// <param name="b0">b0.</param>
    /// <param name="cosIncidence">cos θ.</param>
    public static double BeamModifier(double b0, double cosIncidence) => cosIncidence <= 0 ? 0 : Math.Max(0, 1 - b0 * (1 / cosIncidence - 1));

    /// <summary>Temperature difference at which the loss eats all gain [K]. It lies far below a measured stagnation: never use it for safety.</summary>
    /// <param name="gainWPerM2">η0 G [W/m²].</param>
    /// <param name="a1WPerM2K">a1 [W/(m²K)].</param>
    /// <param name="a2WPerM2K2">a2 [W/(m²K²)], above 0.</param>
    public static double StagnationDifferenceK(double gainWPerM2, double a1WPerM2K, double a2WPerM2K2) =>
        (-a1WPerM2K + Math.Sqrt(a1WPerM2K * a1WPerM2K + 4 * a2WPerM2K2 * gainWPerM2)) / (2 * a2WPerM2K2);
}
