namespace DesignSearch.Climate.Sun;

/// <summary>Light under a cloudless sky.</summary>
public static class ClearSky
{
    /// <summary>Global irradiance on the level under a clear sky of middling haze [W/m²]; B. Haurwitz, Journal of Meteorology 2 (1945).</summary>
    /// <param name="cosZenith">Cosine of the sun's zenith distance; 0 or below gives 0.</param>
    public static double HaurwitzWPerM2(double cosZenith) => cosZenith <= 0 ? 0 : 1098 * cosZenith * Math.Exp(-0.059 / cosZenith);
}
