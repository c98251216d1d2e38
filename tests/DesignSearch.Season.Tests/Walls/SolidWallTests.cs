using DesignSearch.Climate.Winters;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Glass;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Walls;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>A wall that a house leans on, a room behind it, and a wall round its foot, against sums by hand.</summary>
public sealed class SolidWallTests
{
    private const double AirC = 10, OutsideC = -10, SkyC = -22, Wind = 3, GroundC = 8, RoomC = 20;

    // Front 5 × 1.8, two ends 3 × (1.8 + 2.6)/2, roof 5 × √(3² + 0.8²); floor 15, air 15 × 2.2, edge 5 + 2 × 3; wall 5 × 2.6.
    private static readonly Facet[] Facets = [new(9, 90, 180), new(6.6, 90, 270), new(6.6, 90, 90), new(15.524175, 14.931417, 180)];

    // Brick of U 2.1: 1/2.1 − 2/7.69 = 0.216112, half of it on either side of the mass, the room's film behind.
    private static readonly WallNumbers Brick = new(13, 0.108056, 0.108056 + 0.130039, 390_000, 13.0 / 28) { HasRoomBehind = true };

    private static readonly HouseNumbers House = new()
    {
        FrostLimitC = 3,
        CoverAreaM2 = 37.724175,
        CoverResistanceM2KPerW = SheetResistance.FromUValue(3.6),
        SkyViewFactor = ((22.2 * 0.5) + (15.524175 * 0.983118)) / 37.724175,
        FloorAreaM2 = 15,
        VolumeM3 = 33,
        PerimeterM = 11,
        EdgeLossWPerMK = 1.26,
        AirChangesPerHour = 1,
        AirChangesPerHourPerMPerS = 0,
        VentWPerK = 0,
        Wall = Brick,
    };

    [Theory]
    [InlineData("heated room", RoomC)]
    [InlineData("open air", OutsideC)]
    public void A_lean_to_is_held_by_what_a_sum_facet_by_facet_says(string behind, double behindC)
    {
        var isRoom = behind == "heated room";
        var wall = isRoom ? Brick : Brick with { HasRoomBehind = false };
        var plant = Bare(House with { Wall = wall });
        var ours = Steady(isRoom ? plant.With(new RoomBehindNumbers(RoomC)) : plant);
        var leak = 33.0 / 3600 * SeasonAssumptions.Default.AirVolumetricCapacityJPerM3K * WinterForcing.Density(OutsideC, 0);
        var hand = new FacetByFacet
        {
            Facets = [.. Facets.Select(f => (f, (1 + Math.Cos(f.TiltDeg * Math.PI / 180)) / 2))],
            SheetM2KPerW = SheetResistance.FromUValue(3.6),
            FloorM2 = 15,
            EdgeWPerK = 11 * 1.26,
            LeakWPerK = leak,
            Wall = wall,
        };
        var (heat, room) = hand.Hold(AirC, OutsideC, SkyC, Wind, GroundC, behindC);
        Validation.Equal(
            $"lean-to 5 × 3 m against {behind}, held at 10 °C in −10 °C", "W", heat, ours.HeaterW, 0.03 * heat, "by hand, every facet with its own surfaces and sky; air held", "HouseBlock");
        Validation.Equal(
            $"lean-to 5 × 3 m against {behind}, through its wall", "W", room, ours.RoomW, 0.03 * Math.Abs(room), "by hand, every facet with its own surfaces and sky; air held", "HouseBlock");
        // What an air room gives is far from nothing, and the other way round without one.
        Assert.True(isRoom ? room > 250 : room < -250, $"{room}");
        Assert.InRange(ours.Residual, 0, 1e-9);
    }

    // By the trade's sum: cover 37.724175 × 3.6, air 33 × 1253/3600, edge 11 × 1.26; a wall with the open air behind adds 13 × 1/(0.130039 + 0.216112 + 0.130039).
    [Fact]
    public void Its_loss_by_the_trades_sum()
    {
        Assert.Equal(161.1528, HouseLoss.CoefficientWPerK(Bare(House)), 1e-3);
        Assert.Equal(161.1528 + 27.3, HouseLoss.CoefficientWPerK(Bare(House with { Wall = Brick with { HasRoomBehind = false } })), 1e-2);
        Assert.Equal(161.1528 + (8 * 2.1), HouseLoss.CoefficientWPerK(Bare(House).With(Base(8, 0))), 1e-2);
    }

    // The air is held, so that what a wall at its side takes is U A ΔT and nothing else moves: 8 m² of U 2.1 over 20 K; what is buried through 1/2.1 − 0.04 + 0.7 m²K/W to ground 2 K colder.
    [Fact]
    public void A_base_wall_takes_what_its_u_value_says()
    {
        var without = Steady(Bare(House with { Wall = WallNumbers.None }));
        Validation.Equal(
            "base wall of 8 m², U 2.1, over 20 K", "W", 336, Steady(Bare(House with { Wall = WallNumbers.None }).With(Base(8, 0))).HeaterW - without.HeaterW, 0.5,
            "U A ΔT, films of EN 673", "BaseWallNumbers");
        Validation.Equal(
            "base wall, 8 m² of it buried, over 2 K", "W", 16 / (0.47619 - 0.04 + 0.7), Steady(Bare(House with { Wall = WallNumbers.None }).With(Base(0, 8))).HeaterW - without.HeaterW, 0.1,
            "resistances in series", "BaseWallNumbers");
    }

