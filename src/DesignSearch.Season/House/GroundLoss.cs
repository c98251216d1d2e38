namespace DesignSearch.Season;

/// <summary>Steady loss of a floor on the ground after ISO 13370.</summary>
public static class GroundLoss
{
    private const double InsideResistance = 0.17;
    private const double OutsideResistance = 0.04;

    /// <summary>U-value of a slab on ground [W/(m²K)]: B' = A/(P/2), dt = w + λ (Rsi + Rf + Rse).</summary>
    /// <param name="areaM2">Floor A [m²].</param>
    /// <param name="perimeterM">Edge P towards the outside [m].</param>
    /// <param name="soilWPerMK">Conductivity λ of the ground [W/(m·K)].</param>
    /// <param name="wallM">Thickness w of the walls [m].</param>
    /// <param name="floorResistanceM2KPerW">Resistance Rf of the floor [m²K/W].</param>
    public static double SlabU(double areaM2, double perimeterM, double soilWPerMK, double wallM, double floorResistanceM2KPerW)
    {
        var width = areaM2 / (perimeterM / 2);
        var equivalent = wallM + soilWPerMK * (InsideResistance + floorResistanceM2KPerW + OutsideResistance);
        return equivalent < width
            ? 2 * soilWPerMK / (Math.PI * width + equivalent) * Math.Log(Math.PI * width / equivalent + 1)
            : soilWPerMK / (0.457 * width + equivalent);
    }
}
