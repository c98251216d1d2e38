using System.Text;
using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>
/// A file's own beam on planes. The file is made here, hour means of a sky given minute by minute; the figures come from a script of its own in
/// NumPy, that makes the same hours, and lays their global, diffuse and beam as they stand on each plane with the sun at mid-hour, by the published
/// coefficients of Perez et al. (1990), reflectance 0.2. Its sky followed through every minute gives figures within 0.5 % of these.
/// </summary>
public sealed class FileBeamTests
{
    private const double Rad = Math.PI / 180;
    private static readonly Lazy<Winter> North = new(() => Read(36.1, -79.95, -5, new(11, 1, 3, 31)));
    private static readonly Lazy<Winter> South = new(() => Read(-44.2, 169.8, 11, new(5, 1, 9, 30)));

    [Theory]
    [InlineData("north", 30, 90, 405.70)]
    [InlineData("north", 30, 135, 534.77)]
    [InlineData("north", 30, 180, 592.33)]
    [InlineData("north", 30, 270, 405.52)]
    [InlineData("north", 45, 90, 383.42)]
    [InlineData("north", 45, 135, 549.51)]
    [InlineData("north", 45, 180, 629.04)]
    [InlineData("north", 45, 270, 383.16)]
    [InlineData("north", 60, 90, 353.23)]
    [InlineData("north", 60, 135, 537.08)]
    [InlineData("north", 60, 180, 630.13)]
    [InlineData("north", 60, 270, 353.90)]
    [InlineData("north", 75, 90, 316.54)]
    [InlineData("north", 75, 135, 496.36)]
    [InlineData("north", 75, 180, 595.53)]
    [InlineData("north", 75, 270, 316.50)]
    [InlineData("north", 90, 90, 273.22)]
    [InlineData("north", 90, 135, 432.48)]
    [InlineData("north", 90, 180, 527.61)]
    [InlineData("north", 90, 270, 273.49)]
    [InlineData("south", 30, 90, 287.78)]
    [InlineData("south", 30, 45, 404.52)]
    [InlineData("south", 30, 0, 457.20)]
    [InlineData("south", 30, 270, 287.56)]
    [InlineData("south", 45, 90, 276.42)]
    [InlineData("south", 45, 45, 427.71)]
    [InlineData("south", 45, 0, 501.29)]
    [InlineData("south", 45, 270, 276.70)]
    [InlineData("south", 60, 90, 259.40)]
    [InlineData("south", 60, 45, 429.35)]
    [InlineData("south", 60, 0, 516.62)]
    [InlineData("south", 60, 270, 259.46)]
    [InlineData("south", 75, 90, 236.35)]
    [InlineData("south", 75, 45, 407.63)]
    [InlineData("south", 75, 0, 502.14)]
    [InlineData("south", 75, 270, 236.55)]
    [InlineData("south", 90, 90, 207.13)]
    [InlineData("south", 90, 45, 364.86)]
    [InlineData("south", 90, 0, 458.84)]
    [InlineData("south", 90, 270, 207.28)]
    public void Planes_get_what_the_beam_of_the_file_gives(string site, double tilt, double faces, double expected)
    {
        var winter = (site == "north" ? North : South).Value;
        Validation.Equal(
            $"plane own beam {site} {tilt} facing {faces}", "light of a winter on the plane [kWh/m²]", expected, Falling.On(winter, Mount.FixedAt(tilt, faces)).KwhPerM2(winter.WarmUpHours),
            0.005 * expected, "Perez et al., Solar Energy 44 (1990), recomputed independently in NumPy from the hours of the file", "PlaneModel.For");
    }

    [Fact]
    public void Beam_and_diffuse_close_with_global()
    {
        var winter = South.Value;
        for (var h = 0; h < winter.Hours; h++)
            Assert.Equal(winter.GlobalWPerM2[h], winter.DiffuseWPerM2[h] + winter.BeamNormalWPerM2[h] * Math.Max(0, Math.Cos(winter.SunZenithDeg[h] * Rad)), 1e-9);
        Assert.Contains(Enumerable.Range(0, winter.Hours), h => winter.SunZenithDeg[h] > 90 && winter.BeamNormalWPerM2[h] > 5);
    }

    private static Winter Read(double latitude, double longitude, double zone, SeasonDates season)
    {
        var text = new StringBuilder(MadeSky.F($"1,\"MADE\",XX,{zone:0.0},{latitude:0.000},{longitude:0.000},100\n"));
        text.Append("Date (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),Dry-bulb (C)\n");
        for (var h = 0; h < 8760; h++)
        {
            var (g, d, b) = (0.0, 0.0, 0.0);
            for (var m = 0; m < 60; m++)
            {
                var (beam, diffuse, sine) = At(latitude, longitude, zone, h / 24 + 1, h % 24 + (m + 0.5) / 60);
                (g, d, b) = (g + (diffuse + beam * sine) / 60, d + diffuse / 60, b + beam / 60);
            }

            var day = new DateTime(2001, 1, 1).AddDays(h / 24);
            var air = 9 - 7 * Math.Cos(2 * Math.PI * (day.DayOfYear - (latitude < 0 ? 202 : 20)) / 365) + 4 * Math.Cos(2 * Math.PI * (h % 24 - 14) / 24);
            text.Append(MadeSky.F($"{day:MM/dd}/1999,{h % 24 + 1:00}:00,{g:0.0},{b:0.0},{d:0.0},{air:0.0}\n"));
        }

        return Assert.Single(WinterMaker.FromRecord(TempFile.Read(text.ToString()), season, new() { GroundReflectance = 0.2 }));
    }

    // The sun after Spencer (1971); a beam of 0.7 to the power of the air mass to the power 0.678, more or less veiled from day to day.
    private static (double Beam, double Diffuse, double Sine) At(double latitude, double longitude, double zone, int day, double clock)
    {
        var b = 2 * Math.PI * (day - 1) / 365;
        var declination = 0.006918 - 0.399912 * Math.Cos(b) + 0.070257 * Math.Sin(b) - 0.006758 * Math.Cos(2 * b) + 0.000907 * Math.Sin(2 * b)
            - 0.002697 * Math.Cos(3 * b) + 0.00148 * Math.Sin(3 * b);
        var above = 1361 * (1.000110 + 0.034221 * Math.Cos(b) + 0.001280 * Math.Sin(b) + 0.000719 * Math.Cos(2 * b) + 0.000077 * Math.Sin(2 * b));
        var equation = 229.18 * (0.000075 + 0.001868 * Math.Cos(b) - 0.032077 * Math.Sin(b) - 0.014615 * Math.Cos(2 * b) - 0.040849 * Math.Sin(2 * b));
        var hourAngle = (clock + (longitude - 15 * zone) * 4 / 60 + equation / 60 - 12) * Math.PI / 12;
        var sine = Math.Sin(latitude * Rad) * Math.Sin(declination) + Math.Cos(latitude * Rad) * Math.Cos(declination) * Math.Cos(hourAngle);
        var clear = 0.5 + 0.5 * Math.Sin(1.7 * day);
        return sine <= 0 ? (0, 0, 0) : (above * Math.Pow(0.7, Math.Pow(1 / sine, 0.678)) * clear, above * sine * (0.10 + 0.22 * (1 - clear)), sine);
    }
}
