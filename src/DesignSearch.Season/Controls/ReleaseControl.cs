using System.Runtime.CompilerServices;
using DesignSearch.Season.House;
using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.Controls;

/// <summary>Pump and fan that bring the tank's heat into the house, on a thermostat, and enabled by how much warmer than its set point the tank's top is.</summary>
/// <param name="terms">The release of some houses.</param>
internal struct ReleaseControl<T>(in HouseTerms<T> terms)
    where T : unmanaged, ILane<T>
{
    /// <summary>Air that it holds [°C].</summary>
    public readonly T SetC = terms.ReleaseSetC;

    private readonly T conductance = terms.Release, fanW = terms.FanW;

    // Tank's top at which its thermostat stops it, and at which it lets it run again [°C].
    private readonly T stopC = terms.ReleaseStopC, startC = terms.ReleaseStartC;

    // 1 while the tank's thermostat lets it run.
    private T on = T.Of(0);

    private T power;

    // Less than this a fan costs more than it brings [K].
    private const double LeastWarmerK = 0.5;

    /// <summary>Takes one hour's mains: 1 with, 0 without.</summary>
    public void Hour(double mains) => power = T.Of(mains);

    /// <summary>
    /// 1 where tank and mains let it run, else 0; between its two temperatures the tank's thermostat stays as it was, and water no warmer than the air is of no use.
    /// </summary>
    /// <param name="topC">Top of the tank [°C].</param>
    /// <param name="airC">Air at the end of the last step [°C].</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Enabled(T topC, T airC)
    {
        on = T.IfGreater(topC, startC, T.Of(1), T.IfGreater(stopC, topC, T.Of(0), on));
        return T.IfGreater(topC, airC + T.Of(LeastWarmerK), on * power, T.Of(0));
    }

    /// <summary>From the tank's top to the air [W/K].</summary>
    /// <param name="enabled">Share of its strength, see <see cref="Enabled"/>.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly T Conductance(T enabled) => conductance * enabled;

    /// <summary>All that it can give, less <see cref="Conductance"/> × air: the tank's heat, and that of its fan [W].</summary>
    /// <param name="topC">Top of the tank [°C].</param>
    /// <param name="enabled">Share of its strength, see <see cref="Enabled"/>.</param>
    /// <param name="strength">What <see cref="Conductance"/> gives for that share [W/K].</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly T Source(T topC, T enabled, T strength) => strength * topC + fanW * enabled;

    /// <summary>Electricity of pump and fan over a share of the step [W].</summary>
    /// <param name="share">Share of the step that it ran in full.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly T FanW(T share) => fanW * share;
}
