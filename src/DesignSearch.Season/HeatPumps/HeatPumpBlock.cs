using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Sources;
using N = DesignSearch.Season.HeatPumps.HeatPumpNumbers;

namespace DesignSearch.Season.HeatPumps;

/// <summary>
/// Heat pumps of some layouts: output and efficiency by the hour, heat as the thermostat asks by the step. Equations in docs/model.md,
/// "Heat pump".
/// </summary>
/// <remarks>Only lanes as fields, so that every one stays aligned.</remarks>
internal struct HeatPumpBlock<T> : ISourceBlock<HeatPumpBlock<T>, T>
    where T : unmanaged, ILane<T>
{
    private readonly OutdoorLines<T> fullLine, copLine;
    private readonly T leastShare, gain, cyclingLoss, leastOutdoor, idle, set, frostShare, perK, mostK, stepSeconds;
    private T full, least, cop, idleNow, tooCold;

    // Sums over the steps of the hour: heat, electricity of compressor and fans, electricity at rest [W], share of the time that it ran.
    private T sumHeat, sumElectric, sumIdle, sumRunning;

    // Over the season: heat, all electricity [W steps], running [steps], hours that were too cold.
    private T heat, electric, running, coldHours;

    public HeatPumpBlock(ReadOnlySpan<N> pumps, SeasonAssumptions assumptions, double step)
    {
        Span<OutdoorLine> lines = stackalloc OutdoorLine[Pack.Widest];
        for (var i = 0; i < T.Width; i++)
            lines[i] = pumps[i].HeatW;
        fullLine = new(lines);
        for (var i = 0; i < T.Width; i++)
            lines[i] = pumps[i].Cop;
        copLine = new(lines);
        leastShare = Pack.Of<T, N>(pumps, x => x.LeastShare);
        gain = Pack.Of<T, N>(pumps, x => x.CopGainAtLeast);
        cyclingLoss = Pack.Of<T, N>(pumps, x => x.CyclingLoss);
        leastOutdoor = Pack.Of<T, N>(pumps, x => x.LeastOutdoorC);
        idle = Pack.Of<T, N>(pumps, x => x.IdleW);
        set = Pack.Of<T, N>(pumps, x => x.SetPointC);
        var lost = assumptions[HeatPumpAssumptions.FrostShare];
        frostShare = Pack.Of<T, N>(pumps, x => x.IsFrostRated ? 0 : lost);
        perK = T.Of(assumptions[HeatPumpAssumptions.CopPerK]);
        mostK = T.Of(assumptions[HeatPumpAssumptions.CopMostK]);
        stepSeconds = T.Of(step);
        Begin();
    }

    public static HeatPumpBlock<T> Make(in SourceStart start, int first)
    {
        var pumps = new N[T.Width];
        for (var i = 0; i < pumps.Length; i++)
            pumps[i] = start.Find<N>(first + i) ?? N.None;
        return new(pumps, start.Forcing.Assumptions, start.StepSeconds);
    }

    public void Begin() => heat = electric = running = coldHours = T.Of(0);

    /// <summary>Full output and efficiency in one hour's weather.</summary>
    public void Hour(in HourForcing f)
    {
        var (one, zero, outside, power) = (T.Of(1), T.Of(0), T.Of(f.OutsideC), T.Of(f.Power));
        var kept = one - frostShare * HeatPumpCycle.Frosting(outside);
        var awake = T.IfGreater(leastOutdoor, outside, zero, one);
        full = T.Max(fullLine.At(outside), zero) * kept * awake * power;
        least = full * leastShare;
        cop = T.Max(copLine.At(outside) * kept, one);
        idleNow = idle * power;
        tooCold = one - awake;
        sumHeat = sumElectric = sumIdle = sumRunning = zero;
    }

    public readonly void Prepare(ref HouseBlock<T> house)
    {
        // It stands outdoors, and its indoor unit meets the air alone.
    }

    /// <summary>All that it can give in this hour, whatever the air.</summary>
    public readonly void Offer(ref HouseBlock<T> house, Span<Offer<T>> offers)
    {
        ref var offer = ref offers[0];
        (offer.SetC, offer.Source, offer.Conductance) = (set, full, T.Of(0));
    }

    /// <summary>Counts the electricity of the step.</summary>
    public void Settle(in HouseBlock<T> house, ReadOnlySpan<Offer<T>> offers)
    {
        var given = offers[0].Taken;
        var on = HeatPumpCycle.Running(given, least);
        var efficiency = HeatPumpCycle.PartLoadCop(given, full, least, cop, gain, cyclingLoss)
            * HeatPumpCycle.Indoor(house.Air, perK, mostK);
        sumHeat += given;
        sumElectric += given / efficiency;
        sumIdle += idleNow * (T.Of(1) - on);
        sumRunning += on;
    }

    public void Book(ref FlowBook<T> book)
    {
        book.Heat(HeatPumpFlows.Heat, sumHeat);
        book.Electricity(HeatPumpFlows.Current, sumElectric);
        book.Electricity(HeatPumpFlows.Idle, sumIdle);
        heat += sumHeat;
        electric += sumElectric + sumIdle;
        running += sumRunning;
        coldHours += tooCold;
    }

    public readonly void Stored(ref LaneWriter<Store, T> stores)
    {
        // Neither coil stores enough to be counted.
    }

    public readonly void Tell(ref LaneWriter<Figure, T> figures)
    {
        figures.Put(HeatPumpFlows.Cop, heat / electric);
        figures.Put(HeatPumpFlows.Hours, running * stepSeconds / T.Of(3600));
        figures.Put(HeatPumpFlows.TooColdHours, coldHours);
    }

    public readonly void Row(ref LaneWriter<HourColumn, T> columns, double steps)
    {
        columns.Put(HeatPumpFlows.HeatW, sumHeat / T.Of(steps));
        columns.Put(HeatPumpFlows.CurrentW, sumElectric / T.Of(steps));
    }

    public readonly T PlantsMean(in T house, double steps) => house;

    public readonly T PlantsLowest(in T house) => house;
}
