using DesignSearch.Climate.Sun;
using DesignSearch.Parts.Mechanics;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>Distances and space on the site.</summary>
/// <param name="PipeRunM">Pipe from collector to tank, one way [m].</param>
/// <param name="CollectorAboveTankM">Lower edge of the collector above the tank's water [m]; negative when it lies lower.</param>
/// <param name="MainsCableM">Cable from the nearest mains supply to the greenhouse [m].</param>
/// <param name="MainsAtGreenhouse">True when the greenhouse has mains already.</param>
/// <param name="CollectorSpaceM2">Ground or wall that collectors may take, as collector area [m²].</param>
/// <param name="StoreFloorM2">Floor in the greenhouse that tank and barrels may take [m²].</param>
/// <param name="WorkingWindMPerS">Wind in which a turning collector must still turn [m/s].</param>
/// <param name="DesignWindMPerS">Gust that the collector must stand [m/s]; a mean of ten minutes where the terrain is given.</param>
/// <param name="HorizonDeg">Height of the horizon in eight directions from north clockwise [°]; empty = flat.</param>
public sealed record SiteLimits(
    double PipeRunM,
    double CollectorAboveTankM,
    double MainsCableM,
    bool MainsAtGreenhouse,
    double CollectorSpaceM2,
    double StoreFloorM2,
    double WorkingWindMPerS,
    double DesignWindMPerS,
    IReadOnlyList<double> HorizonDeg)
{
    private const double DirectionDeg = 45;

    /// <summary>Eight heights from north clockwise as a profile; null for none.</summary>
    internal static HorizonProfile? Profile(IReadOnlyList<double> heightsDeg) =>
        heightsDeg.Count > 0 ? new HorizonProfile([.. heightsDeg.Select((h, i) => (DirectionDeg * i, h))]) : null;

    /// <summary>True where there are no mains and none can be brought: a panel and a battery give all current.</summary>
    public bool HasNoMains { get; init; }

    /// <summary>The horizon as a profile; null where it is flat.</summary>
    internal HorizonProfile? Horizon => Profile(HorizonDeg);

    /// <summary>Current that the dwelling can spare for the greenhouse [A]; null where the builder set no limit.</summary>
    public double? MainsLimitA { get; init; }

    /// <summary>Weight that the floor under tank and barrels bears [kg/m²].</summary>
    public double FloorBearsKgPerM2 { get; init; } = UsualFloorKgPerM2;

    /// <summary>Pull that one anchor stood when it was tested [N]; null where none was, and the catalogue's figure counts.</summary>
    public double? AnchorHoldsN { get; init; }

    /// <summary>What the storm has come over; null where <see cref="DesignWindMPerS"/> is a gust.</summary>
    public WindTerrain? Terrain { get; init; }

    /// <summary>What becomes of snow on the house's roof and on collectors; null where the builder did not say, and then none is reckoned.</summary>
    public SnowCare? Snow { get; init; }

    /// <summary>Depth to which the ground freezes [m]; null where the builder did not say.</summary>
    public double? FrostDepthM { get; init; }

    /// <summary>Foot of a footing below the ground [m]: the frost's depth, no less than what US codes allow (305 mm).</summary>
    public double FootingDepthM => Math.Max(LeastFootingM, FrostDepthM ?? UsualFrostM);

    /// <summary>Loop impedance of the mains where the cable to the greenhouse begins [Ω].</summary>
    public double MainsLoopOhm { get; init; } = UsualLoopOhm;

    /// <summary>What the loop of a dwelling's mains is taken to be where nobody measured it (common practice, no source) [Ω].</summary>
    public const double UsualLoopOhm = 0.35;

    /// <summary>Pipe between a compost heap and the house, one way, and so how far the heap stands from it [m].</summary>
    public double HeapPipeM { get; init; } = UsualHeapPipeM;

    /// <summary>Where a heap is taken to stand where the builder says nothing (own choice) [m].</summary>
    public const double UsualHeapPipeM = 5;

    /// <summary>What a slab or rammed ground is taken to bear where the builder says nothing (own choice) [kg/m²].</summary>
    public const double UsualFloorKgPerM2 = 1500;

    /// <summary>Depth that is taken where the builder gave none: the least of those usual in Germany, 0.8 to 1.5 m [m].</summary>
    public const double UsualFrostM = 0.8;

    private const double LeastFootingM = 0.305;

    /// <summary>Pressure of the storm's gust [Pa]: ρ v²/2, with the exposure factor of EN 1991-1-4 where a mean wind is given.</summary>
    /// <param name="heightM">Height above the ground [m].</param>
    public double StormPa(double heightM) =>
        WindForce.PressurePa(DesignWindMPerS) * (Terrain is { } terrain ? WindExposure.Factor(terrain, heightM) : 1);
}
