namespace DesignSearch.Parts.Solar;

/// <summary>The axis about which a mount turns.</summary>
public enum TurningAxis
{
    /// <summary>Does not turn.</summary>
    None,

    /// <summary>An upright post: the azimuth changes, the tilt stays.</summary>
    Vertical,

    /// <summary>An axis that lies along the slope of the collector.</summary>
    Sloping,
}
