namespace DesignSearch.Climate.Sun;

/// <summary>Light on the level from how much of the sky clouds cover; F. Kasten and G. Czeplak, Solar Energy 24 (1980), fitted to ten years of Hamburg.</summary>
internal static class CloudSky
{
    /// <summary>Global irradiance [W/m²]: (910 sin h − 30) · (1 − 0.75 N^3.4), not below 0.</summary>
    /// <param name="sinAltitude">Sine of the sun's altitude h.</param>
    /// <param name="cover">Covered part of the sky N, 0 to 1.</param>
    public static double GlobalWPerM2(double sinAltitude, double cover) =>
        Math.Max(0, 910 * sinAltitude - 30) * (1 - 0.75 * Math.Pow(Math.Clamp(cover, 0, 1), 3.4));

    /// <summary>Diffuse share of it: 0.3 + 0.7 N².</summary>
    /// <param name="cover">Covered part of the sky N, 0 to 1.</param>
    public static double DiffuseShare(double cover)
    {
        var n = Math.Clamp(cover, 0, 1);
        return 0.3 + 0.7 * n * n;
    }
}
