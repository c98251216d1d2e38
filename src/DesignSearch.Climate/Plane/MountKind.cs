namespace DesignSearch.Climate.Plane;

/// <summary>How a collector stands or turns.</summary>
public enum MountKind
{
    /// <summary>Does not move.</summary>
    Fixed,

    /// <summary>Two positions: morning and afternoon.</summary>
    TwoPosition,

    /// <summary>Several equal steps through the day.</summary>
    Stepped,

    /// <summary>Follows the sun about its axis.</summary>
    Continuous,
}
