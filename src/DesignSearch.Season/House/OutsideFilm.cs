namespace DesignSearch.Season.House;

/// <summary>Published films between a surface and the wind [W/(m²K)].</summary>
public static class OutsideFilm
{
    /// <summary>Watmuff et al. 1977, convection only: 2.8 + 3.0 v.</summary>
    /// <param name="windMPerS">Wind over the surface [m/s].</param>
    public static double Watmuff(double windMPerS) => 2.8 + 3.0 * windMPerS;

    /// <summary>McAdams, radiation included, up to 5 m/s: 5.7 + 3.8 v.</summary>
    /// <param name="windMPerS">Wind over the surface [m/s].</param>
    public static double McAdams(double windMPerS) => 5.7 + 3.8 * windMPerS;
}
