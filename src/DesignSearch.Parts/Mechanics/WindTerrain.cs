namespace DesignSearch.Parts.Mechanics;

/// <summary>What the wind has come over: the terrain categories 0 to IV of EN 1991-1-4, table 4.1.</summary>
public enum WindTerrain
{
    /// <summary>Open sea, or a coast that lies open to it (0).</summary>
    Sea,

    /// <summary>A lake, or flat land with hardly a plant (I).</summary>
    Flat,

    /// <summary>Low plants, single trees or houses far apart (II).</summary>
    Fields,

    /// <summary>Villages, suburbs, wood (III).</summary>
    Suburb,

    /// <summary>A town (IV).</summary>
    Town,
}
