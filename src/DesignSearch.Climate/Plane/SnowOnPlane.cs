using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Plane;

/// <summary>How much of a plane lies under snow, hour by hour.</summary>
public static class SnowOnPlane
{
    // It may slide in an hour where air is warmer than light on the plane over this, and then goes down so much of the slope: Marion et al. 2013, Solar Energy 97:112.
    private const double SlidesWPerM2K = -80;
    private const double SlideShare = 0.197;

    // A day's snow: 5 cm of 100 kg/m³ (own choice); a degree-day of thaw takes 4 mm (2.5 to 5.5: Hock 2003, J. Hydrology 282, from memory).
    private const double DayMm = 5;
    private const double ThawMmPerKDay = 4;

    private const int BrushedAtHour = 9;

    // Snow does not lie on what is all but upright (own choice; roofs bear none from 60° on: EN 1991-1-3).
    private const double UprightDeg = 85;

    /// <summary>Covered share of a plane [0…1], one entry for each hour of the winter; no snow, no share.</summary>
    /// <remarks>
    /// All of it is covered on a day that brings snow. After it the snow slides, if it can, melts by the air alone, whatever lies behind the plane, and is brushed
    /// off where somebody does so. A plane that turns is taken as it stands in its middle.
    /// </remarks>
    /// <param name="winter">The winter with its snow.</param>
    /// <param name="tiltDeg">Tilt of the plane, 0 flat to 90 upright [°].</param>
    /// <param name="light">What falls on the plane without snow.</param>
    /// <param name="slides">False where both sides of a hoop hold each other's snow (Shimada 1990, J. Snow Engineering 6(3)).</param>
    public static double[] Covered(Winter winter, double tiltDeg, PlaneIrradiance light, bool slides = true)
    {
        ArgumentNullException.ThrowIfNull(winter);
        ArgumentNullException.ThrowIfNull(light);
        var shares = new double[winter.Hours];
        if (winter.Snow is not { } snow || tiltDeg >= UprightDeg)
            return shares;
        var slide = slides ? SlideShare * Math.Sin(tiltDeg * Math.PI / 180) : 0;
        var (covered, mm) = (0.0, 0.0);
        for (var h = 0; h < shares.Length; h++)
        {
            if (snow.FallsOnDay[h / LyingSnow.HoursPerDay])
            {
                (covered, mm) = (1, mm + (DayMm / LyingSnow.HoursPerDay));
            }
            else
            {
                mm -= ThawMmPerKDay * Math.Max(0, winter.AirC[h]) / LyingSnow.HoursPerDay;
                if (winter.AirC[h] > (light.BeamWPerM2[h] + light.SkyWPerM2[h] + light.GroundWPerM2[h]) / SlidesWPerM2K)
                    covered -= slide;
                if (mm <= 0 || covered <= 0 || (snow.IsBrushed && h % LyingSnow.HoursPerDay == BrushedAtHour))
                    (covered, mm) = (0, 0);
            }

            shares[h] = covered;
        }

        return shares;
    }
}
