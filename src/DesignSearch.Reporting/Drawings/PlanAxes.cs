using DesignSearch.Layouts.Design.Plans;

namespace DesignSearch.Reporting.Drawings;

/// <summary>
/// Where a plan's points lie, east and north: they are reckoned from the gable that the pipe leaves by, inward, and from the wall away from the sun.
/// </summary>
internal sealed class PlanAxes
{
    private readonly (double East, double North) ridge;
    private readonly (double East, double North) sunward;

    /// <summary>Takes the house's ridge and where the collector faces; without one the sides are the ridge's own.</summary>
    public PlanAxes(SitePlan site, StandPlan? frame)
    {
        var along = Towards(site.House.RidgeAzimuthDeg);
        var across = Towards(site.House.RidgeAzimuthDeg + 90);
        var faces = frame is not null ? Towards(frame.AzimuthDeg) : across;
        ridge = Dot(faces, along) > 1e-9 ? (-along.East, -along.North) : along;
        IsRightSunward = Dot(faces, across) >= 0;
        sunward = IsRightSunward ? across : (-across.East, -across.North);
    }

    /// <summary>True where the side on the right hand of one who looks along the ridge is the one towards the sun.</summary>
    public bool IsRightSunward { get; }

    /// <summary>A step of a metre towards an azimuth [°].</summary>
    public static (double East, double North) Towards(double azimuthDeg)
    {
        var (sin, cos) = Math.SinCos(azimuthDeg * Math.PI / 180);
        return (sin, cos);
    }

    /// <summary>A point so far inward and from the wall away from the sun [m].</summary>
    public (double X, double Y) At(double inward, double sunwards) =>
        ((ridge.East * inward) + (sunward.East * sunwards), (ridge.North * inward) + (sunward.North * sunwards));

    /// <summary>The corners of a rectangle along the axes.</summary>
    public IReadOnlyList<(double X, double Y)> Square(double a, double b, double width, double depth) =>
        [At(a, b), At(a + width, b), At(a + width, b + depth), At(a, b + depth)];

    /// <summary>A direction by the axes: outwards from the gable, and sunwards.</summary>
    public (double Outwards, double Sunwards) Of((double East, double North) direction) => (-Dot(direction, ridge), Dot(direction, sunward));

    private static double Dot((double East, double North) a, (double East, double North) b) => (a.East * b.East) + (a.North * b.North);
}
