using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class HouseBlockTests
{
    private const string Room = "VDI 6007-1 (2012/2015), test case ";

    /// <summary>Two capacities with a known solution, carried by the kernel's own block in steps of 1 s.</summary>
    [Theory]
    [InlineData(15, 0, 0.25, 7.5926, 14.9296)]
    [InlineData(15, 0, 0.5, 4.2744, 14.7753)]
    [InlineData(15, 0, 1, 2.0575, 14.3809)]
    [InlineData(15, 0, 3, 0.9946, 12.7337)]
    [InlineData(15, 0, 6, 0.2419, 10.5088)]
    [InlineData(15, 0, 12, -0.9909, 6.8615)]
    [InlineData(15, 0, 24, -2.6548, 1.9384)]
    [InlineData(0, 4500, 0.5, 5.3628, 0.1123)]
    [InlineData(0, 4500, 1, 6.4713, 0.3095)]
    [InlineData(0, 4500, 3, 7.0027, 1.1332)]
    [InlineData(0, 4500, 6, 7.3790, 2.2456)]
    [InlineData(0, 4500, 12, 7.9954, 4.0692)]
    [InlineData(0, 4500, 24, 8.8274, 6.5308)]
    [InlineData(0, 4500, 72, 9.8627, 9.5938)]
    public void Two_capacities_follow_the_analytic_solution(double start, double power, double hours, double air, double mass)
    {
        var c = HouseTerms.Nothing with { AirStore = 0.5e6, FloorStore = 8e6, FloorAir = 150, LeakM3PerS = 300, SunAir = 1 };
        var house = new HouseBlock<Lane1>([c], 1, start, 0, 0, 0);
        house.Hour(new HourForcing(-5, -5, 0, power, 0, 1, 0));
        for (var s = 0; s < hours * 3600; s++)
            Advance(ref house);
        var (id, source) = ($"house G2 two capacities from {start} after {hours} h", "analytic, two capacities; implicit steps of 1 s");
        Validation.Equal(id + " air", "°C", air, Pack.At(house.Air, 0), 0.01, source, "HouseBlock");
        Validation.Equal(id + " mass", "°C", mass, Pack.At(house.Floor, 0), 0.01, source, "HouseBlock");
    }

    // 200 kg behind 12.6 W/K in air of −5 °C: 333.55 kJ/kg leave in 297 h; the slush of a tenth of a kelvin lies 0.05 K below 0 in the mean.
    [Fact]
    public void Barrels_freeze_through_in_the_time_that_their_ice_takes()
    {
        var terms = HouseTerms.Over(HouseTerms.Nothing with { BarrelStore = 200 * 4186, BarrelIce = 200 * 2100, BarrelMelts = 200 * 333_550, BarrelAir = 12.6 }, 300);
        var barrels = new BarrelsBlock<Lane1>(Lift.Of<HouseTerms<double>, HouseTerms<Lane1>, Lane1>([terms]), Lane1.Of(0));
        var steps = 0;
        for (; Pack.At(barrels.Now, 0) >= -0.1; steps++)
        {
            barrels.Eliminate(Lane1.Of(0));
            barrels.Settle(Lane1.Of(-5));
        }

        Validation.Equal("barrels, hours to freeze through", "h", 200 * 333_550 / (12.6 * 4.95) / 3600, steps / 12.0, 2, "latent heat over the loss at the middle of freezing", "BarrelsBlock");
    }

    // Steady: all heat leaves by the inner surface, i = −5 + 1000/200 = 0 °C. With u = air − i and v = floor − i: (1 − r) Q = g₁ u + g_f (u − v), r Q/2 + g_f (u − v) = g₂ v.
    [Theory]
    [InlineData(0, 7.446809, 3.191489)]
    [InlineData(0.5, 4.521277, 3.723404)]
    [InlineData(1, 1.595745, 4.255319)]
    public void What_a_heater_radiates_warms_floor_and_cover_first(double share, double air, double floor)
    {
        var c = HouseTerms.Nothing with
        {
            AirStore = 1e4,
            FloorStore = 1e4,
            InnerAir = 100,
            FloorAir = 60,
            InnerFloor = 80,
            LinkOpen = 1e9,
            LinkClosed = 1e9,
            OuterStill = 200,
            HeaterW = 1000,
            HeaterSetC = 50,
            HeaterRadiates = share,
        };
        var house = new HouseBlock<Lane1>([c], 300, 0, 0, 0, 0);
        for (var h = 0; h < 20; h++)
        {
            house.Hour(new HourForcing(-5, -5, 0, 0, 0, 1, 0));
            for (var s = 0; s < 12; s++)
                Advance(ref house);
        }

        var id = FormattableString.Invariant($"heater that radiates {share}");
        Validation.Equal(id + ", air", "°C, steady", air, Pack.At(house.Air, 0), 1e-3, "three balances solved by hand", "HouseBlock");
        Validation.Equal(id + ", floor", "°C, steady", floor, Pack.At(house.Floor, 0), 1e-3, "three balances solved by hand", "HouseBlock");
        Assert.Equal(12 * 1000, Pack.At(house.SumHeater, 0), 1e-6);
    }

    private static void Advance(ref HouseBlock<Lane1> house)
    {
        house.Eliminate();
        house.Reduce(Lane1.Of(0));
        house.Decide(Lane1.Of(0), new Offer<Lane1>[HouseBlock<Lane1>.OwnOffers]);
        house.Settle();
    }

    private static readonly double[] Tc1Day1 = [22, 22, 22, 22, 22, 22, 27.7, 27.9, 28.1, 28.4, 28.6, 28.8, 29, 29.2, 29.4, 29.6, 29.8, 30, 24.5, 24.5, 24.5, 24.5, 24.5, 24.5];
    private static readonly double[] Tc1Day10 = [37.7, 37.6, 37.5, 37.5, 37.4, 37.3, 43, 43.2, 43.3, 43.5, 43.6, 43.8, 43.9, 44.1, 44.3, 44.4, 44.6, 44.7, 39.1, 39.1, 39, 38.9, 38.9, 38.8];
    private static readonly double[] Tc1Day60 = [49.9, 49.8, 49.7, 49.6, 49.4, 49.3, 54.9, 55.1, 55.2, 55.3, 55.4, 55.5, 55.6, 55.7, 55.8, 55.9, 56.1, 56.2, 50.6, 50.4, 50.3, 50.2, 50.1, 50];
    private static readonly double[] Tc2Day1 = [22, 22, 22, 22, 22, 22, 22.6, 22.9, 23.1, 23.3, 23.5, 23.7, 23.9, 24.1, 24.3, 24.6, 24.8, 25, 24.5, 24.5, 24.5, 24.5, 24.5, 24.5];
    private static readonly double[] Tc2Day10 = [37.7, 37.7, 37.6, 37.5, 37.5, 37.4, 38, 38.2, 38.3, 38.5, 38.6, 38.8, 38.9, 39.1, 39.2, 39.4, 39.5, 39.7, 39.2, 39.1, 39.1, 39, 38.9, 38.9];
    private static readonly double[] Tc2Day60 = [50, 49.9, 49.8, 49.7, 49.6, 49.5, 50, 50.1, 50.2, 50.3, 50.5, 50.6, 50.7, 50.8, 50.9, 51, 51.1, 51.2, 50.7, 50.6, 50.4, 50.3, 50.2, 50.1];
    private static readonly double[] Tc6Day1 = [0, 0, 0, 0, 0, 0, 764, 696, 632, 570, 511, 455, 402, 351, 302, 255, 210, 167, -638, -610, -583, -557, -533, -511];
    private static readonly double[] Tc6Day10 = [-774, -742, -711, -682, -654, -627, 163, 120, 79, 40, 2, -33, -67, -99, -130, -159, -187, -214, -1004, -960, -919, -880, -843, -808];
    private static readonly double[] Tc6Day60 = [-774, -742, -711, -682, -654, -627, 163, 120, 78, 39, 2, -33, -67, -99, -130, -159, -187, -214, -1004, -960, -919, -880, -843, -808];

    [Fact]
    public void Room_case_1_convective_gains() => Case(1, false, false, 0.15, [Tc1Day1, Tc1Day10, Tc1Day60]);

    [Fact]
    public void Room_case_2_radiant_gains() => Case(2, true, false, 0.15, [Tc2Day1, Tc2Day10, Tc2Day60]);

    [Fact]
    public void Room_case_6_held_temperature() => Case(6, true, true, 1.6, [Tc6Day1, Tc6Day10, Tc6Day60]);

    // The outer wall is the solid back wall, the inner wall the floor with one layer of soil; the cover stands apart.
    private static void Case(int number, bool radiant, bool held, double tolerance, double[][] expected)
    {
        // A heater can only heat: 5 kW are taken from the air all the time, and what the heater gives beyond them counts.
        const double Taken = 5000;
        var c = HouseTerms.Nothing with
        {
            AirStore = 0,
            WallMass = 1 / (held ? 0.004367913 : 0.00436791293674),
            WallStore = held ? 1600800 : 1600848.94,
            MassOutside = 1 / (0.03895919557 + 1 / (25 * 10.5)),
            WallAir = 2.7 * 10.5,
            FloorAir = 2.24 * 75.5,
            FloorWall = 5 * 10.5,
            FloorSoil = 1 / (held ? 0.000595515 : 0.000595693407511),
            Soil1Store = held ? 14836200 : 14836354.6282,
            SunFloor = radiant ? 75.5 / 86 : 0,
            SunWall = radiant ? 10.5 / 86 : 0,
            SunAir = radiant ? 0 : 1,
            HeaterW = held ? 1e5 : 0,
        };
        var day = new HouseBlock<Lane1>([c with { HeaterSetC = 27 }], 60, 22, 22, 22, 22);
        var offers = new Offer<Lane1>[HouseBlock<Lane1>.OwnOffers];
        var worst = new double[3];
        var worstAt = new int[3];
        var check = new[] { 1, 10, 60 };
        var values = new double[3][];
        for (var d = 1; d <= 60; d++)
        {
            var at = Array.IndexOf(check, d);
            for (var h = 0; h < 24; h++)
            {
                var on = h is >= 6 and < 18;
                day.Heater.SetC = Lane1.Of(on ? 27 : 22);
                day.Hour(new HourForcing(22, 22, 0, on ? 1000 : 0, 22, 1, 0));
                for (var s = 0; s < 60; s++)
                {
                    day.Eliminate();
                    day.Reduce(Lane1.Of(held ? -Taken : 0));
                    day.Decide(Lane1.Of(0), offers);
                    day.Settle();
                }

                if (at < 0)
                    continue;
                values[at] ??= new double[24];
                var ours = held ? Pack.At(day.SumHeater, 0) / 60 - Taken : Pack.At(day.SumAir, 0) / 60;
                values[at][h] = ours;
                if (Math.Abs(ours - expected[at][h]) >= Math.Abs(worst[at]))
                    (worst[at], worstAt[at]) = (ours - expected[at][h], h);
            }
        }

        for (var i = 0; i < 3; i++)
        {
            var h = worstAt[i];
            Validation.Equal($"room VDI 6007-1 case {number} day {check[i]}", (held ? "W" : "°C") + $", the worst of 24 hours, hour {h + 1}", expected[i][h], values[i][h], tolerance, Room + number + "; steps of 60 s", "HouseBlock");
        }
    }
}
