using DesignSearch.Climate.Sun;
using DesignSearch.Season.Glass;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>
/// What hides the sky from a piece of the cover: the wall behind a lean-to, and what stands about the house. The wall is taken to run on to both sides; what
/// it reflects is not counted, as little is known of it.
/// </summary>
internal static class SkyShade
{
    private const double Rad = Math.PI / 180;
    private const double DirectionDeg = 5;
    private const int Steps = 90;

    /// <summary>Share of the sky in what a piece of the cover sees [0…1].</summary>
    /// <param name="facet">The piece.</param>
    /// <param name="body">The house.</param>
    /// <param name="wall">The wall it leans on, or none.</param>
    /// <param name="own">What stands about the house, where the builder told that by itself; hills that were told for the whole site do not count here.</param>
    public static double SkyView(Facet facet, HouseGeometry body, BackWall? wall, HorizonProfile? own = null) =>
        Altitude(facet, body, wall, own) is { } altitude ? Seen(facet, altitude) : Free(facet);

    /// <summary>The horizon of a piece of the cover: the wall where it stands higher, and what stands about the house, else about the site.</summary>
    public static HorizonProfile? Horizon(Facet facet, HouseGeometry body, BackWall? wall, HorizonProfile? own, HorizonProfile? site)
    {
        if (Altitude(facet, body, wall, own) is not { } altitude)
            return site;
        var hills = own is null ? site : null;
        double Higher(double azimuth) => Math.Max(hills?.AltitudeAt(azimuth) ?? 0, altitude(azimuth));
        var around = Enumerable.Range(0, (int)(360 / DirectionDeg)).Select(i => i * DirectionDeg);
        // Of the even sky the piece loses what is hidden of its own, and what the site's hills hide of a level one.
        return new([.. around.Select(a => (a, Higher(a)))], Seen(facet, altitude) / Free(facet) * (hills?.SkyShare ?? 1));
    }

    private static Func<double, double>? Altitude(Facet facet, HouseGeometry body, BackWall? wall, HorizonProfile? own)
    {
        var above = wall is null ? default : Above(facet, body, wall);
        return (wall, above.HeightM > 0, own) switch
        {
            ({ } solid, true, null) => a => AltitudeDeg(solid, above, a),
            ({ } solid, true, { } hills) => a => Math.Max(AltitudeDeg(solid, above, a), hills.AltitudeAt(a)),
            (_, _, { } hills) => hills.AltitudeAt,
            _ => null,
        };
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
