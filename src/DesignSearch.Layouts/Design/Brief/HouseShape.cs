namespace DesignSearch.Layouts.Design.Brief;

/// <summary>What a greenhouse looks like from its end.</summary>
public enum HouseShape
{
    /// <summary>A ridge in the middle, a slope on either side.</summary>
    Gable,

    /// <summary>One slope, leaning on a wall.</summary>
    LeanTo,

    /// <summary>A hoop.</summary>
    Tunnel,
}
