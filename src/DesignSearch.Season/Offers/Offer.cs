using System.Runtime.CompilerServices;
using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.Offers;

/// <summary>Heat that something would give to the air in one step, and what the air takes of it.</summary>
internal struct Offer<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Air that it holds: the middle of its thermostat's band [°C].</summary>
    public T SetC;

    /// <summary>
    /// All that it can give is Source − Conductance × air [W]; where that is below 0 at its set point it runs in full or not at all.
    /// </summary>
    public T Source;

    /// <inheritdoc cref="Source"/>
    /// <remarks>[W/K], 0 or more.</remarks>
    public T Conductance;

    /// <summary>What is wanted of it at its set point, nothing else of its kind or lower given [W]; below 0 where it rests.</summary>
    public T Need;

    /// <summary>What the air takes: Taken − TakenConductance × air [W].</summary>
    public T Taken;

    /// <inheritdoc cref="Taken"/>
    /// <remarks>[W/K].</remarks>
    public T TakenConductance;

    /// <summary>All that it can give at its set point [W].</summary>
    public readonly T AtSet => Source - Conductance * SetC;

    /// <summary>What it gave [W].</summary>
    /// <param name="airC">Air at the end of the step [°C].</param>
    public readonly T Given(T airC) => Taken - TakenConductance * airC;

    /// <summary>Share of the step that it ran [0…1]; 0 where it has nothing to give at its set point.</summary>
    public readonly T Duty => DutyOf(Need, AtSet);

    /// <inheritdoc cref="Duty"/>
    /// <param name="need">See <see cref="Need"/>.</param>
    /// <param name="atSet">See <see cref="AtSet"/>.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T DutyOf(T need, T atSet) => T.Max(T.Min(need, atSet), T.Of(0)) / T.Max(atSet, T.Of(1e-9));
}
