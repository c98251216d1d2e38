using DesignSearch.Climate.Plane;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class SkyModelTests
{
    private const string Pvlib = "pvlib-python, tests/test_irradiance.py";

    [Theory]
    [InlineData("flat", 0, 0, 0, 0, 1, Pvlib)]
    [InlineData("square on", 30, 180, 30, 180, 1, Pvlib)]
    [InlineData("from behind", 30, 180, 150, 0, -1, Pvlib)]
    [InlineData("wall aside", 90, 0, 30, 60, 0.25, Pvlib)]
    [InlineData("wall behind", 90, 0, 30, 170, -0.4924038, Pvlib)]
    [InlineData("steep south", 60, 0, 68, 20, 0.94184, "recomputed independently")]
    [InlineData("half north", 45, 180, 60, 200, 0.92900, "recomputed independently")]
    [InlineData("wall north", 90, 180, 75, 150, 0.83652, "recomputed independently")]
    public void Sun_meets_the_plane_at_the_right_angle(string name, double tilt, double faces, double zenith, double azimuth, double expected, string source) =>
        Validation.Equal($"plane B1 {name}", "cosine of incidence", expected, Falling.CosIncidence(tilt, faces, new(zenith, azimuth)), 1e-5, source, "PlaneFrame.Normal");

    [Theory]
    [InlineData("at 43 north", 43, -13.95, 35.2, "Duffie and Beckman, example 1.6.1 (from memory: 35), recomputed")]
    [InlineData("at 38.54 north", 38.54, -14, 33.7, "published worked solution (0.8319), recomputed")]
    public void Sun_given_by_hour_angle_meets_a_tilted_plane(string name, double latitude, double declination, double expected, string source)
    {
        // Half past ten solar time, tilt 45 degrees, facing 15 degrees west of south.
        const double degree = Math.PI / 180;
        var (sin, cos) = (Math.Sin(latitude * degree), Math.Cos(latitude * degree));
        var (rise, level) = (Math.Sin(declination * degree), Math.Cos(declination * degree));
        var (eastward, upright) = (Math.Sin(-22.5 * degree), Math.Cos(-22.5 * degree));
        var zenith = Math.Acos(sin * rise + cos * level * upright) / degree;
        var azimuth = 180 + Math.Atan2(level * eastward, sin * level * upright - cos * rise) / degree;
        Validation.Equal($"plane B1 hour angle {name}", "incidence, °", expected, Math.Acos(Falling.CosIncidence(45, 195, new(zenith, azimuth))) / degree, 0.05, source, "PlaneFrame.Normal");
    }

    [Theory]
    [InlineData(1, 40.46149818, 316.1949056, 82.85457044, 66.71410338, 7.58831596, 35.7284, 27.1775, 31.4605)]
    [InlineData(2, 118.45831879, 939.95469881, 10.56413562, 144.76567754, 1.01688136, 104.6013, 102.9949, 109.0843)]
    [InlineData(3, 62.03376265, 646.22886049, 72.41687122, 287.04104128, 3.27930443, 54.7772, 33.1909, 45.4554)]
    public void Sky_light_agrees_with_the_library(int row, double diffuse, double beam, double zenith, double azimuth, double airMass, double isotropic, double hayDavies, double perez)
    {
        const double above = 1321.1656;
        var cosine = Falling.CosIncidence(40, 180, new(zenith, azimuth));
        Validation.Equal($"plane B5 {row} even sky", "sky light, tilt 40° [W/m²]", isotropic, Falling.Even(diffuse, 40), 1e-3, Pvlib, "SkyLight.On");
        Validation.Equal($"plane B5 {row} Hay-Davies", "sky light, tilt 40° [W/m²]", hayDavies, Falling.Sky(SkySplit.HayDavies, diffuse, beam, above, airMass, zenith, 40, cosine), 0.005, Pvlib, "SkyLight.On");
        Validation.Equal($"plane B5 {row} Perez", "sky light, tilt 40° [W/m²]", perez, Falling.Sky(SkySplit.Perez, diffuse, beam, above, airMass, zenith, 40, cosine), 0.01, Pvlib, "SkyLight.On");
    }

    [Theory]
    [InlineData("T1", 60, 0, 68, 20, 500, 90, 1330, 2.645, 277.303, 470.922, 67.500, 127.192, 150.592, 0.42162, 0.20716, 13.865)]
    [InlineData("T3", 90, 180, 75, 150, 450, 60, 1407, 3.810, 176.469, 376.432, 30.000, 82.427, 107.866, 0.39171, 0.22759, 17.647)]
    public void Winter_examples_come_out(
        string id, double tilt, double faces, double zenith, double azimuth, double beam, double diffuse, double above, double airMass, double global,
        double onPlane, double isotropic, double hayDavies, double perez, double around, double horizon, double ground)
    {
        const string source = "Perez et al., Solar Energy 44 (1990), Hay and Davies (1980); recomputed independently, agrees with pvlib";
        var cosine = Falling.CosIncidence(tilt, faces, new(zenith, azimuth));
        var sky = SkyModel.Perez(diffuse, beam, above, airMass, zenith);
        Validation.Equal($"plane B5 {id} beam", "beam on the plane [W/m²]", onPlane, SkyLight.Of(SkySplit.Perez, beam, diffuse, above, airMass, zenith, 0).On(cosine, 0).Beam, 0.01, source, "SkyLight.On");
        Validation.Equal($"plane B5 {id} even sky", "sky light [W/m²]", isotropic, Falling.Even(diffuse, tilt), 0.001, source, "SkyLight.On");
        Validation.Equal($"plane B5 {id} Hay-Davies", "sky light [W/m²]", hayDavies, Falling.Sky(SkySplit.HayDavies, diffuse, beam, above, airMass, zenith, tilt, cosine), 0.01, source, "SkyLight.On");
        Validation.Equal($"plane B5 {id} Perez", "sky light [W/m²]", perez, Falling.Sky(SkySplit.Perez, diffuse, beam, above, airMass, zenith, tilt, cosine), 0.02, source, "SkyLight.On");
        Validation.Equal($"plane B5 {id} F1", "share around the sun", around, sky.AroundSun, 2e-5, source, "SkyModel.Perez");
        Validation.Equal($"plane B5 {id} F2", "share of the horizon", horizon, sky.Horizon, 2e-5, source, "SkyModel.Perez");
        Validation.Equal($"plane B5 {id} ground", "light from the ground [W/m²]", ground, Falling.Ground(global, 0.2, tilt), 0.001, source, "SkyLight.On");
    }

    [Fact]
    public void Ground_light_and_even_sky_agree_with_the_library()
    {
        Validation.Equal("plane B5 ground", "ground light, tilt 40°, 900 W/m², reflectance 0.25 [W/m²]", 26.320, Falling.Ground(900, 0.25, 40), 0.001, Pvlib, "SkyLight.On");
        Validation.Equal("plane B5 even sky", "sky light, tilt 40°, 100 W/m² [W/m²]", 88.3022, Falling.Even(100, 40), 1e-4, Pvlib, "SkyLight.On");
    }
}
