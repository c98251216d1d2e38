using DesignSearch.Layouts.Design.Brief;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Measures of a house against what is true of every closed body.</summary>
public sealed class GreenhouseShapeTests
{
    private const double Rad = Math.PI / 180;

    // The outward faces of a closed body add to nothing (Gauss): the cover's add to the floor's, upward.
    [Theory]
    [InlineData(6, 3, 1.8, 2.6, 0)]
    [InlineData(8, 4.5, 2, 3.5, 75)]
    [InlineData(5, 5, 1.5, 1.5, 290)]
    public void Faces_of_the_cover_close_over_the_floor(double length, double width, double eaves, double ridge, double ridgeAzimuth)
    {
        var house = House(length, width, eaves, ridge, ridgeAzimuth);
        Assert.Equal(0, house.Geometry.Facets.Sum(f => f.AreaM2 * Math.Sin(f.TiltDeg * Rad) * Math.Sin(f.AzimuthDeg * Rad)), 1e-9);
        Assert.Equal(0, house.Geometry.Facets.Sum(f => f.AreaM2 * Math.Sin(f.TiltDeg * Rad) * Math.Cos(f.AzimuthDeg * Rad)), 1e-9);
        Assert.Equal(length * width, house.Geometry.Facets.Sum(f => f.AreaM2 * Math.Cos(f.TiltDeg * Rad)), 1e-9);
        Assert.All(house.Geometry.Facets, f => Assert.InRange(f.AzimuthDeg, 0, 359.999));
        // The gables look along the ridge, walls and slopes across it.
        Assert.Equal(width * (eaves + ridge), house.Geometry.Facets.Where(f => Math.Abs(Math.Cos((f.AzimuthDeg - ridgeAzimuth) * Rad)) > 0.999).Sum(f => f.AreaM2), 1e-9);
    }

    // 6 m by 3 m, eaves 1.8 m, ridge 3.3 m: the roof rises at 45°.
    [Fact]
    public void A_house_by_hand()
    {
        var house = House(6, 3, 1.8, 3.3, 0);
        Assert.Equal((18, 45.9, 18), (house.FloorM2, Math.Round(house.VolumeM3, 9), house.PerimeterM));
        Assert.All(house.Geometry.Faces.Where(f => f.Kind is FaceKind.Roof or FaceKind.OtherRoof), f => Assert.Equal(45, Assert.Single(f.Facets).TiltDeg, 1e-9));
        Assert.All(house.Geometry.Faces.Where(f => f.Kind is FaceKind.Roof or FaceKind.OtherRoof), f => Assert.Equal(9 * Math.Sqrt(2), f.AreaM2, 1e-9));
        Assert.Equal(21.6 + 15.3 + (18 * Math.Sqrt(2)), house.CoverM2, 1e-9);
        var slopes = 18 * Math.Sqrt(2);
        Assert.Equal(((36.9 * 0.5) + (slopes * (1 + Math.Sqrt(0.5)) / 2)) / (36.9 + slopes), house.Geometry.SkyViewFactor, 1e-9);
    }

    private static Greenhouse House(double length, double width, double eaves, double ridge, double ridgeAzimuth) => new()
    {
        LengthM = length,
        WidthM = width,
        EavesM = eaves,
        RidgeM = ridge,
        RidgeAzimuthDeg = ridgeAzimuth,
        CoverUWPerM2K = 3,
        CoverLight = 0.7,
        CoverLayers = 2,
        AirChangesPerHour = 1,
        AirChangesPerHourPerMPerS = 0,
        EdgeLossWPerMK = 1,
        VentAreaM2 = 1,
        FrostLimitC = 2,
    };
}
