using System.Runtime.CompilerServices;
using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.Offers;

/// <summary>Decides, in one place, what the air takes of every offer: the one set highest first, lane by lane. Docs/model.md, "Offers".</summary>
internal static class OfferDecision
{
    /// <summary>
    /// The same for two offers alone, the second of which does not hang on the air, without a way through memory and with the same
    /// bits: most plants have no others.
    /// </summary>
    /// <param name="p">What hangs on the air [W/K].</param>
    /// <param name="r">What does not [W].</param>
    /// <param name="firstC">Set point of the one that gives first where both are set alike [°C].</param>
    /// <param name="source">All that it can give, less <paramref name="conductance"/> × air [W].</param>
    /// <param name="conductance">[W/K]</param>
    /// <param name="secondC">Set point of the other one [°C].</param>
    /// <param name="fixedW">All that it can give [W].</param>
    /// <param name="firstNeed">What is wanted of the first at its set point [W].</param>
    /// <param name="firstAtSet">All that the first can give at its set point [W].</param>
    /// <param name="taken">What the air takes of the first, less <paramref name="takenConductance"/> × air [W].</param>
    /// <param name="takenConductance">[W/K]</param>
    /// <param name="takenFixed">What it takes of the second [W].</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Decide<T>(
        T p, T r, T firstC, T source, T conductance, T secondC, T fixedW,
        out T firstNeed, out T firstAtSet, out T taken, out T takenConductance, out T takenFixed)
        where T : unmanaged, ILane<T>
    {
        var zero = T.Of(0);
        firstNeed = firstC * p - r - T.IfGreater(secondC, firstC, fixedW, zero);
        var secondNeed = secondC * p - r - T.IfGreater(secondC, firstC, zero, source - conductance * secondC);
        firstAtSet = source - conductance * firstC;
        taken = T.IfGreater(firstNeed, firstAtSet, source, T.Max(firstNeed, zero));
        takenConductance = T.IfGreater(firstNeed, firstAtSet, conductance, zero);
        takenFixed = T.IfGreater(secondNeed, fixedW, fixedW, T.Max(secondNeed, zero));
    }

    /// <summary>Decides. The row of the air, pivot × air = rest, is left with what it takes.</summary>
    /// <param name="pivot">What hangs on the air [W/K].</param>
    /// <param name="rest">What does not [W].</param>
    /// <param name="offers">The offers; of two set alike, the one that stands first gives first.</param>
    public static void Decide<T>(ref T pivot, ref T rest, Span<Offer<T>> offers)
        where T : unmanaged, ILane<T>
    {
        var (p, r, zero) = (pivot, rest, T.Of(0));
        for (var i = 0; i < offers.Length; i++)
            offers[i].Need = offers[i].SetC * p - r;

        // At the set point of the lower one, the higher one gives all it can.
        for (var i = 0; i < offers.Length; i++)
        {
            ref var first = ref offers[i];
            for (var j = i + 1; j < offers.Length; j++)
            {
                ref var second = ref offers[j];
                var (ahead, behind) = (first.Source - first.Conductance * second.SetC, second.Source - second.Conductance * first.SetC);
                first.Need -= T.IfGreater(second.SetC, first.SetC, behind, zero);
                second.Need -= T.IfGreater(second.SetC, first.SetC, zero, ahead);
            }
        }

        for (var i = 0; i < offers.Length; i++)
        {
            ref var offer = ref offers[i];
            // One that would cool air as warm as its set point still helps air that is colder: it runs in full or not at all.
            var (need, atSet) = (offer.Need, T.Max(offer.AtSet, zero));
            var (conductance, source) = (T.IfGreater(need, atSet, offer.Conductance, zero), T.IfGreater(need, atSet, offer.Source, T.Max(need, zero)));
            (offer.TakenConductance, offer.Taken) = (conductance, source);
            p += conductance;
            r += source;
        }

        (pivot, rest) = (p, r);
    }
}
