namespace DesignSearch.Parts.Solar;

/// <summary>What keeps a stand where it is.</summary>
public enum Founding
{
    /// <summary>Feet on the ground, screwed into it or bolted to footings.</summary>
    Feet,

    /// <summary>One post, cast into one footing.</summary>
    Post,

    /// <summary>Bolts in a wall; no footing.</summary>
    Wall,

    /// <summary>Weight that is laid on trays; nothing in the ground.</summary>
    Ballast,
}
