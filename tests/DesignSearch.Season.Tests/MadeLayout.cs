using CsCheck;
using DesignSearch.Season.Barrels;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.House;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.Tests;

/// <summary>Invented houses and installations.</summary>
internal static class MadeLayout
{
    public static HouseNumbers House { get; } = new()
    {
        FrostLimitC = 2,
        CoverAreaM2 = 70.8,
        CoverResistanceM2KPerW = SheetResistance.FromUValue(3.5),
        SkyViewFactor = 0.7,
        FloorAreaM2 = 24,
        VolumeM3 = 60,
        PerimeterM = 20,
        EdgeLossWPerMK = 0.8,
        AirChangesPerHour = 0.5,
        AirChangesPerHourPerMPerS = 0.2,
        VentWPerK = 600,
    };

    public static CollectorNumbers Collector { get; } = new()
    {
        AreaM2 = 4,
        Eta0Beam = 0.739,
        A1WPerM2K = 3.51,
        A2WPerM2K2 = 0.017,
        IncidenceB0 = 0.1,
        DiffuseModifier = 0.91,
        CapacityJPerM2K = 10620,
        FlowKgPerS = 0.08,
        PumpW = 30,
    };

    public static PipeRunNumbers Pipes { get; } = new(3, 3, 16000, 16000);

    public static ReleaseNumbers Release { get; } = new(150, 0.1, 40, 5, 1);

    public static Installation Bare { get; } = new(House, BarrelNumbers.None, TankNumbers.None, CollectorNumbers.None, PipeRunNumbers.None, ReleaseNumbers.None, HeaterNumbers.None);

    public static Installation Full { get; } = new(House, new(400, 6, 0.2), new(500, 3, 60), Collector, Pipes, Release, new(1500, 3, 1));

    /// <summary>Anything the catalogue could make, and some more.</summary>
    public static Gen<Installation> Any { get; } =
        from r in Gen.Double[0, 1].Array[16]
        from odd in Gen.Bool.Array[5]
        select new Installation(
            House with
            {
                CoverResistanceM2KPerW = 0.4 * r[0] * r[0],
                NightCoverResistanceM2KPerW = odd[0] ? r[1] : 0,
                LiningResistanceM2KPerW = odd[1] ? 0.2 * r[2] : 0,
                LiningTransmittance = 1 - 0.3 * r[2],
                AirChangesPerHour = 2 * r[3],
                // Whatever stores heat touches the air: of what a scenario can name the slowest has 14 W/K for each MJ/K.
                Contents = odd[0] ? new(3e5 * r[1], r[1] * (3.6 + 8 * r[2]), 0.1 + 0.7 * r[3]) : ContentsNumbers.None,
                CoverExchange = 0.8 + r[2],
                CoverCapacityJPerM2K = 10000 * r[15],
            },
            odd[2] ? new(1000 * r[4], 10 * r[4], 0.4 * r[4]) : BarrelNumbers.None,
            odd[3] ? new(50 + 1500 * r[5], 5 * r[6], 40 + 50 * r[6]) : TankNumbers.None,
            odd[4] ? Collector with
            {
                AreaM2 = 10 * r[7],
                FlowKgPerS = 0.4 * r[8],
                ExchangerEffectiveness = 0.3 + 0.7 * r[9],
                EmptyAtRest = r[9] > 0.5,
                WindLossJPerM3K = r[10],
                CapacityJPerM2K = 30000 * r[10],
            } : CollectorNumbers.None,
            r[11] < 0.2 ? PipeRunNumbers.None : new(10 * r[11], 9 * r[11], 60000 * r[11], 50000 * r[11]),
            r[12] < 0.3 ? ReleaseNumbers.None : new(400 * r[12], 0.2 * r[13], 60, 2 + 6 * r[13], 1),
            r[14] < 0.4 ? HeaterNumbers.None : new(4000 * r[14], 1 + 4 * r[13], 1));
}
