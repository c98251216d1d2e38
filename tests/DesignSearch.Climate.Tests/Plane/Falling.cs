using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Tests;

/// <summary>Asks the program's own lines what falls on one plane.</summary>
internal static class Falling
{
    /// <summary>Cosine of incidence on a plane that stands still.</summary>
    public static double CosIncidence(double tiltDeg, double azimuthDeg, SunAngles sun) =>
        Normal(tiltDeg, azimuthDeg).Dot(Vector.Towards(sun.ZenithDeg, sun.AzimuthDeg));

    /// <summary>Sky light on it.</summary>
    public static double Sky(SkySplit split, double diffuse, double beam, double above, double airMass, double zenithDeg, double tiltDeg, double cosIncidence) =>
        SkyLight.Of(split, beam, diffuse, above, airMass, zenithDeg, 0).On(cosIncidence, Normal(tiltDeg, 0).Up).Sky;

    /// <summary>Sky light on it from an even sky: no beam, so nothing stands around the sun.</summary>
    public static double Even(double diffuse, double tiltDeg) => Sky(SkySplit.HayDavies, diffuse, 0, 1361, 1, 0, tiltDeg, 1);

    /// <summary>Ground light on it.</summary>
    public static double Ground(double global, double reflectance, double tiltDeg) =>
        SkyLight.Of(SkySplit.HayDavies, 0, 0, 1361, 1, 0, global * reflectance).On(0, Normal(tiltDeg, 0).Up).Ground;

    /// <summary>A mount through a winter.</summary>
    public static PlaneIrradiance On(Winter winter, Mount mount, HorizonProfile? horizon = null, SkySplit split = SkySplit.Perez) =>
        PlaneModel.For(new WinterLight(winter, horizon, split), mount);

    private static Vector Normal(double tiltDeg, double azimuthDeg) => new PlaneFrame(Mount.FixedAt(tiltDeg, azimuthDeg), 45).Normal(0);
}
