using DesignSearch.Climate;

namespace DesignSearch.Season;

/// <summary>Sun that passes the cover of a greenhouse.</summary>
public static class HouseSun
{
    private const double Degree = Math.PI / 180;

    /// <summary>Sun through all faces, hour by hour [W]; lining and what stays as heat are not in it.</summary>
    /// <param name="winter">The winter.</param>
    /// <param name="facets">Faces of the cover.</param>
    /// <param name="glazing">Its sheets.</param>
    /// <param name="plane">Irradiance of a plane through the winter.</param>
    public static double[] TransmittedW(Winter winter, IReadOnlyList<Facet> facets, Glazing glazing, Func<Winter, Mount, PlaneIrradiance> plane)
    {
        var sum = new double[winter.Hours];
        foreach (var facet in facets)
        {
            var light = plane(winter, Mount.FixedAt(facet.TiltDeg, facet.AzimuthDeg));
            // Diffuse light counts as coming at one effective angle: Brandemuehl and Beckman 1980.
            var tilt = facet.TiltDeg;
            var sky = glazing.Transmittance(Math.Cos((59.7 - 0.1388 * tilt + 0.001497 * tilt * tilt) * Degree));
            var ground = glazing.Transmittance(Math.Cos((90 - 0.5788 * tilt + 0.002693 * tilt * tilt) * Degree));
            for (var h = 0; h < sum.Length; h++)
                sum[h] += facet.AreaM2 * (light.BeamWPerM2[h] * glazing.Transmittance(light.CosIncidence[h]) + light.SkyWPerM2[h] * sky + light.GroundWPerM2[h] * ground);
        }

        return sum;
    }
}
