using DesignSearch.Climate.Winters;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.Kernel;

/// <summary>Takes one layout's figures out of the lanes.</summary>
internal static class OutcomeReader
{
    private const double JoulePerKwh = 3.6e6;

    public static Outcome Read<T>(ref Batch<T> batch, int lane, int seasonHours, double step, LoopCoefficients loop, Installation installation)
        where T : unmanaged, ILane<T>
    {
        var tally = batch.Tally;
        double Kwh(in T sum) => Pack.At(sum, lane) * step / JoulePerKwh;
        double At(in T value) => Pack.At(value, lane);
        var (tank, heap, hasBench) = (loop.HasTank, installation.Compost, installation.Bench.AreaM2 > 0);
        var (pumpHours, releaseHours) = (At(tally.Pump) * step / 3600, At(tally.ReleaseShare) * step / 3600);
        var (rots, heapHours) = (heap.VolumeM3 > 0, At(tally.CompostShare) * step / 3600);
        return new Outcome
        {
            SeasonHours = seasonHours,
            FrostHours = (int)At(tally.FrostHours),
            FrostDegreeHoursKh = At(tally.DegreeHours),
            LowestAirC = At(tally.LowestAir),
            LowestHouseAirC = At(tally.LowestHouse),
            LowestWithinHourC = At(hasBench ? batch.Bench.Lowest : batch.House.LowestAir),
            ColdestHour = (int)At(tally.ColdestHour),
            PowerCutHours = (int)At(tally.CutHours),
            PowerCutFrostHours = (int)At(tally.CutFrostHours),
            PowerCutLowestAirC = At(tally.CutHours) > 0 ? At(tally.CutLowestAir) : double.NaN,
            StandbyKwh = Kwh(tally.Heater) + Kwh(tally.BenchHeat),
            BenchKwh = Kwh(tally.BenchHeat),
            CollectorYieldKwh = Kwh(tally.ToTank),
            PumpHours = pumpHours,
            PumpKwh = (pumpHours * loop.PumpW + releaseHours * loop.ReleaseElectricW + heapHours * heap.PumpW) / 1000,
            CheapKwh = Kwh(tally.CheapHeater) + Kwh(tally.CheapBenchHeat) + (At(tally.CheapPump) * loop.PumpW + At(tally.CheapReleaseShare) * loop.ReleaseElectricW + At(tally.CheapCompostPump) * heap.PumpW) * step / JoulePerKwh,
            CompostKwh = Kwh(tally.CompostDraw),
            CompostPumpHours = heapHours,
            CompostLowestC = rots ? At(tally.CompostLow) : double.NaN,
            CompostSolidsLeft = rots && heap.DegradableKg > 0 ? At(batch.Compost.Solids) / heap.DegradableKg : double.NaN,
            ReleasedKwh = Kwh(tally.Release),
            ReleaseHours = releaseHours,
            TankLowestC = tank ? At(tally.TankLow) : double.NaN,
            TankHighestC = tank ? At(tally.TankHigh) : double.NaN,
            TankMeanC = tank ? At(tally.TankSum) / seasonHours : double.NaN,
            Ledger = Ledger(ref batch, lane, step),
        };
    }

    public static HourRow Row<T>(ref Batch<T> batch, Winter winter, in HourForcing f, int hour, int steps, Installation installation, LoopCoefficients loop)
        where T : unmanaged, ILane<T>
    {
        var (house, water, tally) = (batch.House, batch.Loop, batch.Tally);
        static double At(in T value) => Pack.At(value, 0);
        var mean = At(tally.MeanAir);
        var hasBench = installation.Bench.AreaM2 > 0;
        var plants = hasBench ? At(tally.MeanBench) : mean;
        return new HourRow(
            hour,
            winter.Start.AddHours(hour),
            f.OutsideC,
            f.SkyC,
            mean,
            At(house.Floor),
            installation.Barrels.WaterKg > 0 ? At(house.Barrels) : double.NaN,
            loop.HasTank ? At(water.T1) : double.NaN,
            loop.HasTank ? At(water.T4) : double.NaN,
            loop.HasCollector ? At(water.Collector) : double.NaN,
            At(water.SumPump) / steps,
            At(house.SumRelease) / steps,
            At(house.SumHeater) / steps,
            At(water.Light),
            At(house.Sun),
            plants < installation.House.FrostLimitC,
            installation.Compost.VolumeM3 > 0 ? At(batch.Compost.Core) : double.NaN,
            hasBench ? plants : double.NaN,
            hasBench ? At(batch.Bench.SumHeat) / steps : 0);
    }

    private static EnergyLedger Ledger<T>(ref Batch<T> batch, int lane, double step)
        where T : unmanaged, ILane<T>
    {
        var tally = batch.Tally;
        double Kwh(in T sum) => Pack.At(sum, lane) * step / JoulePerKwh;
        // The stores were divided by one step, as the flows are sums over steps: the same factor makes both kWh.
        var (inHouse, inLoop) = (Kwh(batch.House.Stored - tally.HouseStart), Kwh(batch.Loop.Stored - tally.LoopStart));
        var (inHeap, inBench) = (Kwh(batch.Compost.Stored - tally.CompostStart), Kwh(batch.Bench.Stored - tally.BenchStart));
        var ledger = new EnergyLedger
        {
            SunIntoHouse = Kwh(tally.SunHouse),
            SunIntoCollector = Kwh(tally.SunCollector),
            Heater = Kwh(tally.Heater),
            Bench = Kwh(tally.BenchHeat),
            StoredInBench = inBench,
            Compost = Kwh(tally.CompostHeat),
            CompostLoss = Kwh(tally.CompostLoss),
            StoredInCompost = inHeap,
            Auxiliary = Kwh(tally.Fan),
            CoverToAir = Kwh(tally.CoverAir),
            CoverToSky = Kwh(tally.CoverSky),
            Leakage = Kwh(tally.Leakage),
            Vents = Kwh(tally.Vents),
            Ground = Kwh(tally.Ground),
            Wall = Kwh(tally.Wall),
            CollectorLoss = Kwh(tally.CollectorLoss),
            PipeLoss = Kwh(tally.PipeLoss),
            StoredInHouse = inHouse,
            StoredInLoop = inLoop,
            Throughput = 0,
            Residual = 0,
        };
        var entered = ledger.SunIntoHouse + ledger.SunIntoCollector + ledger.Heater + ledger.Auxiliary + ledger.Compost + ledger.Bench;
        var left = ledger.CoverToAir + ledger.CoverToSky + ledger.Leakage + ledger.Vents + ledger.Ground + ledger.Wall + ledger.CollectorLoss + ledger.PipeLoss + ledger.CompostLoss + inHouse + inLoop + inHeap + inBench;
        var throughput = entered + Kwh(tally.GroundGift) + Math.Max(0, -inHouse) + Math.Max(0, -inLoop) + Math.Max(0, -inHeap) + Math.Max(0, -inBench);
        return ledger with { Throughput = throughput, Residual = throughput > 0 ? Math.Abs(entered - left) / throughput : 0 };
    }
}
