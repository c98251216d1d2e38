using DesignSearch.Season.Benches;
using DesignSearch.Season.Compost;
using DesignSearch.Season.House;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.Kernel;

/// <summary>Adds up the season of some layouts from the sums of each hour.</summary>
/// <remarks>Flows are summed as W·steps and become kWh at the end. Only lanes as fields.</remarks>
internal struct TallyBlock<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Flows [W·steps].</summary>
    public T SunHouse, SunCollector, Heater, Fan, CoverAir, CoverSky, Leakage, Vents, Ground, GroundGift, Wall, CollectorLoss, PipeLoss, ToTank, Release;

    /// <summary>Shares of steps.</summary>
    public T Pump, ReleaseShare;

    /// <summary>The same and the heater's flow, in the hours of the cheap tariff only.</summary>
    public T CheapHeater, CheapPump, CheapReleaseShare, CheapCompostPump;

    /// <summary>Hours, frost hours and lowest air [°C] within power cuts.</summary>
    public T CutHours, CutFrostHours, CutLowestAir;

    public T FrostHours, DegreeHours, LowestAir, ColdestHour, TankLow, TankHigh, TankSum;

    /// <summary>This hour's mean air [°C].</summary>
    public T MeanAir;

    /// <summary>Compost heap: flows [W·steps], share of steps, lowest core [°C].</summary>
    public T CompostHeat, CompostLoss, CompostDraw, CompostShare, CompostLow;

    /// <summary>Electric heat of a bench, in all and in the hours of the cheap tariff [W·steps].</summary>
    public T BenchHeat, CheapBenchHeat;

    /// <summary>Lowest hour mean of the house's air, whether or not the plants stand in it [°C].</summary>
    public T LowestHouse;

    /// <summary>This hour's mean of the bench [°C].</summary>
    public T MeanBench;

    public T HouseStart, LoopStart, CompostStart, BenchStart;

    private readonly T limit;

    public TallyBlock(ReadOnlySpan<HouseCoefficients> c) => limit = Pack.Of<T, HouseCoefficients>(c, x => x.FrostLimitC);

    /// <summary>Forgets the warm-up.</summary>
    public void Start(ref HouseBlock<T> house, ref LoopBlock<T> loop, ref CompostBlock<T> compost, ref BenchBlock<T> bench)
    {
        var zero = T.Of(0);
        SunHouse = SunCollector = Heater = Fan = CoverAir = CoverSky = Leakage = Vents = Ground = GroundGift = Wall = CollectorLoss = PipeLoss = ToTank = Release = zero;
        CheapHeater = CheapPump = CheapReleaseShare = CheapCompostPump = zero;
        Pump = ReleaseShare = FrostHours = DegreeHours = TankSum = zero;
        CutHours = CutFrostHours = CompostHeat = CompostLoss = CompostDraw = CompostShare = BenchHeat = CheapBenchHeat = zero;
        CompostLow = T.Of(1e9);
        LowestAir = LowestHouse = CutLowestAir = TankLow = house.LowestAir = bench.Lowest = T.Of(1e9);
        TankHigh = T.Of(-1e9);
        ColdestHour = T.Of(-1);
        (HouseStart, LoopStart, CompostStart, BenchStart) = (house.Stored, loop.Stored, compost.Stored, bench.Stored);
    }

    /// <summary>Heat flows of one hour.</summary>
    public void Flows(ref HouseBlock<T> house, ref LoopBlock<T> loop, in HourForcing f, double steps)
    {
        var n = T.Of(steps);
        var outside = T.Of(f.OutsideC) * n;
        var ground = house.SoilDeepG * (house.SumSoil3 - T.Of(f.GroundC) * n) + house.EdgeG * (house.SumFloor - outside);
        SunHouse += house.Sun * n;
        SunCollector += loop.SumAbsorbed;
        Heater += house.SumHeater;
        Fan += house.SumFan;
        CoverAir += house.Outer * (house.SumCover - outside);
        CoverSky += house.SumSky;
        Leakage += house.Leak * (house.SumAir - outside);
        Vents += house.SumVent;
        Ground += ground;
        GroundGift += T.Max(T.Of(0) - ground, T.Of(0));
        Wall += house.MassOutsideG * (house.SumMass - outside);
        CollectorLoss += loop.SumCollectorLoss;
        PipeLoss += loop.SumPipeLoss;
        ToTank += loop.SumToTank;
        Release += house.SumRelease;
        Pump += loop.SumPump;
        ReleaseShare += house.SumShare;
        if (!f.IsCheap)
            return;
        CheapHeater += house.SumHeater;
        CheapPump += loop.SumPump;
        CheapReleaseShare += house.SumShare;
    }

    /// <summary>One hour of the compost heap.</summary>
    public void Heap(ref CompostBlock<T> compost, in HourForcing f)
    {
        CompostHeat += compost.SumGrown;
        CompostLoss += compost.SumLost;
        CompostDraw += compost.SumDraw;
        CompostShare += compost.SumShare;
        CompostLow = T.Min(CompostLow, compost.Core);
        if (f.IsCheap)
            CheapCompostPump += compost.SumShare;
    }

    /// <summary>One hour of the bench.</summary>
    public void Benches(ref BenchBlock<T> bench, in HourForcing f)
    {
        BenchHeat += bench.SumHeat;
        if (f.IsCheap)
            CheapBenchHeat += bench.SumHeat;
    }

    /// <summary>Frost where the plants stand, and extremes of one hour.</summary>
    public void Frost(ref HouseBlock<T> house, ref LoopBlock<T> loop, ref BenchBlock<T> bench, in HourForcing f, int hour, double steps)
    {
        var zero = T.Of(0);
        MeanAir = house.SumAir * T.Of(1 / steps);
        MeanBench = bench.SumBench * T.Of(1 / steps);
        var plants = bench.Plants(MeanAir, MeanBench);
        var frost = T.IfGreater(limit, plants, T.Of(1), zero);
        FrostHours += frost;
        if (f.Power == 0)
        {
            CutHours += T.Of(1);
            CutFrostHours += frost;
            CutLowestAir = T.Min(CutLowestAir, plants);
        }

        DegreeHours += T.Max(limit - plants, zero);
        ColdestHour = T.IfGreater(LowestAir, plants, T.Of(hour), ColdestHour);
        LowestAir = T.Min(LowestAir, plants);
        LowestHouse = T.Min(LowestHouse, MeanAir);
        TankLow = T.Min(TankLow, loop.T4);
        TankHigh = T.Max(TankHigh, loop.T1);
        TankSum += loop.TankMean;
    }
}
