namespace DesignSearch.Season.Solar;

/// <summary>What brings the tank's heat into the house, run by a thermostat.</summary>
/// <param name="ConductanceWPerK">Heat given to the air per kelvin between tank top and air [W/K]; 0 without any.</param>
/// <param name="FlowKgPerS">Water through it while it runs [kg/s].</param>
/// <param name="ElectricW">Pump and fan while it runs [W].</param>
/// <param name="SetPointC">Middle of the thermostat's band [°C].</param>
/// <param name="BandK">Width of the band [K].</param>
public sealed record ReleaseNumbers(double ConductanceWPerK, double FlowKgPerS, double ElectricW, double SetPointC, double BandK)
{
    /// <summary>Top of the tank over the set point below which it stops [K]; below 0 it goes on while the water is warmer than the air.</summary>
    public double StopAboveSetK { get; init; } = 1;

    /// <summary>Share of its heat that it radiates to floor and cover, not to the air [0…1].</summary>
    public double RadiantShare { get; init; }

    /// <summary>No release.</summary>
    public static ReleaseNumbers None { get; } = new(0, 0, 0, 5, 1);
}
