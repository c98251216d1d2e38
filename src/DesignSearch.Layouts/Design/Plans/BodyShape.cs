namespace DesignSearch.Layouts.Design.Plans;

/// <summary>What a body looks like from above.</summary>
public enum BodyShape
{
    /// <summary>A rectangle.</summary>
    Square,

    /// <summary>A circle; its width is its diameter.</summary>
    Round,

    /// <summary>A rectangle that things stand under or on, such as a bench.</summary>
    Table,

    /// <summary>Pipes side by side in the ground under the floor: so many, each of that depth, over that width.</summary>
    Buried,

    /// <summary>Collectors on frames, each frame of that width; depth and height are those of the tilted plate.</summary>
    Frame,
}
