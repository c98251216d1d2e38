using DesignSearch.Climate.Sun;

namespace DesignSearch.Climate.Plane;

/// <summary>Light from the sky and the ground on a tilted plane.</summary>
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
        return new(Math.Max(0, around), horizon, clearness, bin + 1);
    }

    /// <summary>Sky light on a plane after Perez et al. (1990) [W/m²], not below 0.</summary>
    /// <param name="diffuseWPerM2">On the level [W/m²].</param>
    /// <param name="sky">From <see cref="Perez"/>.</param>
    /// <param name="tiltDeg">Tilt of the plane [°].</param>
    /// <param name="cosIncidence">Cosine of the angle between sun and plane.</param>
    /// <param name="zenithDeg">Sun's zenith distance [°].</param>
    public static double PerezDiffuse(double diffuseWPerM2, SkyBrightness sky, double tiltDeg, double cosIncidence, double zenithDeg)
    {
        var (sinTilt, cosTilt) = Math.SinCos(tiltDeg * Rad);
        return Math.Max(0, diffuseWPerM2 * ((1 - sky.AroundSun) * (1 + cosTilt) / 2 + sky.AroundSun * SunRatio(cosIncidence, zenithDeg) + sky.Horizon * sinTilt));
    }

    /// <summary>Sky light on a plane from an even sky; Liu and Jordan (1963) [W/m²].</summary>
    /// <param name="diffuseWPerM2">On the level [W/m²].</param>
    /// <param name="tiltDeg">Tilt of the plane [°].</param>
    public static double IsotropicDiffuse(double diffuseWPerM2, double tiltDeg) => diffuseWPerM2 * (1 + Math.Cos(tiltDeg * Rad)) / 2;

    /// <summary>Sky light on a plane after Hay and Davies (1980): a second opinion beside Perez [W/m²].</summary>
    /// <param name="diffuseWPerM2">On the level [W/m²].</param>
    /// <param name="beamNormalWPerM2">[W/m²].</param>
    /// <param name="extraterrestrialNormalWPerM2">[W/m²].</param>
    /// <param name="tiltDeg">Tilt of the plane [°].</param>
    /// <param name="cosIncidence">Cosine of the angle between sun and plane.</param>
    /// <param name="zenithDeg">Sun's zenith distance [°].</param>
    public static double HayDaviesDiffuse(double diffuseWPerM2, double beamNormalWPerM2, double extraterrestrialNormalWPerM2, double tiltDeg, double cosIncidence, double zenithDeg)
    {
        var share = beamNormalWPerM2 / extraterrestrialNormalWPerM2;
        var ratio = Math.Max(0, cosIncidence) / Math.Max(Math.Cos(zenithDeg * Rad), 0.01745);
        return share * diffuseWPerM2 * ratio + (1 - share) * IsotropicDiffuse(diffuseWPerM2, tiltDeg);
    }

    /// <summary>Light thrown up by even ground onto a plane [W/m²].</summary>
    /// <param name="globalWPerM2">On the level [W/m²].</param>
    /// <param name="reflectance">Of the ground, 0 to 1.</param>
    /// <param name="tiltDeg">Tilt of the plane [°].</param>
    public static double GroundReflected(double globalWPerM2, double reflectance, double tiltDeg) => globalWPerM2 * reflectance * (1 - Math.Cos(tiltDeg * Rad)) / 2;

    /// <summary>Cosine of the angle between the sun and the normal of a plane, −1 to 1.</summary>
    /// <param name="tiltDeg">Tilt of the plane [°].</param>
    /// <param name="azimuthDeg">Direction the plane faces [°].</param>
    /// <param name="sun">Where the sun is.</param>
    public static double CosIncidence(double tiltDeg, double azimuthDeg, SunAngles sun)
    {
        var (sinTilt, cosTilt) = Math.SinCos(tiltDeg * Rad);
        var (sinZenith, cosZenith) = Math.SinCos(sun.ZenithDeg * Rad);
        return cosTilt * cosZenith + sinTilt * sinZenith * Math.Cos((sun.AzimuthDeg - azimuthDeg) * Rad);
    }

    /// <summary>How much more of the light around the sun a plane gets than the level, with the low sun held at 5°.</summary>
    internal static double SunRatio(double cosIncidence, double zenithDeg) =>
        Math.Max(0, cosIncidence) / Math.Max(LowestCosZenith, Math.Cos(zenithDeg * Rad));
}
