using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Barrels;
using DesignSearch.Season.Benches;
using DesignSearch.Season.Covers;
using DesignSearch.Season.DayStore;
using DesignSearch.Season.Gathering;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.HeatPumps;
using DesignSearch.Season.House;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.Tests;

/// <summary>Invented layouts for a house of 3 m by 6 m.</summary>
internal static class TestLayout
{
    public static HouseNumbers House { get; } = new()
    {
        FrostLimitC = 3,
        CoverAreaM2 = 59.7,
        CoverResistanceM2KPerW = SheetResistance.FromUValue(3.6),
        SkyViewFactor = 0.6,
        FloorAreaM2 = 18,
        VolumeM3 = 44.1,
        PerimeterM = 18,
        EdgeLossWPerMK = 0.8,
        AirChangesPerHour = 0.6,
        AirChangesPerHourPerMPerS = 0.25,
        VentWPerK = 600,
    };

    public static CollectorNumbers Flat(double areaM2) => new()
    {
        AreaM2 = areaM2,
        Eta0Beam = 0.74,
        A1WPerM2K = 3.51,
        A2WPerM2K2 = 0.017,
        IncidenceB0 = 0.1,
        CapacityJPerM2K = 10620,
        FlowKgPerS = 0.015 * areaM2,
        PumpW = 20,
        EmptyAtRest = true,
    };

    public static Installation Bare { get; } = new(House, BarrelNumbers.None, TankNumbers.None, CollectorNumbers.None, PipeRunNumbers.None, ReleaseNumbers.None, HeaterNumbers.None);

    public static Installation Solar(double areaM2) => Bare with
    {
        Tank = new TankNumbers(800, 3.5, 60),
        Collector = Flat(areaM2),
        PipeRun = new PipeRunNumbers(3, 3, 20000, 20000),
        Release = new ReleaseNumbers(150, 0.1, 40, 5, 1),
        Heater = new HeaterNumbers(800, 4, 1),
    };

    /// <summary>A random layout, everything present or absent.</summary>
    public static Installation Random(Random r)
    {
        double In(double low, double high) => low + (high - low) * r.NextDouble();
        var house = House with
        {
            CoverResistanceM2KPerW = In(0, 0.4),
            LiningResistanceM2KPerW = r.NextDouble() < 0.5 ? 0 : In(0.05, 0.2),
            NightCoverResistanceM2KPerW = r.NextDouble() < 0.5 ? 0 : In(0.1, 0.6),
            AirChangesPerHour = In(0.2, 2),
            Contents = r.NextDouble() < 0.5 ? ContentsNumbers.None : new(In(5e3, 3e5), In(0.2, 4), In(0, 0.9)),
            CoverRadiation = r.NextDouble() < 0.5 ? CoverRadiation.Opaque : CoverMakeUp.Of([.. Enumerable.Repeat(new CoverLayer(0.001, In(0, 0.7), 0.25), r.Next(1, 4))], 0.03, 45).LongWave,
            CoverExchange = In(0.8, 1.6),
            Wall = r.NextDouble() < 0.5 ? WallNumbers.None : new WallNumbers(12, In(0.05, 0.3), In(0.3, 3), In(5e4, 4e5), 0.2),
        };
        var area = r.NextDouble() < 0.3 ? 0 : In(1, 12);
        var installation = new Installation(
            house,
            r.NextDouble() < 0.4 ? BarrelNumbers.None : new BarrelNumbers(In(200, 3000), In(1.5, 22), In(0.05, 0.4)),
            r.NextDouble() < 0.2 ? TankNumbers.None : new TankNumbers(In(80, 1000), In(1, 8), In(45, 90)),
            area == 0 ? CollectorNumbers.None : Flat(area) with { EmptyAtRest = r.NextDouble() < 0.5, ExchangerEffectiveness = r.NextDouble() < 0.5 ? 1 : 0.7, WindLossJPerM3K = In(0, 3) },
            new PipeRunNumbers(In(0, 12), In(0, 12), In(0, 60000), In(0, 60000)),
            r.NextDouble() < 0.2 ? ReleaseNumbers.None : new ReleaseNumbers(In(20, 400), In(0.02, 0.2), In(5, 60), In(3.5, 7), 1) { RadiantShare = In(0, 0.6) },
            r.NextDouble() < 0.4 ? HeaterNumbers.None : new HeaterNumbers(In(300, 3000), In(3, 5), 1) { RadiantShare = In(0, 0.6) });
        return r.NextDouble() < 0.7 ? installation : installation.With(new BenchNumbers(In(0.5, 15), In(1, 12), r.NextDouble() < 0.3 ? 0 : In(20, 2000), In(3, 6)));
    }

    /// <summary>The same, with every other source present or absent.</summary>
    public static Installation RandomWithSources(Random r)
    {
        double In(double low, double high) => low + (high - low) * r.NextDouble();
        var layout = Random(r);
        layout = r.NextDouble() < 0.5 ? layout : layout.With(HeatPump(In(600, 4000), In(3, 16)));
        layout = r.NextDouble() < 0.5 ? layout : layout.With(DayStore((int)In(2, 12), In(100, 600), In(5, 60), In(14, 22), In(3, 8)));

        // By a draw of its own, so that the others stay as they were drawn before there was any.
        var own = new Random((int)(1e6 * layout.House.CoverResistanceM2KPerW));
        return own.NextDouble() < 0.5 ? layout : layout.With(new GatheringNumbers(20 + (380 * own.NextDouble()), 5 + (55 * own.NextDouble()), 12 + (8 * own.NextDouble())));
    }

    /// <summary>A heat pump of some output at +7 °C outdoors.</summary>
    public static HeatPumpNumbers HeatPump(double heatW, double setC)
    {
        RatedPoint[] points = [new(-15, 0.5 * heatW, 1.8), new(-7, 0.65 * heatW, 2.2), new(2, 0.8 * heatW, 2.7), new(7, heatW, 3.6)];
        return new(OutdoorLine.Through(points, p => p.HeatW), OutdoorLine.Through(points, p => p.Cop), 0.25, 1.35, 0.25, -15, 5, true, setC);
    }

    /// <summary>A day-heat store of some pipes of 5 m.</summary>
    public static DayStoreNumbers DayStore(int pipes, double flowM3PerH, double fanW, double chargeAboveC, double setC) => DayStoreNumbers.Of(
        new(0.104, 0.11, 0.17, 1, 1), pipes, 5, 3.0 / pipes, 0.5, flowM3PerH / 3600, fanW, chargeAboveC, setC, SeasonAssumptions.Default);
}
