using System.Runtime.CompilerServices;
using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.House;

/// <summary>Water barrels of some houses: they carry heat and not temperature, for they freeze. They meet the air alone. Equations in docs/model.md, "House".</summary>
/// <param name="terms">The houses.</param>
/// <param name="startC">Where they begin [°C].</param>
internal struct BarrelsBlock<T>(in HouseTerms<T> terms, in T startC)
    where T : unmanaged, ILane<T>
{
    // Over which they freeze [K].
    private const double SlushK = 0.1;

    /// <summary>Their temperature [°C].</summary>
    public T Now = startC;

    private readonly T water = terms.BarrelStore, ice = terms.BarrelIce, frozen = T.Of(0) - terms.BarrelMelts, toAir = terms.BarrelAir;

    // One over each: a division costs as much as eight products. No barrels melt nothing: the least keeps that from being nothing over nothing.
    private readonly T slush = terms.BarrelMelts * T.Of(1 / SlushK), perWater = T.Of(1) / terms.BarrelStore, perIce = T.Of(1) / terms.BarrelIce,
        perMelts = T.Of(SlushK) / T.Max(terms.BarrelMelts, T.Of(1e-30));

    // What a kelvin of them holds in this step, what of a kelvin of the air they take; what they come to without the air.
    private T store, through, rest;

    // The inverse as water, slush and ice.
    private T ofWater = T.Of(1) / (terms.BarrelStore + terms.BarrelAir),
        ofSlush = T.Of(1) / (terms.BarrelMelts * T.Of(1 / SlushK) + terms.BarrelAir),
        ofIce = T.Of(1) / (terms.BarrelIce + terms.BarrelAir);

    /// <summary>Heat in them over the step, against water at 0 °C [W].</summary>
    public T Stored { get; private set; } = HeldAt(startC, terms);

    /// <summary>What of their coupling to the air comes back to it, and so leaves its row [W/K].</summary>
    public readonly T FromAir => toAir * through;

    /// <summary>What they give to it whatever it is [W].</summary>
    public readonly T ToAirW => toAir * rest;

    /// <summary>Couples them to something else.</summary>
    /// <param name="conductance">What hangs on their temperature [W/K].</param>
    public void Couple(in T conductance)
    {
        var (one, hold) = (T.Of(1), toAir + conductance);
        (ofWater, ofSlush, ofIce) = (one / (water + hold), one / (slush + hold), one / (ice + hold));
    }

    /// <summary>Begins a step: water, slush or ice by what they hold.</summary>
    /// <param name="sourceW">What comes in from elsewhere than the air [W].</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Eliminate(in T sourceW)
    {
        var zero = T.Of(0);
        var held = Stored;
        store = T.IfGreater(held, zero, water, T.IfGreater(held, frozen, slush, ice));
        var inverse = T.IfGreater(held, zero, ofWater, T.IfGreater(held, frozen, ofSlush, ofIce));
        through = toAir * inverse;
        rest = (store * Now + sourceW) * inverse;
    }

    /// <summary>Ends it: the line of the step gives the heat that crossed, what they hold then gives their temperature.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Settle(in T airC)
    {
        var line = rest + through * airC;
        var held = Stored + store * (line - Now);
        var zero = T.Of(0);
        Now = T.IfGreater(held, zero, held * perWater, T.IfGreater(held, frozen, held * perMelts, (held - frozen) * perIce - T.Of(SlushK)));
        Stored = held;
    }

    private static T HeldAt(in T at, in HouseTerms<T> terms)
    {
        var zero = T.Of(0);
        var ice = T.Min(at + T.Of(SlushK), zero) * terms.BarrelIce - terms.BarrelMelts;
        return T.IfGreater(at, zero, at * terms.BarrelStore, T.IfGreater(at, T.Of(-SlushK), at * terms.BarrelMelts * T.Of(1 / SlushK), ice));
    }
}
