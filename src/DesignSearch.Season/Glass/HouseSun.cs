using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Season.Glass;

/// <summary>Sun that passes the bare cover, facet by facet.</summary>
public static class HouseSun
{
    // Nothing lies on roofs from here on: EN 1991-1-3, 5.3 [°].
    private const double BaresItselfDeg = 60;

    /// <summary>Transmitted sun, hour mean [W], one entry for each hour of the winter.</summary>
    /// <param name="winter">The winter.</param>
    /// <param name="panes">The pieces of the cover.</param>
    /// <param name="plane">Gives what falls on a fixed plane behind a horizon through the winter.</param>
    /// <param name="underSnow">Share of the light that passes the snow on a pane, where snow lies [0…1].</param>
    /// <remarks>Light of sky and ground passes as if it came from one angle (Brandemuehl and Beckman 1980).</remarks>
    public static double[] TransmittedW(Winter winter, IReadOnlyList<Pane> panes, Func<Winter, Mount, HorizonProfile?, PlaneIrradiance> plane, double underSnow = 0)
    {
        ArgumentNullException.ThrowIfNull(winter);
        ArgumentNullException.ThrowIfNull(panes);
        ArgumentNullException.ThrowIfNull(plane);
        var sum = new double[winter.Hours];
        // What lies on a pane is another matter than what lies on a collector: its light is asked for without.
        var bare = winter.Snow is null ? winter : winter with { Snow = null };
        foreach (var pane in panes)
        {
            var (facet, glazing, horizon) = pane;
            var light = plane(bare, Mount.FixedAt(facet.TiltDeg, facet.AzimuthDeg), horizon);
            var sky = glazing.Transmittance(CosDeg(SkyAngleDeg(facet.TiltDeg)));
            var ground = glazing.Transmittance(CosDeg(GroundAngleDeg(facet.TiltDeg)));
            var covered = winter.Snow is null || facet.TiltDeg >= BaresItselfDeg ? null : SnowOnPlane.Covered(winter, facet.TiltDeg, light, !pane.HoldsSnow);
            for (var h = 0; h < sum.Length; h++)
            {
                var passes = facet.AreaM2 * (light.BeamWPerM2[h] * glazing.Transmittance(light.CosIncidence[h])
                    + light.SkyWPerM2[h] * sky + light.GroundWPerM2[h] * ground);
                sum[h] += covered is null ? passes : passes * (1 - covered[h] * (1 - underSnow));
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
