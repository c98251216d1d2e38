using System.Runtime.CompilerServices;
using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.Solar;

/// <summary>A collector in the form of ISO 9806:2017: what it absorbs and what it loses.</summary>
/// <remarks>
/// The season's own lines, several layouts side by side. Per gross area when the coefficients are; for all collectors
/// together when they are multiplied by the area.
/// </remarks>
internal static class CollectorEfficiency
{
    // Closer to grazing than 0.06° nothing is asked: one over the cosine stays finite.
    private const double LeastCosine = 1e-3;

    /// <summary>Incidence modifier for beam, K = 1 − b0 (1/cos θ − 1), never below 0; no cosine exceeds 1, so that K never does.</summary>
    /// <param name="b0">Coefficient b0, 0 to about 0.3.</param>
    /// <param name="cosIncidence">Cosine of the incidence angle; 0 or less gives 0.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T BeamModifier<T>(T b0, T cosIncidence)
        where T : unmanaged, ILane<T>
    {
        var (one, zero) = (T.Of(1), T.Of(0));
        var modifier = T.Max(one - b0 * (one / T.Max(cosIncidence, T.Of(LeastCosine)) - one), zero);
        return T.IfGreater(cosIncidence, zero, modifier, zero);
    }

    /// <summary>Sun absorbed [W]: A η₀ (K_b beam + K_d diffuse).</summary>
    /// <param name="areaM2">Gross area A [m²].</param>
    /// <param name="eta0">Peak efficiency for beam η₀ [0…1].</param>
    /// <param name="beamModifier">K_b, see <see cref="BeamModifier"/>.</param>
    /// <param name="beamWPerM2">Beam on its plane [W/m²].</param>
    /// <param name="diffuseModifier">K_d [0…1].</param>
    /// <param name="diffuseWPerM2">Sky and ground light on its plane [W/m²].</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T AbsorbedW<T>(T areaM2, T eta0, T beamModifier, T beamWPerM2, T diffuseModifier, T diffuseWPerM2)
        where T : unmanaged, ILane<T> => areaM2 * eta0 * (beamWPerM2 * beamModifier + diffuseModifier * diffuseWPerM2);

    /// <summary>Loss per kelvin above the outside air [W/K]: a1 + a2 |ΔT| + a3 v.</summary>
    /// <param name="a1WPerK">a1, times area [W/K].</param>
    /// <param name="a2WPerK2">a2, times area [W/K²].</param>
    /// <param name="riseK">Mean fluid minus outside air ΔT [K].</param>
    /// <param name="windLossWPerK">a3 v, times area, the same through an hour [W/K].</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LossWPerK<T>(T a1WPerK, T a2WPerK2, T riseK, T windLossWPerK)
        where T : unmanaged, ILane<T> => a1WPerK + a2WPerK2 * T.Max(riseK, T.Of(0) - riseK) + windLossWPerK;
}
