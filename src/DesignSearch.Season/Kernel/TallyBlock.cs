using DesignSearch.Season.House;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.Kernel;

/// <summary>Frost, extremes and running times of some layouts over the season. Heat and electricity are summed in the books: see <see cref="Flows.FlowBook{T}"/>.</summary>
/// <remarks>Only lanes as fields.</remarks>
internal struct TallyBlock<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Heat that reached the tank [W·steps].</summary>
    public T ToTank;

    /// <summary>Running time of the collector's pump and of the release [steps].</summary>
    public T Pump, ReleaseShare;

    /// <summary>Hours, frost hours and lowest air [°C] within power cuts.</summary>
    public T CutHours, CutFrostHours, CutLowestAir;

    /// <summary>Hours below the limit, their shortfall [K·h], lowest hour mean of the plants' air [°C] and its hour.</summary>
    public T FrostHours, DegreeHours, LowestAir, ColdestHour;

    /// <summary>Bottom's lowest, top's highest [°C], sum of the hours' means of the tank.</summary>
    public T TankLow, TankHigh, TankSum;

    /// <summary>Lowest hour mean of the house's air, whether or not the plants stand in it [°C].</summary>
    public T LowestHouse;

    /// <summary>This hour's mean of the house's air and of the plants' [°C].</summary>
    public T MeanAir, MeanPlants;

    private readonly T limit;

    public TallyBlock(ReadOnlySpan<HouseTerms<double>> c) => limit = Pack.Of<T, HouseTerms<double>>(c, x => x.FrostLimitC);

    /// <summary>Forgets the warm-up.</summary>
    public void Begin()
    {
        ToTank = Pump = ReleaseShare = FrostHours = DegreeHours = TankSum = CutHours = CutFrostHours = T.Of(0);
        LowestAir = LowestHouse = CutLowestAir = TankLow = T.Of(1e9);
        TankHigh = T.Of(-1e9);
        ColdestHour = T.Of(-1);
    }

    /// <summary>What ran in one hour.</summary>
    public void Running(in HouseBlock<T> house, in LoopBlock<T> loop)
    {
        ToTank += loop.SumToTank;
        Pump += loop.SumPump;
        ReleaseShare += house.SumShare;
        TankLow = T.Min(TankLow, loop.T4);
        TankHigh = T.Max(TankHigh, loop.T1);
        TankSum += loop.TankMean;
    }

    /// <summary>Frost where the plants stand in one hour.</summary>
    /// <param name="houseC">Mean air of the house [°C].</param>
    /// <param name="plantsC">Mean of the plants' air [°C].</param>
    /// <param name="f">The hour's weather.</param>
    /// <param name="hour">Hour of the winter, warm-up counted.</param>
    public void Frost(in T houseC, in T plantsC, in HourForcing f, int hour)
    {
        var zero = T.Of(0);
        (MeanAir, MeanPlants) = (houseC, plantsC);
        var frost = T.IfGreater(limit, plantsC, T.Of(1), zero);
        FrostHours += frost;
        if (f.Power == 0)
        {
            CutHours += T.Of(1);
            CutFrostHours += frost;
            CutLowestAir = T.Min(CutLowestAir, plantsC);
        }

        DegreeHours += T.Max(limit - plantsC, zero);
        ColdestHour = T.IfGreater(LowestAir, plantsC, T.Of(hour), ColdestHour);
        LowestAir = T.Min(LowestAir, plantsC);
        LowestHouse = T.Min(LowestHouse, houseC);
    }
}
