namespace DesignSearch.Climate.Stations;

/// <summary>
/// What the means of a station are worth at a place some way off: how far two stations of the table differ at that distance, November to
/// March, where their heights differ by less than <see cref="SameHeightM"/>. The tests work it out from all pairs of the table.
/// </summary>
/// <param name="UpToKm">Holds up to this distance [km].</param>
/// <param name="LowK">Difference of the mean daily lows, root mean square [K].</param>
/// <param name="SunShare">Difference of the sun as a share of it, root mean square.</param>
public sealed record StationWorth(double UpToKm, double LowK, double SunShare)
{
    /// <summary>Stations as near as this count as the place's own [km].</summary>
    public const double NearKm = 50;

    /// <summary>Beyond this a station is good for a first look only [km]: its lows stray by more than the 3 K that a frost limit is chosen in.</summary>
    public const double FirstLookKm = 400;

    /// <summary>Heights as near as this count as the same [m].</summary>
    public const double SameHeightM = 150;

    // Winter means of the table's pairs over 300 m apart in height; the standard atmosphere (ISO 2533) has 6.5 K a kilometre, winters less.
    private const double ColderKPerM = 0.0053;

    internal static readonly StationWorth[] Steps = [new(NearKm, 1.7, 0.08), new(100, 2.0, 0.09), new(200, 2.3, 0.10), new(FirstLookKm, 3.2, 0.13), new(800, 5.0, 0.20)];

    /// <summary>The worth at a distance; none where it is farther than the figures go, and a station tells nothing.</summary>
    /// <param name="distanceKm">Way between station and place [km].</param>
    public static StationWorth? At(double distanceKm) => Array.Find(Steps, s => distanceKm <= s.UpToKm);

    /// <summary>How much colder it usually is so much higher up [K]; less than 0 lower down. Not on clear calm nights, when valleys are the colder.</summary>
    /// <param name="higherM">Height of the place less that of the station [m].</param>
    public static double ColderK(double higherM) => ColderKPerM * higherM;
}
