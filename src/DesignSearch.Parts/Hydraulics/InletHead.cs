using DesignSearch.Physics;

namespace DesignSearch.Parts.Hydraulics;

/// <summary>Head at a pump's inlet above that at which its water would boil there (what the trade calls available NPSH).</summary>
public static class InletHead
{
    private const double PaPerBar = 1e5;
    private const double HPaPerBar = 1000;

    /// <summary>What is there for water from an open store: (p_air − p_boil)/(ρ g) + z − h [m].</summary>
    /// <param name="elevationM">Above the sea [m].</param>
    /// <param name="waterC">Hottest water [°C], 1 to 100.</param>
    /// <param name="standsM">Water above the inlet z [m].</param>
    /// <param name="lostM">Head lost on the way to it h [m].</param>
    public static double AvailableM(double elevationM, double waterC, double standsM, double lostM)
    {
        var bar = (Atmosphere.PressureHPa(elevationM) / HPaPerBar) - WaterVapour.PressureBar(waterC);
        return (bar * PaPerBar / (WaterProperties.DensityKgPerM3(waterC) * Gravity.StandardMPerS2)) + standsM - lostM;
    }
}
