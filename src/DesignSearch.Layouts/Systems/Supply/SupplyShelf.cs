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

    // About 20 MB.
    private const int MostPlans = 8192;

    private readonly PowerSupply[] supplies;
    private readonly SmallPart[] breakers;
    private readonly PricedCable[] mainsCables;
    private readonly PricedCable[] lowCables;
    private readonly Memory<SupplyKey, PlannedSupply> plans = new(MostPlans);

    private SupplyShelf(PartShelf shelf)
    {
        supplies = [.. shelf.Of<PowerSupply>().Where(s => !s.IsBattery)];
        breakers = [.. shelf.Small(SmallPartRole.CircuitBreaker).OrderBy(p => p.RatedA)];
        PricedCable[] outdoor =
        [
            .. shelf.Of<Cable>().Where(c => c.IsOutdoor)
                .Select(c => new PricedCable(c, CopperResistance.OhmPerM(c.SectionMm2, c.ConductorClass), shelf.PriceOf(c))),
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

    /// <summary>The cheapest supply on the mains that gives a voltage and enough power; null where none does.</summary>
    /// <param name="volts">The voltage [V].</param>
    /// <param name="leastW">The power [W].</param>
    public PowerSupply? Supply(double volts, double leastW)
    {
        foreach (var supply in supplies)
        {
            if (supply.Volts == volts && supply.Watts >= leastW)
                return supply;
        }

        return null;
    }

    /// <summary>The smallest breaker between a load and what its cable bears, of these the cheapest; null where none is.</summary>
    /// <param name="loadA">The load [A].</param>
    /// <param name="cableBearsA">What the cable bears [A].</param>
    public SmallPart? Breaker(double loadA, double cableBearsA)
    {
        foreach (var breaker in breakers)
        {
            if (breaker.RatedA >= loadA && breaker.RatedA <= cableBearsA)
                return breaker;
        }

        return null;
    }

    /// <summary>The cheapest mains cable that bears a current and loses little enough; null where none does.</summary>
    /// <param name="metres">Its length one way [m].</param>
    /// <param name="amperes">The current [A].</param>
    public Cable? MainsCable(double metres, double amperes)
    {
        foreach (var cable in mainsCables)
        {
            var lost = CableDrop.Volts(metres, amperes, cable.OhmPerM);
            if (cable.Cable.RatedA >= amperes && lost <= CableDrop.UsualLimit * SupplyPlan.MainsVolts)
                return cable.Cable;
        }

        return null;
    }
}
