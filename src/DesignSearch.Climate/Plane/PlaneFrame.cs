namespace DesignSearch.Climate.Plane;

/// <summary>The directions a mount can look: its normal is A + B·cos(turn) + C·sin(turn), a positive turn leading to the afternoon side.</summary>
/// <remarks>Vectors are (east, north, up).</remarks>
internal readonly struct PlaneFrame
{
    private const double Rad = Math.PI / 180;
    private readonly Vector fixedPart;
    private readonly Vector middle;
    private readonly Vector side;

    public PlaneFrame(Mount mount, double latitudeDeg)
    {
        var (sinTilt, cosTilt) = Math.SinCos(mount.TiltDeg * Rad);
        var afternoonAzimuth = mount.AzimuthDeg - 90 * MorningSign(mount.AzimuthDeg, latitudeDeg);
        var facing = Vector.Level(mount.AzimuthDeg);
        var toAfternoon = Vector.Level(afternoonAzimuth);
        var up = new Vector(0, 0, 1);
        (fixedPart, middle, side) = mount.Axis switch
        {
            MountAxis.Vertical => (up * cosTilt, facing * sinTilt, toAfternoon * sinTilt),
            MountAxis.Level => (default, facing * sinTilt + up * cosTilt, facing * -cosTilt + up * sinTilt),
            _ => (default, facing * sinTilt + up * cosTilt, toAfternoon),
        };
    }

    /// <summary>Unit normal of the plane after a turn.</summary>
    public Vector Normal(double turnRad)
    {
        var (sin, cos) = Math.SinCos(turnRad);
        return fixedPart + middle * cos + side * sin;
    }

    /// <summary>The turn that looks at the sun as nearly as the axis allows [rad], −π to π.</summary>
    public double TurnTowards(Vector sun) => Math.Atan2(sun.Dot(side), sun.Dot(middle));

    /// <summary>+1 when turning clockwise leads to the morning sun, else −1. The morning side is the easterly one in both hemispheres.</summary>
    private static int MorningSign(double azimuthDeg, double latitudeDeg)
    {
        var northerly = Math.Cos(azimuthDeg * Rad);
        return Math.Abs(northerly) > 1e-9 ? Math.Sign(northerly) : latitudeDeg < 0 ? 1 : -1;
    }
}
