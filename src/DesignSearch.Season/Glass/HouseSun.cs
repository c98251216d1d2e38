using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Season.Glass;

/// <summary>Sun that passes the bare cover, facet by facet.</summary>
public static class HouseSun
{
    /// <summary>Transmitted sun, hour mean [W], one entry for each hour of the winter.</summary>
    /// <param name="winter">The winter.</param>
    /// <param name="panes">The pieces of the cover.</param>
    /// <param name="plane">Gives what falls on a fixed plane behind a horizon through the winter.</param>
    /// <remarks>Light of sky and ground passes as if it came from one angle (Brandemuehl and Beckman 1980).</remarks>
    public static double[] TransmittedW(Winter winter, IReadOnlyList<Pane> panes, Func<Winter, Mount, HorizonProfile?, PlaneIrradiance> plane)
    {
        ArgumentNullException.ThrowIfNull(winter);
        ArgumentNullException.ThrowIfNull(panes);
        ArgumentNullException.ThrowIfNull(plane);
        var sum = new double[winter.Hours];
        foreach (var (facet, glazing, horizon) in panes)
        {
            var light = plane(winter, Mount.FixedAt(facet.TiltDeg, facet.AzimuthDeg), horizon);
            var sky = glazing.Transmittance(CosDeg(SkyAngleDeg(facet.TiltDeg)));
            var ground = glazing.Transmittance(CosDeg(GroundAngleDeg(facet.TiltDeg)));
            for (var h = 0; h < sum.Length; h++)
            {
                sum[h] += facet.AreaM2 * (light.BeamWPerM2[h] * glazing.Transmittance(light.CosIncidence[h])
                    + light.SkyWPerM2[h] * sky + light.GroundWPerM2[h] * ground);
            }
        }

        return sum;
    }

    /// <summary>Angle from which the light of the whole sky seems to come [°].</summary>
    /// <param name="tiltDeg">Tilt of the plane, 0 to 90 [°].</param>
    public static double SkyAngleDeg(double tiltDeg) => 59.7 - 0.1388 * tiltDeg + 0.001497 * tiltDeg * tiltDeg;

    /// <summary>Angle from which the light of the whole ground seems to come [°].</summary>
    /// <param name="tiltDeg">Tilt of the plane, 0 to 90 [°].</param>
    public static double GroundAngleDeg(double tiltDeg) => 90 - 0.5788 * tiltDeg + 0.002693 * tiltDeg * tiltDeg;

    private static double CosDeg(double degrees) => Math.Cos(degrees * Math.PI / 180);
}
