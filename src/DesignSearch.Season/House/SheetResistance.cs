namespace DesignSearch.Season.House;

/// <summary>What a catalogue U-value says about the sheet alone.</summary>
public static class SheetResistance
{
    /// <summary>Outside film of a catalogue U-value [W/(m²K)], EN 673.</summary>
    public const double OutsideFilmWPerM2K = 25;

    /// <summary>Inside film of a catalogue U-value [W/(m²K)], EN 673.</summary>
    public const double InsideFilmWPerM2K = 7.69;

    /// <summary>Resistance from surface to surface [m²K/W], never below 0: the films of the test are taken off, so wind and sky are not counted twice.</summary>
    /// <param name="uWPerM2K">Catalogue U-value [W/(m²K)], above 0.</param>
    public static double FromUValue(double uWPerM2K) => Math.Max(0, 1 / uWPerM2K - 1 / OutsideFilmWPerM2K - 1 / InsideFilmWPerM2K);
}
