using DesignSearch.Season.Assumptions;
using DesignSearch.Season.House;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.DayStore;

/// <summary>
/// A day-heat store: pipes under the floor through which a fan moves the house's air, to charge by day and to give back at night.
/// </summary>
/// <param name="AirWPerK">From the house's air to the soil's edge at the pipes while the fan runs: flow times specific heat times
/// effectiveness [W/K].</param>
/// <param name="RingStoreJPerK">Store of the soil round the pipes [J/K], above 0.</param>
/// <param name="RingSoilWPerK">From there to the layers of soil [W/K].</param>
/// <param name="Share1">Share of the middle layer of soil in what surrounds the pipes; the three shares add up to 1.</param>
/// <param name="Share2">Share of the upper part of the deep layer.</param>
/// <param name="Share3">Share of its lower part.</param>
/// <param name="FilmMostJ">Heat of the water that can stay on the walls at most [J].</param>
/// <param name="FanW">Electricity of the fan [W], all of which ends in the house's air.</param>
/// <param name="ChargeAboveC">Air above which day heat is carried down, below the vents and above every heater [°C].</param>
/// <param name="SetPointC">Air below which heat is brought back [°C].</param>
public sealed record DayStoreNumbers(
    double AirWPerK,
    double RingStoreJPerK,
    double RingSoilWPerK,
    double Share1,
    double Share2,
    double Share3,
    double FilmMostJ,
    double FanW,
    double ChargeAboveC,
    double SetPointC) : SourceNumbers
{
    // 0.05 mm of water (estimate) at 2.47 MJ/kg.
    private const double FilmJPerM2 = 0.05 * 2.47e6;

    /// <inheritdoc/>
    public override bool IsPresent => AirWPerK > 0;

    // What a lane holds whose layout has no store: nothing comes of it.
    internal static DayStoreNumbers None { get; } = new(0, 1, 0, 0, 0, 0, 0, 0, 0, 0);

    internal override SourceKind Kind => DayStoreFlows.Kind;

    /// <summary>A store laid out.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="count">Pipes side by side, at least 1.</param>
    /// <param name="lengthM">Length of each [m], above 0.</param>
    /// <param name="spacingM">From middle to middle [m].</param>
    /// <param name="depthM">Middle of the pipes below the floor [m].</param>
    /// <param name="flowM3PerS">Flow through all of them [m³/s], above 0.</param>
    /// <param name="fanW">Electricity of the fan [W].</param>
    /// <param name="chargeAboveC">Air above which day heat is carried down [°C].</param>
    /// <param name="setPointC">Air below which heat is brought back [°C].</param>
    /// <param name="assumptions">The soil.</param>
    public static DayStoreNumbers Of(
        EarthPipeNumbers pipe,
        int count,
        double lengthM,
        double spacingM,
        double depthM,
        double flowM3PerS,
        double fanW,
        double chargeAboveC,
        double setPointC,
        SeasonAssumptions assumptions)
    {
        ArgumentNullException.ThrowIfNull(pipe);
        ArgumentNullException.ThrowIfNull(assumptions);
        var (one, two, three) = Shares(depthM, assumptions);
        var effectiveness = EarthPipeAir.Effectiveness(EarthPipeAir.TransferUnits(pipe, lengthM, flowM3PerS / count));
        var soil = SoilRing.AdmittanceWPerMK(assumptions.SoilConductivityWPerMK, assumptions.SoilVolumetricCapacityJPerM3K,
            pipe.OuterM / 2, spacingM);
        var ring = SoilRing.Of(soil, LayersMKPerJ(depthM, spacingM, assumptions));
        var total = count * lengthM;
        return new(
            EarthPipeAir.JPerM3K * flowM3PerS * effectiveness,
            ring.StoreJPerMK * total,
            ring.ToSoilWPerMK * total,
            one,
            two,
            three,
            FilmJPerM2 * Math.PI * pipe.BoreM * total,
            fanW,
            chargeAboveC,
            setPointC);
    }

    internal override SourceRunner<T> Open<T>(in SourceStart start, int batches) =>
        new BlockRunner<DayStoreBlock<T>, T>(Kind, start, batches);

    /// <summary>
    /// How much the layers round a pipe warm by one joule per metre of pipe [m·K/J]: Σ share² / (capacity · thickness · spacing).
    /// </summary>
    /// <param name="depthM">Middle of the pipes below the floor [m].</param>
    /// <param name="spacingM">From middle to middle [m].</param>
    /// <param name="assumptions">The soil.</param>
    public static double LayersMKPerJ(double depthM, double spacingM, SeasonAssumptions assumptions)
    {
        ArgumentNullException.ThrowIfNull(assumptions);
        var (one, two, three) = Shares(depthM, assumptions);
        double Part(double share, int layer) => share * share / HouseTerms.SoilLayerM(assumptions, layer);
        return (Part(one, 1) + Part(two, 2) + Part(three, 3)) / (assumptions.SoilVolumetricCapacityJPerM3K * spacingM);
    }

    // Straight between the middles of the layers, nothing beyond the first and the last.
    private static (double One, double Two, double Three) Shares(double depthM, SeasonAssumptions a)
    {
        double Middle(int layer) =>
            HouseTerms.SoilLayerM(a, 0) + Enumerable.Range(1, layer - 1).Sum(l => HouseTerms.SoilLayerM(a, l))
            + HouseTerms.SoilLayerM(a, layer) / 2;
        var lower = Math.Clamp((depthM - Middle(2)) / (Middle(3) - Middle(2)), 0, 1);
        var upper = Math.Clamp((Middle(2) - depthM) / (Middle(2) - Middle(1)), 0, 1);
        return (upper, 1 - upper - lower, lower);
    }
}
