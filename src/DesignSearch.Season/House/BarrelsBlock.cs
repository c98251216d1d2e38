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

    private readonly T water = terms.BarrelStore, ice = terms.BarrelIce, melts = terms.BarrelMelts, toAir = terms.BarrelAir;

    // What leaves them for a kelvin of theirs; what a kelvin of them holds in this step, one over the sum of both; what they come to without the air.
    private T hold = terms.BarrelAir, store, inverse, rest;

    /// <summary>Heat in them over the step, against water at 0 °C [W].</summary>
    public T Stored { get; private set; } = HeldAt(startC, terms);

    /// <summary>What they add to the row of the air [W/K].</summary>
    public readonly T AirHold => toAir - toAir * toAir * inverse;

    /// <summary>What they give to it whatever it is [W].</summary>
    public readonly T ToAirW => toAir * rest;

    /// <summary>Couples them to something else.</summary>
    /// <param name="conductance">What hangs on their temperature [W/K].</param>
    public void Couple(in T conductance) => hold = toAir + conductance;

    /// <summary>Begins a step: water, slush or ice by what they hold.</summary>
    /// <param name="sourceW">What comes in from elsewhere than the air [W].</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Eliminate(in T sourceW)
    {
        var zero = T.Of(0);
        store = T.IfGreater(Stored, zero, water, T.IfGreater(Stored, zero - melts, melts * T.Of(1 / SlushK), ice));
        inverse = T.Of(1) / (store + hold);
        rest = (store * Now + sourceW) * inverse;
    }

    /// <summary>Ends it: the line of the step gives the heat that crossed, what they hold then gives their temperature.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Settle(in T airC)
    {
        var line = rest + toAir * inverse * airC;
        var held = Stored + store * (line - Now);
        var zero = T.Of(0);
        // No barrels melt nothing: the least keeps that from being nothing over nothing.
        var slush = held * T.Of(SlushK) / T.Max(melts, T.Of(1e-30));
        Now = T.IfGreater(held, zero, held / water, T.IfGreater(held, zero - melts, slush, (held + melts) / ice - T.Of(SlushK)));
        Stored = held;
    }

    private static T HeldAt(in T at, in HouseTerms<T> terms)
    {
        var zero = T.Of(0);
        var frozen = T.Min(at + T.Of(SlushK), zero) * terms.BarrelIce - terms.BarrelMelts;
        return T.IfGreater(at, zero, at * terms.BarrelStore, T.IfGreater(at, T.Of(-SlushK), at * terms.BarrelMelts * T.Of(1 / SlushK), frozen));
    }
}
