namespace DesignSearch.Layouts.Design.Brief;

/// <summary>Distances and space on the site.</summary>
/// <param name="PipeRunM">Pipe from collector to tank, one way [m].</param>
/// <param name="CollectorAboveTankM">Top of the collector above the tank's water [m]; negative when it lies lower.</param>
/// <param name="MainsCableM">Cable from the nearest mains supply to the greenhouse [m].</param>
/// <param name="MainsAtGreenhouse">True when the greenhouse has mains already.</param>
/// <param name="CollectorSpaceM2">Ground or wall that collectors may take, as collector area [m²].</param>
/// <param name="StoreFloorM2">Floor in the greenhouse that tank and barrels may take [m²].</param>
/// <param name="WorkingWindMPerS">Wind in which a turning collector must still turn [m/s].</param>
/// <param name="DesignWindMPerS">Gust that the collector must stand [m/s].</param>
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
    /// <summary>Current that the dwelling can spare for the greenhouse [A]; null where the builder set no limit.</summary>
    public double? MainsLimitA { get; init; }

    /// <summary>Weight that the floor under tank and barrels bears [kg/m²].</summary>
    public double FloorBearsKgPerM2 { get; init; } = UsualFloorKgPerM2;

    /// <summary>Pull that one ground screw or anchor bolt stands [N], as tested on the spot.</summary>
    public double AnchorHoldsN { get; init; } = UsualAnchorN;

    /// <summary>Pipe between a compost heap and the house, one way, and so how far the heap stands from it [m].</summary>
    public double HeapPipeM { get; init; } = UsualHeapPipeM;

    /// <summary>Where a heap is taken to stand where the builder says nothing (own choice) [m].</summary>
    public const double UsualHeapPipeM = 5;

    /// <summary>What a slab or rammed ground is taken to bear where the builder says nothing (own choice) [kg/m²].</summary>
    public const double UsualFloorKgPerM2 = 1500;

    /// <summary>What an anchor is taken to stand where none was tested (common practice, no source) [N].</summary>
    public const double UsualAnchorN = 1000;
}
