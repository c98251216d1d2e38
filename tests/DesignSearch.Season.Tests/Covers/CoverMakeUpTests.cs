using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Covers;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>Covers by their layers, in the kernel's own block: the U-value of a standard's conditions, and a heated house under two skies.</summary>
public sealed class CoverMakeUpTests
{
    private const string Standard = "EN 673 / ISO 10292, the formula worked apart with the same constants";
    private const string Balance = "balance of layers with exact grey exchange, worked apart: parallel plates, floor and air 15 °C, outside 0 °C; a test of size";

    private static readonly CoverLayer Pane = CoverLayer.Glass, Thin = new(0.003, 0, 0.837);
    private static readonly CoverLayer Film = new(0.0003, 0.7, 0.2), InfraredFilm = new(0.0003, 0.25, 0.65), Sheet = new(0.003 / 0.19, 0.02, 0.9), PlainGlass = new(0.004, 0, 0.84);

    [Theory]
    [InlineData("single 4 mm", 1, 0, 90, 5.751)]
    [InlineData("single 3 mm", -1, 0, 90, 5.785)]
    [InlineData("4-6-4 upright", 2, 0.006, 90, 3.278)]
    [InlineData("4-12-4 upright", 2, 0.012, 90, 2.850)]
    [InlineData("4-16-4 upright", 2, 0.016, 90, 2.732)]
    [InlineData("4-16-4 at 45 degrees", 2, 0.016, 45, 2.942)]
    [InlineData("4-16-4 flat", 2, 0.016, 0, 3.062)]
    [InlineData("4-12-4-12-4 upright", 3, 0.012, 90, 1.894)]
    [InlineData("4-16-4-16-4 at 45 degrees", 3, 0.016, 45, 1.875)]
    public void A_pane_loses_what_the_standard_says(string name, int panes, double gap, double tilt, double expected)
    {
        var cover = CoverMakeUp.Of([.. Enumerable.Repeat(panes < 0 ? Thin : Pane, Math.Abs(panes))], gap, tilt);
        Validation.Equal($"cover U of {name}, as the standard has it", "W/(m²K)", expected, U(cover, 0), 0.005 * expected, Standard, "HouseBlock");
    }

    // A sheet of a stated U-value has what is left of it, and loses that at the standard's conditions.
    [Theory]
    [InlineData(3.6)]
    [InlineData(2.4)]
    public void A_stated_u_value_is_met(double stated) =>
        Validation.Equal(
            $"cover U of a sheet of {stated}, as stated", "W/(m²K)", stated, U(CoverMakeUp.Of([new(SheetResistance.FromUValue(stated), 0, 0.837)], 0, 90), 0), 0.01 * stated, Standard, "HouseBlock");

    [Theory]
    [InlineData("single glass", 5.12, 6.50, 6.10)]
    [InlineData("acrylic sheet", 5.36, 6.96, 6.57)]
    [InlineData("clear film, dry", 6.46, 10.27, 9.68)]
    [InlineData("infrared film", 5.72, 8.02, 7.58)]
    [InlineData("two clear films", 4.31, 7.46, 7.42)]
    [InlineData("two infrared films", 3.25, 4.67, 4.79)]
    [InlineData("clear film outside, infrared inside", 3.51, 6.04, 6.06)]
    [InlineData("two panes, wide gap", 2.55, 3.23, 3.40)]
    [InlineData("glass with a clear film under it", 3.51, 4.40, 4.44)]
    public void A_heated_house_loses_what_its_layers_say(string name, double warmSky, double coldSky, double still)
    {
        CoverLayer[] layers = name switch
        {
            "single glass" => [PlainGlass],
            "acrylic sheet" => [Sheet],
            "clear film, dry" => [Film],
            "infrared film" => [InfraredFilm],
            "two clear films" => [Film, Film],
            "two infrared films" => [InfraredFilm, InfraredFilm],
            "clear film outside, infrared inside" => [InfraredFilm, Film],
            "two panes, wide gap" => [PlainGlass, PlainGlass],
            _ => [Film, PlainGlass],
        };
        var cover = CoverMakeUp.Of(layers, 0.1, 0);
        foreach (var (sky, belowK, wind, expected) in new[] { ("as warm as the air", 0.0, 4.0, warmSky), ("20 K colder", 20, 4, coldSky), ("20 K colder, little wind", 20, 1, still) })
            Validation.Within($"cover {name}, sky {sky}", "W/(m²K) of a heated house", 0.9 * expected, 1.1 * expected, Night(cover, belowK, wind), Balance, "HouseBlock");
    }

    // The standard's own films: 25 outside with its long-wave in it, 7.69 inside; the sky is as warm as the air.
    private static double U(CoverMakeUp cover, double skyBelowK)
    {
        var terms = Plates(cover) with
        {
            InnerAir = SheetResistance.InsideFilmWPerM2K,
            InnerAirPerRoot = 0,
            InnerFloor = 0,
            OuterStill = SheetResistance.OutsideFilmWPerM2K,
            OuterPerWind = 0,
            SkyWPerK4 = 0,
            AroundWPerK4 = 0,
        };
        return Lost(terms, 20, skyBelowK, 0) / 20;
    }

    private static double Night(CoverMakeUp cover, double skyBelowK, double wind) => Lost(Plates(cover), 15, skyBelowK, wind) / 15;

    // A square metre of floor under a square metre of cover that sees nothing but sky; both are held.
    private static HouseTerms<double> Plates(CoverMakeUp cover)
    {
        var a = SeasonAssumptions.Default.With(HouseAssumptions.BenchAreaRatio, 0).With(HouseAssumptions.CondensationWPerM2K, 0);
        var house = TestLayout.House with
        {
            CoverAreaM2 = 1,
            FloorAreaM2 = 1,
            SkyViewFactor = 1,
            CoverResistanceM2KPerW = cover.ResistanceM2KPerW,
            CoverRadiation = cover.LongWave,
            AirChangesPerHour = 0,
            AirChangesPerHourPerMPerS = 0,
            PerimeterM = 0,
        };
        return HouseTerms.From(TestLayout.Bare with { House = house }, a) with { AirStore = 1e12, FloorStore = 1e12 };
    }

    private static double Lost(HouseTerms<double> terms, double warmC, double skyBelowK, double wind)
    {
        var block = new HouseBlock<Lane1>([terms], 300, warmC, warmC, warmC, warmC);
        var offers = new Offer<Lane1>[HouseBlock<Lane1>.OwnOffers];
        var forcing = new HourForcing(0, -skyBelowK, wind, 0, warmC, 1, 0);
        for (var h = 0; h < 48; h++)
        {
            block.Hour(forcing);
            for (var s = 0; s < 12; s++)
            {
                block.Eliminate();
                block.Reduce(Lane1.Of(0));
                block.Decide(Lane1.Of(0), offers);
                block.Settle();
            }
        }

        return (Pack.At(block.Outer, 0) * Pack.At(block.SumCover, 0) + Pack.At(block.ToSky(12), 0)) / 12;
    }
}
