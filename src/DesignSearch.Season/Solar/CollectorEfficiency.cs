namespace DesignSearch.Season.Solar;

/// <summary>Power of a collector in the form of ISO 9806:2017, per gross area.</summary>
public static class CollectorEfficiency
{
    /// <summary>Incidence modifier for beam, K = 1 − b0 (1/cos θ − 1), held within 0…1.</summary>
    /// <param name="b0">Coefficient b0, 0 to about 0.3.</param>
    /// <param name="cosIncidence">Cosine of the incidence angle; 0 or less gives 0.</param>
    public static double BeamModifier(double b0, double cosIncidence) =>
        cosIncidence <= 0 ? 0 : Math.Clamp(1 - b0 * (1 / cosIncidence - 1), 0, 1);

    /// <summary>Sun absorbed [W/m²]: η₀ (K_b·beam + K_d·diffuse).</summary>
    /// <param name="collector">The collector.</param>
    /// <param name="beamWPerM2">Beam on its plane [W/m²].</param>
    /// <param name="diffuseWPerM2">Sky and ground light on its plane [W/m²].</param>
    /// <param name="cosIncidence">Cosine of the beam's incidence angle.</param>
    public static double AbsorbedWPerM2(CollectorNumbers collector, double beamWPerM2, double diffuseWPerM2, double cosIncidence) =>
        collector.Eta0Beam * (BeamModifier(collector.IncidenceB0, cosIncidence) * beamWPerM2 + collector.DiffuseModifier * diffuseWPerM2);

    /// <summary>Loss per kelvin above the outside air [W/(m²K)]: a1 + a2·|ΔT| + a3·wind.</summary>
    /// <param name="collector">The collector.</param>
    /// <param name="riseK">Mean fluid minus outside air [K].</param>
    /// <param name="windMPerS">Wind over the collector [m/s].</param>
    public static double LossWPerM2K(CollectorNumbers collector, double riseK, double windMPerS) =>
        collector.A1WPerM2K + collector.A2WPerM2K2 * Math.Abs(riseK) + collector.WindLossJPerM3K * windMPerS;

    /// <summary>Useful power [W/m²], negative when it loses more than it absorbs.</summary>
    /// <param name="collector">The collector.</param>
    /// <param name="beamWPerM2">Beam on its plane [W/m²].</param>
    /// <param name="diffuseWPerM2">Sky and ground light on its plane [W/m²].</param>
    /// <param name="cosIncidence">Cosine of the beam's incidence angle.</param>
    /// <param name="riseK">Mean fluid minus outside air [K].</param>
    /// <param name="windMPerS">Wind over the collector [m/s].</param>
    /// <param name="warmingKPerS">How fast the mean fluid warms [K/s].</param>
    public static double PowerWPerM2(CollectorNumbers collector, double beamWPerM2, double diffuseWPerM2, double cosIncidence, double riseK, double windMPerS = 0, double warmingKPerS = 0) =>
        AbsorbedWPerM2(collector, beamWPerM2, diffuseWPerM2, cosIncidence)
        - LossWPerM2K(collector, riseK, windMPerS) * riseK
        - collector.CapacityJPerM2K * warmingKPerS;
}
