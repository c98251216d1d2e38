using DesignSearch.Season.Benches;
using DesignSearch.Season.Compost;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.House;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.Tests;

/// <summary>The figures that are pinned, in the shape in which they were pinned first; electricity by the running times, as it was reckoned then.</summary>
internal static class PinnedFigures
{
    public static object Of(Outcome o, Installation installation)
    {
        var b = o.Books;
        var heap = installation.Find<CompostNumbers>();
        var (inHouse, inLoop, inHeap, inBench) = (b.Of(HouseFlows.House), b.Of(SolarFlows.Loop), b.Of(CompostFlows.Heap), b.Of(BenchFlows.Bench));
        var heapHours = heap is null ? 0 : o.Of(CompostFlows.PumpHours);
        var entered = b.Of(HouseFlows.Sun) + b.Of(SolarFlows.Sun) + b.Of(HeaterFlows.Heat) + b.Of(SolarFlows.ReleaseFan) + b.Of(CompostFlows.Rotting) + b.Of(BenchFlows.Heat);
        var groundGave = b.Flows.Single(f => f.Flow == HouseFlows.Ground).BackKwh;
        return new
        {
            o.SeasonHours,
            o.FrostHours,
            o.FrostDegreeHoursKh,
            o.LowestAirC,
            o.LowestHouseAirC,
            o.LowestWithinHourC,
            o.ColdestHour,
            o.PowerCutHours,
            o.PowerCutFrostHours,
            o.PowerCutLowestAirC,
            o.StandbyKwh,
            BenchKwh = b.Of(BenchFlows.Heater),
            o.CollectorYieldKwh,
            o.PumpHours,
            PumpKwh = (o.PumpHours * installation.Collector.PumpW + o.ReleaseHours * (installation.Tank.WaterKg > 0 ? installation.Release.ElectricW : 0) + heapHours * (heap?.PumpW ?? 0)) / 1000,
            o.CheapKwh,
            CompostKwh = b.Of(CompostFlows.Draw),
            CompostPumpHours = heapHours,
            CompostLowestC = o.Of(CompostFlows.LowestCore),
            CompostSolidsLeft = o.Of(CompostFlows.SolidsLeft),
            o.ReleasedKwh,
            o.ReleaseHours,
            o.TankLowestC,
            o.TankHighestC,
            o.TankMeanC,
            Ledger = new
            {
                SunIntoHouse = b.Of(HouseFlows.Sun),
                SunIntoCollector = b.Of(SolarFlows.Sun),
                Heater = b.Of(HeaterFlows.Heat),
                Bench = b.Of(BenchFlows.Heat),
                StoredInBench = inBench,
                Compost = b.Of(CompostFlows.Rotting),
                Auxiliary = b.Of(SolarFlows.ReleaseFan),
                CoverToAir = b.Of(HouseFlows.CoverToAir),
                CoverToSky = b.Of(HouseFlows.CoverToSky),
                Leakage = b.Of(HouseFlows.Leakage),
                Vents = b.Of(HouseFlows.Vents),
                Ground = b.Of(HouseFlows.Ground),
                Wall = b.Of(HouseFlows.Wall),
                CollectorLoss = b.Of(SolarFlows.CollectorLoss),
                PipeLoss = b.Of(SolarFlows.PipeLoss),
                CompostLoss = b.Of(CompostFlows.Loss),
                StoredInCompost = inHeap,
                StoredInHouse = inHouse,
                StoredInLoop = inLoop,
                Throughput = entered + groundGave + Math.Max(0, -inHouse) + Math.Max(0, -inLoop) + Math.Max(0, -inHeap) + Math.Max(0, -inBench),
                Residual = 0.0,
            },
            BalanceResidual = 0.0,
        };
    }
}
