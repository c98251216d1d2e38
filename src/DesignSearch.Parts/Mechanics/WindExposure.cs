namespace DesignSearch.Parts.Mechanics;

/// <summary>From the mean wind of a map to the pressure of a gust near the ground: EN 1991-1-4, 4.3 to 4.5, on level ground.</summary>
public static class WindExposure
{
    private const double FieldsRoughnessM = 0.05;
    private const double TerrainFactor = 0.19;
    private const double TerrainPower = 0.07;
    private const double GustPeak = 7;

    /// <summary>Exposure factor c_e: pressure of a gust as a share of the basic pressure.</summary>
    /// <param name="terrain">What the wind has come over.</param>
    /// <param name="heightM">Height above the ground [m], up to 200; below the terrain's least height that one counts.</param>
    public static double Factor(WindTerrain terrain, double heightM)
    {
        var (roughness, least) = Of(terrain);
        var ln = Math.Log(Math.Max(heightM, least) / roughness);
        var mean = TerrainFactor * Math.Pow(roughness / FieldsRoughnessM, TerrainPower) * ln;
        return (1 + (GustPeak / ln)) * mean * mean;
    }

    // Roughness length and least height [m] of table 4.1.
    private static (double RoughnessM, double LeastM) Of(WindTerrain terrain) => terrain switch
    {
        WindTerrain.Sea => (0.003, 1),
        WindTerrain.Flat => (0.01, 1),
        WindTerrain.Fields => (FieldsRoughnessM, 2),
        WindTerrain.Suburb => (0.3, 5),
        WindTerrain.Town => (1, 10),
        _ => throw new ArgumentOutOfRangeException(nameof(terrain)),
    };
}
