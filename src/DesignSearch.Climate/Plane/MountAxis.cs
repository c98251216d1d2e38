namespace DesignSearch.Climate.Plane;

/// <summary>The axis about which a collector turns.</summary>
public enum MountAxis
{
    /// <summary>Upright post: the azimuth changes, the tilt stays.</summary>
    Vertical,

    /// <summary>Axis lying in the collector's plane along its slope, as if the collector rocked east and west.</summary>
    Sloping,

    /// <summary>Level axis along the foot of the collector: the tilt changes, the azimuth stays. A positive turn lays the plane flatter.</summary>
    Level,
}