    [Fact]
    public void A_heavy_base_wall_evens_the_nights_and_its_books_close()
    {
        var winter = MadeWinter.Of(40, 10, meanC: 2, swingK: 8);
        var forcing = MadeWinter.Forcing(winter);
        Outcome Run(double capacity) => SeasonSimulator.Run(forcing, new LayoutCase(MadeLayout.Bare.With(Base(8, 4) with { CapacityJPerM2K = capacity }), null));
        var (light, heavy) = (Run(1000), Run(390_000));
        Assert.True(heavy.LowestAirC > light.LowestAirC + 0.3, $"{heavy.LowestAirC} against {light.LowestAirC}");
        Assert.All([light, heavy], o => Assert.InRange(o.BalanceResidual, 0, 1e-9));
        Assert.All(heavy.Books.Stored, s => Assert.InRange(
            heavy.Books.Flows.Sum(f => (f.Flow.To == s.Store.Id ? f.Kwh : 0) - (f.Flow.From == s.Store.Id ? f.Kwh : 0)) - s.Kwh, -1e-9 * heavy.Books.ThroughputKwh, 1e-9 * heavy.Books.ThroughputKwh));
        Assert.True(heavy.Books.Of(WallFlows.Outside) > 10 && Math.Abs(heavy.Books.Of(WallFlows.Ground)) > 1);
    }

    [Fact]
    public void A_floor_below_the_ground_outside_is_warmer_in_winter()
    {
        var winter = MadeWinter.Of(60, 10, meanC: -4);
        double Lowest(double below) => SeasonSimulator.Run(
            WinterForcing.Prepare(winter, new double[winter.Hours], SeasonAssumptions.Default, null, below), new LayoutCase(MadeLayout.Bare, null)).LowestAirC;
        Assert.True(Lowest(1) > Lowest(0) + 0.1, $"{Lowest(1)} against {Lowest(0)}");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(8)]
    public void Walls_have_the_same_bits_at_any_width(int width)
    {
        var winter = MadeWinter.Of(20, 5);
        var forcing = MadeWinter.Forcing(winter);
        var random = new Random(5);
        var cases = Enumerable.Range(0, 13).Select(i =>
        {
            var layout = TestLayout.Random(random) is var plain && i % 2 == 0 ? plain with { House = plain.House with { Wall = Brick } } : plain;
            layout = i % 2 == 0 ? layout.With(new RoomBehindNumbers(10 + i)) : layout;
            layout = i % 3 == 0 ? layout.With(Base(1 + i, i / 2)) : layout;
            return new LayoutCase(layout, layout.Collector.AreaM2 > 0 ? MadeWinter.Plane(winter) : null);
        }).ToArray();
        var together = new Outcome[cases.Length];
        SeasonSimulator.Run(forcing, cases, together, null, 300, width);
        for (var i = 0; i < cases.Length; i++)
        {
            Assert.Equal(SeasonSimulator.Run(forcing, cases[i]), together[i]);
            Assert.InRange(together[i].BalanceResidual, 0, 1e-9);
        }
    }

    private static BaseWallNumbers Base(double open, double buried) => new(open, buried, (1 / 2.1) - (1 / 7.69) - 0.04, 0.7, 390_000);

    private static Installation Bare(HouseNumbers house) => TestLayout.Bare with { House = house };

    // The last day of a winter that is the same in every hour.
    private static (double HeaterW, double RoomW, double Residual) Steady(Installation plant)
    {
        var days = 150;
        double[] Same(double value) => [.. Enumerable.Repeat(value, days * 24)];
        var made = MadeWinter.Of(days, 10);
        var winter = made with
        {
            Place = made.Place with { ElevationM = 0 },
            AirC = Same(OutsideC),
            SkyC = Same(SkyC),
            WindMPerS = Same(Wind),
            GlobalWPerM2 = Same(0),
            DiffuseWPerM2 = Same(0),
            BeamNormalWPerM2 = Same(0),
            SunZenithDeg = Same(110),
            Ground = new GroundClimate(GroundC, 0, 35),
        };
        var (heater, room) = (0.0, 0.0);
        var forcing = WinterForcing.Prepare(winter, Same(0), SeasonAssumptions.Default);
        var outcome = SeasonSimulator.Run(forcing, new LayoutCase(plant with { Heater = new HeaterNumbers(20_000, AirC, 1) }, null), row =>
        {
            heater = row.HeaterW;
            room = plant.Find<RoomBehindNumbers>() is null ? 0 : row.More[WallFlows.RoomW];
        });
        if (plant.House.Wall is { AreaM2: > 0, HasRoomBehind: false })
            room = -outcome.Books.Of(HouseFlows.Wall) / outcome.SeasonHours * 1000;
        return (heater, room, outcome.BalanceResidual);
    }
}
