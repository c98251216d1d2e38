using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>What a supply looks for in a catalogue, sorted once, and the plans that were worked out.</summary>
internal sealed class SupplyShelf
{
    // Rated voltage from which a cable is taken for the mains [V].
    private const double MainsRating = 400;

    // Of the twentieth that is usually accepted, four fifths are the long cable's (own choice).
    private const double FeederDrop = 0.8 * CableDrop.UsualLimit;
    private const double BranchDrop = CableDrop.UsualLimit - FeederDrop;

    // About 20 MB.
    private const int MostPlans = 8192;

    private readonly PowerSupply[] supplies;
    private readonly SmallPart[] breakers;
    private readonly PricedCable[] mainsCables;
    private readonly PricedCable[] lowCables;
    private readonly Memory<SupplyKey, PlannedSupply> plans = new(MostPlans);

    private SupplyShelf(PartShelf shelf)
    {
        supplies = [.. shelf.Of<PowerSupply>()];
        breakers = [.. shelf.Small(SmallPartRole.CircuitBreaker).OrderBy(p => p.RatedA)];
        PricedCable[] outdoor =
        [
            .. shelf.Of<Cable>().Where(c => c.IsOutdoor)
                .Select(c => new PricedCable(c, CableDrop.OhmPerM(c), shelf.PriceOf(c))),
        ];
        lowCables = [.. outdoor.Where(c => c.Cable.MaxVolts < MainsRating)];
        mainsCables = [.. outdoor.Where(c => c.Cable.MaxVolts >= MainsRating)];
    }

    /// <summary>Outdoor cables for extra-low voltage, the cheapest first.</summary>
    public IReadOnlyList<PricedCable> LowCables => lowCables;

    /// <summary>The shelf of a catalogue, made once.</summary>
    public static SupplyShelf Of(PartShelf parts) => parts.Once(p => new SupplyShelf(p));

    /// <summary>A plan and what it needs, worked out once for each set of devices.</summary>
    /// <param name="key">All on which they depend.</param>
    /// <param name="plan">Works them out.</param>
    public PlannedSupply Plan(SupplyKey key, Func<SupplyKey, PlannedSupply> plan) => plans.Of(key, plan);

    /// <summary>The cheapest supply that gives a voltage and enough power; null where none does.</summary>
    /// <param name="volts">The voltage [V].</param>
    /// <param name="leastW">The power [W].</param>
    /// <param name="onBattery">Fed by a battery; else by the mains.</param>
    public PowerSupply? Supply(double volts, double leastW, bool onBattery)
    {
        foreach (var supply in supplies)
        {
            if (supply.IsOnBattery == onBattery && supply.Volts == volts && supply.Watts >= leastW)
                return supply;
        }

        return null;
    }

    /// <summary>
    /// The smallest breaker between a load and what its cable bears that holds the start and trips at once on a dead short, of these the
    /// cheapest; where none trips, the smallest of the others, so that a check can tell; null where none is.
    /// </summary>
    /// <param name="loadA">The load [A].</param>
    /// <param name="startA">The load while it starts [A].</param>
    /// <param name="cableBearsA">What the cable bears [A].</param>
    /// <param name="loopOhm">Impedance of the loop to the end of the cable [Ω].</param>
    public SmallPart? Breaker(double loadA, double startA, double cableBearsA, double loopOhm)
    {
        SmallPart? untripped = null;
        foreach (var breaker in breakers)
        {
            // It is sure to hold half of what it is sure to trip at (IEC 60898).
            if (breaker.RatedA < loadA || breaker.RatedA > cableBearsA || (breaker.TripsAt ?? 0) * breaker.RatedA / 2 < startA)
                continue;
            if (LargestLoopOhm(breaker) >= loopOhm)
                return breaker;
            untripped ??= breaker;
        }

        return untripped;
    }

    /// <summary>Largest loop impedance at which a breaker trips at once [Ω]; 0 where its row does not state its curve.</summary>
    /// <param name="breaker">The breaker.</param>
    public static double LargestLoopOhm(SmallPart breaker) =>
        breaker.TripsAt is { } times ? EarthFault.LargestLoopOhm(SupplyPlan.MainsVolts, breaker.RatedA, times) : 0;

    /// <summary>
    /// The cheapest mains cable to the greenhouse that bears a current and loses little enough, with a breaker that trips at once on a dead
    /// short at its end; where none has such a breaker, the cheapest of the others.
    /// </summary>
    /// <param name="metres">Its length one way [m].</param>
    /// <param name="amperes">The current [A].</param>
    /// <param name="startA">The current while a device starts [A].</param>
    /// <param name="beforeOhm">The loop where the cable begins [Ω].</param>
    public (Cable? Cable, SmallPart? Breaker) MainsFeeder(double metres, double amperes, double startA, double beforeOhm)
    {
        (Cable? Cable, SmallPart? Breaker) other = default;
        foreach (var cable in mainsCables)
        {
            if (cable.Cable.RatedA < amperes || CableDrop.Volts(metres, amperes, cable.OhmPerM) > FeederDrop * SupplyPlan.MainsVolts)
                continue;
            var loop = EarthFault.LoopOhm(beforeOhm, metres, cable.OhmPerM);
            var breaker = Breaker(amperes, startA, cable.Cable.RatedA, loop);
            if (breaker is not null && LargestLoopOhm(breaker) >= loop)
                return (cable.Cable, breaker);
            if (other.Breaker is null)
                other = (other.Cable is null || breaker is not null ? cable.Cable : other.Cable, breaker);
        }

        return other;
    }

    /// <summary>The cheapest mains cable of a branch that bears its breaker and loses little enough; null where none does.</summary>
    /// <param name="branch">The branch.</param>
    public Cable? MainsBranch(Circuit branch)
    {
        foreach (var cable in mainsCables)
        {
            var lost = CableDrop.Volts(branch.CableM, branch.RunningA, cable.OhmPerM);
            if (cable.Cable.RatedA >= Math.Max(branch.RunningA, branch.BreakerA) && lost <= BranchDrop * SupplyPlan.MainsVolts)
                return cable.Cable;
        }

        return null;
    }

    /// <summary>The cheapest cable of a switch or sensor; null where none does.</summary>
    /// <param name="signal">The switch or sensor.</param>
    public Cable? SignalCable(Circuit signal)
    {
        foreach (var cable in lowCables)
        {
            if (cable.Cable.Cores >= signal.Cores && cable.Cable.RatedA >= signal.StartA * TimeLagFuse.CableShare)
                return cable.Cable;
        }

        return null;
    }
}
