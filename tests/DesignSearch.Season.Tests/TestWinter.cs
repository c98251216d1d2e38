using DesignSearch.Climate;
using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Season.Tests;

/// <summary>Artificial winters: waves for the weather, plain geometry for the sun. Invented, the same for the same arguments.</summary>
internal static class TestWinter
{
    private const double Degree = Math.PI / 180;

    public static Winter Make(int days = 60, int warmUpDays = 10, double latitude = 45, double meanC = 2, int seed = 1, bool sun = true)
    {
        var hours = (days + warmUpDays) * 24;
        var random = new Random(seed);
        double[] New() => new double[hours];
        var (air, dew, wind, global, diffuse, beam, sky, zenith, azimuth, above, ground) = (New(), New(), New(), New(), New(), New(), New(), New(), New(), New(), New());
        var (cloud, drift) = (0.5, 0.0);
        var startDay = latitude < 0 ? 132 : 315;
        for (var h = 0; h < hours; h++)
        {
            var day = startDay + h / 24;
            cloud = Math.Clamp(cloud + 0.15 * (random.NextDouble() - 0.5), 0, 1);
            drift = 0.97 * drift + 0.8 * (random.NextDouble() - 0.5);
            wind[h] = Math.Max(0.2, 2 + 1.5 * Math.Sin(h / 37.0) + random.NextDouble());
            var hourAngle = (h % 24 + 0.5 - 12) * 15 * Degree;
            var declination = -23.45 * Degree * Math.Cos(2 * Math.PI / 365 * (day + 10));
            var phi = latitude * Degree;
            var cosZenith = Math.Sin(phi) * Math.Sin(declination) + Math.Cos(phi) * Math.Cos(declination) * Math.Cos(hourAngle);
            zenith[h] = Math.Acos(Math.Clamp(cosZenith, -1, 1)) / Degree;
            var east = -Math.Cos(declination) * Math.Sin(hourAngle);
            var north = Math.Cos(phi) * Math.Sin(declination) - Math.Sin(phi) * Math.Cos(declination) * Math.Cos(hourAngle);
            azimuth[h] = (Math.Atan2(east, north) / Degree + 360) % 360;
            above[h] = 1367;
            if (sun && cosZenith > 0.02)
            {
                beam[h] = (1 - cloud) * 850 * Math.Exp(-0.15 / cosZenith);
                diffuse[h] = (60 + 120 * cloud) * cosZenith;
                global[h] = beam[h] * cosZenith + diffuse[h];
            }

            air[h] = meanC + 5 * (1 - 0.6 * cloud) * Math.Sin(2 * Math.PI * (h % 24 - 9) / 24) + 4 * Math.Sin(h / 61.0) + 2 * drift;
            dew[h] = air[h] - 2;
            sky[h] = air[h] - 4 - 14 * (1 - cloud);
            ground[h] = 0.2;
        }

        return new Winter
        {
            Name = "artificial",
            Kind = WinterKind.Typical,
            Place = new Place("Nowhere", latitude, 0, 200, 0),
            Start = new DateTime(2001, 1, 1).AddDays(startDay - 1),
            WarmUpHours = warmUpDays * 24,
            AirC = air,
            DewPointC = dew,
            WindMPerS = wind,
            GlobalWPerM2 = global,
            DiffuseWPerM2 = diffuse,
            BeamNormalWPerM2 = beam,
            SkyC = sky,
            SunZenithDeg = zenith,
            SunAzimuthDeg = azimuth,
            ExtraterrestrialNormalWPerM2 = above,
            GroundReflectance = ground,
            Ground = new GroundClimate(meanC + 7, 8, latitude < 0 ? 210 : 28),
        };
    }

    /// <summary>A plane under an even sky; azimuth may differ before and after the turning hour (solar time).</summary>
    public static PlaneIrradiance Plane(Winter winter, double tilt, double azimuthBefore, double azimuthAfter, double turnHour = 12)
    {
        var n = winter.Hours;
        var (beam, sky, ground, cosines) = (new double[n], new double[n], new double[n], new double[n]);
        for (var h = 0; h < n; h++)
        {
            var faces = h % 24 + 0.5 < turnHour ? azimuthBefore : azimuthAfter;
            var (z, a) = (winter.SunZenithDeg[h] * Degree, (winter.SunAzimuthDeg[h] - faces) * Degree);
            cosines[h] = Math.Cos(z) * Math.Cos(tilt * Degree) + Math.Sin(z) * Math.Sin(tilt * Degree) * Math.Cos(a);
            beam[h] = winter.BeamNormalWPerM2[h] * Math.Max(0, cosines[h]);
            sky[h] = winter.DiffuseWPerM2[h] * (1 + Math.Cos(tilt * Degree)) / 2;
            ground[h] = winter.GlobalWPerM2[h] * 0.2 * (1 - Math.Cos(tilt * Degree)) / 2;
        }

        return new PlaneIrradiance { BeamWPerM2 = beam, SkyWPerM2 = sky, GroundWPerM2 = ground, CosIncidence = cosines, Moves = 0, TravelDeg = 0 };
    }

    public static PlaneIrradiance Plane(Winter winter, double tilt) => Plane(winter, tilt, Equator(winter), Equator(winter));

    public static double Equator(Winter winter) => winter.Place.LatitudeDeg < 0 ? 0 : 180;

    /// <summary>Sun through a cover that passes 70 % of the horizontal sun on 40 m² floor-projected light.</summary>
    public static WinterForcing Forcing(Winter winter, SeasonAssumptions? assumptions = null) =>
        WinterForcing.Prepare(winter, [.. winter.GlobalWPerM2.Select(g => 0.7 * 18 * 1.3 * g)], assumptions ?? SeasonAssumptions.Default);
}
