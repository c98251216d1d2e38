using DesignSearch.Parts.Hydraulics;
using DesignSearch.Parts.Piping;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What is closed and under pressure, a filled loop or one closed tank, with its relief valve and its vessels.</summary>
/// <param name="ContentL">What it holds [L].</param>
/// <param name="Relief">The relief valve; null where the catalogue has none.</param>
/// <param name="ColdBar">Pressure of the vessel's gas before anything grows, p0 [bar above air].</param>
/// <param name="FinalBar">Pressure when all has grown, pe [bar above air].</param>
/// <param name="WantedL">Expansion vessel that it wants in all [L].</param>
/// <param name="Vessel">The vessel that is bought; null where none of the catalogue serves.</param>
/// <param name="Vessels">How many of it.</param>
public sealed record ClosedWater(
    double ContentL, ReliefValve? Relief, double ColdBar, double FinalBar, double WantedL, ExpansionVessel? Vessel, int Vessels)
{
    private const double BarPerM = 0.1;

    // Over the height of the water: a bar in solar loops (a maker's planning manual), 0.3 bar in tanks (heating practice, EN 12828).
    private const double LoopOverHeadBar = 1;
    private const double TankOverHeadBar = 0.3;

    // Under the relief valve: to nine tenths of it in solar loops, to half a bar under it in tanks (the same).
    private const double LoopFinalShare = 0.9;
    private const double TankUnderReliefBar = 0.5;

    // Less between cold and hot leaves no room to grow.
    private const double LeastRoomBar = 0.1;

    /// <summary>A loop that stays full of antifreeze.</summary>
    /// <param name="contentL">All in it [L].</param>
    /// <param name="collectorsL">In its collectors [L].</param>
    /// <param name="heightM">Its highest place above the vessel [m].</param>
    /// <param name="relief">Its relief valve.</param>
    /// <param name="shelf">Where the vessel is found.</param>
    internal static ClosedWater Loop(double contentL, double collectorsL, double heightM, ReliefValve? relief, SolarShelf shelf)
    {
        var cold = LoopOverHeadBar + (BarPerM * heightM);
        var final = Math.Max(cold + LeastRoomBar, LoopFinalShare * (relief?.OpensAtBar ?? 0));
        return Of(contentL, relief, cold, final, VesselSize.OfSolarLoopL(contentL, collectorsL, cold, final), shelf);
    }

    /// <summary>A closed tank.</summary>
    /// <param name="contentL">Its water [L].</param>
    /// <param name="hottestC">Its hottest water [°C].</param>
    /// <param name="heightM">Its height [m].</param>
    /// <param name="relief">Its relief valve.</param>
    /// <param name="shelf">Where the vessel is found.</param>
    internal static ClosedWater Tank(double contentL, double hottestC, double heightM, ReliefValve? relief, SolarShelf shelf)
    {
        var cold = TankOverHeadBar + (BarPerM * heightM);
        var final = Math.Max(cold + LeastRoomBar, (relief?.OpensAtBar ?? 0) - TankUnderReliefBar);
        return Of(contentL, relief, cold, final, VesselSize.OfTankL(contentL, hottestC, cold, final), shelf);
    }

    private static ClosedWater Of(double contentL, ReliefValve? relief, double cold, double final, double wantedL, SolarShelf shelf)
    {
        var (vessel, count) = shelf.Vessels(wantedL, relief?.OpensAtBar ?? 0);
        return new(contentL, relief, cold, final, wantedL, vessel, count);
    }
}
