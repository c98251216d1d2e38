namespace DesignSearch.Season.Heaters;

/// <summary>The electric stand-by heater and its thermostat.</summary>
/// <param name="PowerW">Largest power [W]; 0 without one.</param>
/// <param name="SetPointC">Middle of the thermostat's band [°C].</param>
/// <param name="BandK">Width of the band [K].</param>
public sealed record HeaterNumbers(double PowerW, double SetPointC, double BandK)
{
    /// <summary>Share of its heat that it radiates to floor and cover, not to the air [0…1].</summary>
    public double RadiantShare { get; init; }

    /// <summary>No heater.</summary>
    public static HeaterNumbers None { get; } = new(0, 4, 1);
}
