namespace DesignSearch.Parts.Solar;

/// <summary>How a mount turns.</summary>
public enum TurningKind
{
    /// <summary>Does not turn.</summary>
    Fixed,

    /// <summary>Morning and afternoon.</summary>
    TwoPosition,

    /// <summary>Several equal steps through the day.</summary>
    Stepped,

    /// <summary>Follows the sun.</summary>
    Continuous,
}
