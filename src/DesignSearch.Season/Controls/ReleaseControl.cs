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

    // Tank's top at which it begins to run [°C], and how fast it is enabled above that [1/K].
    private readonly T fromC = terms.ReleaseSetC + terms.FadeFromK, perK = T.Of(1) / terms.FadeOverK;

    private T perKNow;

    /// <summary>Takes one hour's mains: 1 with, 0 without.</summary>
    public void Hour(double power) => perKNow = perK * T.Of(power);

    /// <summary>Share of its strength that the tank's top allows [0…1].</summary>
    /// <param name="topC">Top of the tank [°C].</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly T Enabled(T topC) => T.Min(T.Max((topC - fromC) * perKNow, T.Of(0)), T.Of(1));

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
