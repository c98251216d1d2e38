namespace DesignSearch.Layouts;

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
    IReadOnlyList<double> HorizonDeg);
