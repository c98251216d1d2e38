namespace DesignSearch.Climate.Plane;

/// <summary>Where a plane looks and how it turns, in numbers.</summary>
/// <param name="Kind">Fixed or turning.</param>
/// <param name="Axis">Ignored when fixed.</param>
/// <param name="TiltDeg">Tilt of the plane in its middle position, 0 flat to 90 upright [°].</param>
/// <param name="AzimuthDeg">Direction the plane faces in its middle position, clockwise from true north [°].</param>
/// <param name="LimitAngleDeg">Largest turn to either side of the middle [°]; a negative value swaps east and west (for tests).</param>
/// <param name="SwitchHours">Two positions: hours after dawn at which a timer swings the plane over.</param>
/// <param name="Steps">Stepped: number of positions, 2 or more.</param>
public sealed record Mount(
    MountKind Kind,
    MountAxis Axis,
    double TiltDeg,
    double AzimuthDeg,
    double LimitAngleDeg = 0,
    double SwitchHours = 5.5,
    int Steps = 2)
{
    /// <summary>What the mount takes for dawn and dusk; not used when fixed.</summary>
    public LightSensor Sensor { get; init; } = new();

    /// <summary>Continuous: the drive starts when the plane has fallen this far behind the sun [°].</summary>
    public double DeadBandDeg { get; init; } = 2;

    /// <summary>A plane that does not move.</summary>
    /// <param name="tiltDeg">Tilt [°].</param>
    /// <param name="azimuthDeg">Azimuth [°].</param>
    public static Mount FixedAt(double tiltDeg, double azimuthDeg) => new(MountKind.Fixed, MountAxis.Vertical, tiltDeg, azimuthDeg);
}
