namespace DesignSearch.Parts.Solar;

/// <summary>What a holdfast is.</summary>
public enum HoldfastForm
{
    /// <summary>A screw in the ground; needs no footing.</summary>
    GroundScrew,

    /// <summary>A bolt cast or glued into a footing.</summary>
    CastBolt,

    /// <summary>A bolt in a wall.</summary>
    WallBolt,

    /// <summary>Stops at both ends of a frame's turn.</summary>
    Stops,

    /// <summary>A bolt that someone puts through the frame.</summary>
    HandBolt,

    /// <summary>A bolt that a spring drives home and current draws back while the frame turns.</summary>
    SpringBolt,
}
