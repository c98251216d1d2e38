namespace DesignSearch.Season.Solar;

/// <summary>Where a collector without flow comes to rest; a formula, below the measured standard stagnation of a certificate.</summary>
public static class Stagnation
{
    /// <summary>Rise over the outside air [K]: root of η·G = a1 ΔT + a2 ΔT².</summary>
    /// <param name="absorbedWPerM2">Sun absorbed [W/m²], 0 or more.</param>
    /// <param name="a1WPerM2K">Loss term [W/(m²K)], above 0.</param>
    /// <param name="a2WPerM2K2">Quadratic loss term [W/(m²K²)], 0 or more.</param>
    public static double RiseK(double absorbedWPerM2, double a1WPerM2K, double a2WPerM2K2) =>
        2 * absorbedWPerM2 / (a1WPerM2K + Math.Sqrt(a1WPerM2K * a1WPerM2K + 4 * a2WPerM2K2 * absorbedWPerM2));

    /// <summary>Temperature at rest [°C] in hemispherical light of which 15 % is diffuse (the "blue sky" of ISO 9806).</summary>
    /// <param name="collector">The collector.</param>
    /// <param name="irradianceWPerM2">On its plane [W/m²]; 1000 for the standard value.</param>
    /// <param name="ambientC">Outside air [°C]; 30 for the standard value.</param>
    public static double TemperatureC(CollectorNumbers collector, double irradianceWPerM2 = 1000, double ambientC = 30) =>
        ambientC + RiseK(collector.Eta0Beam * (0.85 + 0.15 * collector.DiffuseModifier) * irradianceWPerM2, collector.A1WPerM2K, collector.A2WPerM2K2);
}
