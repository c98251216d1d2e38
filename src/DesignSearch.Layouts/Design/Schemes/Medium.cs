namespace DesignSearch.Layouts.Design.Schemes;

/// <summary>What goes through a terminal.</summary>
public enum Medium
{
    /// <summary>Water, or a mixture of it.</summary>
    Water,

    /// <summary>Electric current that drives something.</summary>
    Current,

    /// <summary>What a sensor or switch tells.</summary>
    Signal,

    /// <summary>Air that is moved.</summary>
    Air,

    /// <summary>A shaft that turns something.</summary>
    Shaft,
}
