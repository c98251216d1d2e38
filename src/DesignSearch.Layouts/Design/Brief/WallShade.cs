using DesignSearch.Climate.Sun;
using DesignSearch.Season.Glass;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>
/// What the wall behind a lean-to hides of the sky. It is taken to run on to both sides; what it reflects is not counted, as little is known of it.
/// </summary>
internal static class WallShade
{
    private const double Rad = Math.PI / 180;
    private const double DirectionDeg = 5;
    private const int Steps = 90;

    /// <summary>Share of the sky in what a piece of the cover sees [0…1].</summary>
    public static double SkyView(Facet facet, HouseGeometry body, BackWall? wall) =>
        wall is null || Above(facet, body, wall) is not { HeightM: > 0 } above ? Free(facet) : Seen(facet, a => AltitudeDeg(wall, above, a));

    /// <summary>The horizon of a piece of the cover: that of the site, and the wall where it stands higher.</summary>
    public static HorizonProfile? Horizon(Facet facet, HouseGeometry body, BackWall? wall, HorizonProfile? site)
    {
        if (wall is null || Above(facet, body, wall) is not { HeightM: > 0 } above)
            return site;
        double Altitude(double azimuth) => Math.Max(site?.AltitudeAt(azimuth) ?? 0, AltitudeDeg(wall, above, azimuth));
        var around = Enumerable.Range(0, (int)(360 / DirectionDeg)).Select(i => i * DirectionDeg);
        // Of the even sky the piece loses what the wall hides of it, and what the hills hide of a level one.
        var share = Seen(facet, a => AltitudeDeg(wall, above, a)) / Free(facet) * (site?.SkyShare ?? 1);
        return new([.. around.Select(a => (a, Altitude(a)))], share);
    }

    private static double Free(Facet facet) => (1 + Math.Cos(facet.TiltDeg * Math.PI / 180)) / 2;

    // From the middle of a piece: how much higher the wall is, and how far off. Pieces are found by their kind: front, ends, roof.
    private static (double HeightM, double AwayM) Above(Facet facet, HouseGeometry body, BackWall wall)
    {
        var (foot, eaves, ridge) = (body.Profile[0].AboveM, body.Profile[1].AboveM, body.Profile[^1].AboveM);
        if (facet.TiltDeg < 90)
            return (wall.TopM - (eaves + ridge) / 2, body.WidthM / 2);
        var isFront = Math.Cos((facet.AzimuthDeg - wall.AzimuthDeg) * Rad) < -0.5;
        return isFront ? (wall.TopM - (foot + eaves) / 2, body.WidthM) : (wall.TopM - (foot + (eaves + ridge) / 2) / 2, body.WidthM / 2);
    }

    private static double AltitudeDeg(BackWall wall, (double HeightM, double AwayM) above, double azimuthDeg)
    {
        var towards = Math.Cos((azimuthDeg - wall.AzimuthDeg) * Rad);
        return towards <= 0 ? 0 : Math.Atan(above.HeightM * towards / above.AwayM) / Rad;
    }

    // (1/π) ∫∫ max(0, n·s) cos h dh da over the sky that is left.
    private static double Seen(Facet facet, Func<double, double> altitudeDeg)
    {
        var (sinTilt, cosTilt) = Math.SinCos(facet.TiltDeg * Rad);
        var (sum, step) = (0.0, Rad * 90 / Steps);
        for (var i = 0; i < 4 * Steps; i++)
        {
            var azimuth = (i + 0.5) * 90 / Steps;
            var (facing, least) = (Math.Cos((azimuth - facet.AzimuthDeg) * Rad), altitudeDeg(azimuth) * Rad);
            for (var j = 0; j < Steps; j++)
            {
                var h = (j + 0.5) * step;
                if (h >= least)
                    sum += Math.Max(0, cosTilt * Math.Sin(h) + sinTilt * Math.Cos(h) * facing) * Math.Cos(h);
            }
        }

        return sum * step * step / Math.PI;
    }
}
