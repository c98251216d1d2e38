namespace DesignSearch.Physics;

/// <summary>Liquid water where one figure does for all temperatures.</summary>
public static class Water
{
    /// <summary>Specific heat [J/(kg·K)]: 4186, the mean of 10 to 80 °C within half a joule (IAPWS-IF97, 2007; 4178.6 to 4195.5 in between).</summary>
    public const double HeatJPerKgK = 4186;

    /// <summary>Density in round figures [kg/m³]: 1000; it falls to 972 at 80 °C (IAPWS-IF97, 2007).</summary>
    public const double DensityKgPerM3 = 1000;
}
