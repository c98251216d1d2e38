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

    // One sky in each of the eight classes of clearness, with the sun high and low.
    [Theory]
    [InlineData(1, 50, 1.5, 150, 8, 0.03510, -0.06730)]
    [InlineData(2, 50, 1.5, 150, 38, 0.11114, -0.03340)]
    [InlineData(3, 50, 1.5, 150, 91, 0.21765, 0.02173)]
    [InlineData(4, 50, 1.5, 150, 178, 0.34148, 0.07165)]
    [InlineData(5, 50, 1.5, 150, 355, 0.49229, 0.15050)]
    [InlineData(6, 50, 1.5, 150, 660, 0.56796, 0.20081)]
    [InlineData(7, 50, 1.5, 150, 1091, 0.48220, 0.19200)]
    [InlineData(8, 50, 1.5, 150, 1650, 0.40577, 0.14739)]
    [InlineData(1, 70, 2.9, 60, 5, 0, -0.07767)]
    [InlineData(2, 70, 2.9, 60, 26, 0.03284, -0.04599)]
    [InlineData(3, 70, 2.9, 60, 63, 0.12226, 0.01505)]
    [InlineData(4, 70, 2.9, 60, 122, 0.23150, 0.07246)]
    [InlineData(5, 70, 2.9, 60, 243, 0.38062, 0.16816)]
    [InlineData(6, 70, 2.9, 60, 452, 0.47050, 0.25120)]
    [InlineData(7, 70, 2.9, 60, 748, 0.41684, 0.27996)]
    [InlineData(8, 70, 2.9, 60, 1130, 0.33076, 0.28661)]
    public void Each_class_of_sky_has_its_brightness(int sky, double zenith, double airMass, double diffuse, double beam, double around, double horizon)
    {
        const string source = "Perez et al., Solar Energy 44 (1990), composite coefficients; worked out outside the program";
        var found = SkyModel.Perez(diffuse, beam, 1361, airMass, zenith);
        Validation.Equal($"plane B5 class {sky} at {zenith} F1", "share around the sun", around, found.AroundSun, 2e-5, source, "SkyModel.Perez");
        Validation.Equal($"plane B5 class {sky} at {zenith} F2", "share of the horizon", horizon, found.Horizon, 2e-5, source, "SkyModel.Perez");
    }

    [Fact]
    public void Ground_light_and_even_sky_agree_with_the_library()
    {
        Validation.Equal("plane B5 ground", "ground light, tilt 40°, 900 W/m², reflectance 0.25 [W/m²]", 26.320, Falling.Ground(900, 0.25, 40), 0.001, Pvlib, "SkyLight.On");
        Validation.Equal("plane B5 even sky", "sky light, tilt 40°, 100 W/m² [W/m²]", 88.3022, Falling.Even(100, 40), 1e-4, Pvlib, "SkyLight.On");
    }
}
