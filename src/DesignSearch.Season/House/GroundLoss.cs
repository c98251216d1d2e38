namespace DesignSearch.Season.House;

/// <summary>Heat loss of a slab on the ground in steady state.</summary>
public static class GroundLoss
{
    /// <summary>U-value of a slab after ISO 13370 [W/(m²K)].</summary>
    /// <param name="areaM2">Floor [m²], above 0.</param>
    /// <param name="perimeterM">Edge towards the outside [m], above 0.</param>
    /// <param name="soilWPerMK">Conductivity of the soil [W/(m·K)].</param>
    /// <param name="wallM">Thickness of the wall at the edge [m].</param>
    /// <param name="floorM2KPerW">Resistance of the floor's own layers [m²K/W].</param>
    public static double Iso13370(double areaM2, double perimeterM, double soilWPerMK, double wallM, double floorM2KPerW)
    {
        const double films = 0.17 + 0.04;
        var width = areaM2 / (perimeterM / 2);
        var thickness = wallM + soilWPerMK * (films + floorM2KPerW);
        return thickness < width
            ? 2 * soilWPerMK / (Math.PI * width + thickness) * Math.Log(Math.PI * width / thickness + 1)
            : soilWPerMK / (0.457 * width + thickness);
    }
}
