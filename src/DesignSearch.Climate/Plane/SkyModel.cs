namespace DesignSearch.Climate.Plane;

/// <summary>How the light of the sky is spread over it.</summary>
public static class SkyModel
{
    private const double Rad = Math.PI / 180;
    private static readonly double LowestCosZenith = Math.Cos(85 * Rad);
    private static readonly double[] BinEnds = [1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2];

    // f11 f12 f13 f21 f22 f23 of the composite set, R. Perez et al., Solar Energy 44 (1990).
    private static readonly double[,] Coefficients =
    {
        { -0.008, 0.588, -0.062, -0.060, 0.072, -0.022 },
        { 0.130, 0.683, -0.151, -0.019, 0.066, -0.029 },
        { 0.330, 0.487, -0.221, 0.055, -0.064, -0.026 },
        { 0.568, 0.187, -0.295, 0.109, -0.152, -0.014 },
        { 0.873, -0.392, -0.362, 0.226, -0.462, 0.001 },
        { 1.132, -1.237, -0.412, 0.288, -0.823, 0.056 },
        { 1.060, -1.600, -0.359, 0.264, -1.127, 0.131 },
        { 0.678, -0.327, -0.250, 0.156, -1.377, 0.251 },
    };

    /// <summary>Brightness of the sky after Perez et al. (1990): how much of the diffuse light comes from around the sun and from the horizon.</summary>
    /// <param name="diffuseWPerM2">On the level [W/m²], over 0.</param>
    /// <param name="beamNormalWPerM2">[W/m²].</param>
    /// <param name="extraterrestrialNormalWPerM2">[W/m²].</param>
    /// <param name="airMass">Relative air mass.</param>
    /// <param name="zenithDeg">Sun's zenith distance [°].</param>
    public static SkyBrightness Perez(double diffuseWPerM2, double beamNormalWPerM2, double extraterrestrialNormalWPerM2, double airMass, double zenithDeg)
    {
        var z = Math.Min(zenithDeg, 90) * Rad;
        var cubed = 1.041 * z * z * z;
        var clearness = ((diffuseWPerM2 + beamNormalWPerM2) / diffuseWPerM2 + cubed) / (1 + cubed);
        var brightness = diffuseWPerM2 * airMass / extraterrestrialNormalWPerM2;
        var bin = 0;
        while (bin < 7 && clearness >= BinEnds[bin])
            bin++;
        var around = Coefficients[bin, 0] + Coefficients[bin, 1] * brightness + Coefficients[bin, 2] * z;
        var horizon = Coefficients[bin, 3] + Coefficients[bin, 4] * brightness + Coefficients[bin, 5] * z;
        return new(Math.Max(0, around), horizon);
    }

    /// <summary>How much more of the light around the sun a plane gets than the level, with the low sun held at 5°.</summary>
    internal static double SunRatio(double cosIncidence, double zenithDeg) =>
        Math.Max(0, cosIncidence) / Math.Max(LowestCosZenith, Math.Cos(zenithDeg * Rad));
}
