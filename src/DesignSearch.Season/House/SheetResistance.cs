namespace DesignSearch.Season;

/// <summary>Takes the standard films out of a catalogue's U-value, so that the model's own films and its sky are not counted twice.</summary>
public static class SheetResistance
{
    private const double OutsideFilm = 25;
    private const double InsideFilm = 7.69;

    /// <summary>Resistance from inner to outer surface [m²K/W]: 1/U − 1/25 − 1/7.69, not below 0 (EN 673 form of the films).</summary>
    /// <param name="uWPerM2K">U-value as the maker states it [W/(m²K)], above 0.</param>
    public static double FromUValue(double uWPerM2K) => Math.Max(0, 1 / uWPerM2K - 1 / OutsideFilm - 1 / InsideFilm);

    /// <summary>U-value with the standard films [W/(m²K)].</summary>
    /// <param name="resistanceM2KPerW">Resistance without films [m²K/W], 0 or more.</param>
    public static double ToUValue(double resistanceM2KPerW) => 1 / (resistanceM2KPerW + 1 / OutsideFilm + 1 / InsideFilm);
}
