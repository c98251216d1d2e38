namespace DesignSearch.Parts.Hydraulics;

/// <summary>Size of an expansion vessel with a membrane, in the form of EN 12828; solar loops with their steam.</summary>
public static class VesselSize
{
    private const double LeastReserveL = 3;
    private const double ReserveShare = 0.005;

    // Propylene glycol from -20 to 120 °C (a maker's planning manual for solar loops; 0.11 raised for the safe side).
    private const double GlycolGrowth = 0.13;

    // Where the first metres of pipe fill with steam too, half as much again (the same manual).
    private const double SteamInPipes = 1.5;
    private const double ColdC = 10;
    private const double AirBar = 1;

    /// <summary>Water kept in the vessel for what is lost: half a per cent of the content, three litres at least (EN 12828) [L].</summary>
    /// <param name="contentL">What is closed holds [L].</param>
    public static double ReserveL(double contentL) => Math.Max(LeastReserveL, ReserveShare * contentL);

    /// <summary>Whole vessel that takes something up between two pressures: V = taken (pe + 1)/(pe − p0) [L].</summary>
    /// <param name="takesUpL">Growth, reserve and steam that it takes up [L].</param>
    /// <param name="coldBar">p0, pressure of its gas before anything grows [bar above air].</param>
    /// <param name="finalBar">pe, pressure when all has grown, above p0 [bar above air].</param>
    public static double Litres(double takesUpL, double coldBar, double finalBar) => takesUpL * (finalBar + AirBar) / (finalBar - coldBar);

    /// <summary>Vessel of a closed tank of water [L].</summary>
    /// <param name="contentL">Water [L].</param>
    /// <param name="hottestC">Hottest water [°C]; it is filled at 10 °C.</param>
    /// <param name="coldBar">p0 [bar above air].</param>
    /// <param name="finalBar">pe [bar above air].</param>
    public static double OfTankL(double contentL, double hottestC, double coldBar, double finalBar)
    {
        var grows = (WaterProperties.DensityKgPerM3(ColdC) / WaterProperties.DensityKgPerM3(hottestC)) - 1;
        return Litres((contentL * grows) + ReserveL(contentL), coldBar, finalBar);
    }

    /// <summary>Vessel of a solar loop of antifreeze whose collectors may boil empty [L].</summary>
    /// <param name="contentL">All in the loop [L].</param>
    /// <param name="collectorsL">Of it in the collectors, which becomes steam [L].</param>
    /// <param name="coldBar">p0 [bar above air].</param>
    /// <param name="finalBar">pe [bar above air].</param>
    public static double OfSolarLoopL(double contentL, double collectorsL, double coldBar, double finalBar) =>
        SteamInPipes * Litres(ReserveL(contentL) + (GlycolGrowth * contentL) + collectorsL, coldBar, finalBar);
}
