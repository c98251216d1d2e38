namespace DesignSearch.Physics;

/// <summary>Air where one figure does for all weathers.</summary>
public static class Air
{
    /// <summary>Density at 15 °C and sea level as loads of wind are reckoned with it [kg/m³]: 1.226, half of it the trade's 0.613 v² (common practice, no source).</summary>
    public const double WindLoadDensityKgPerM3 = 1.226;
}
