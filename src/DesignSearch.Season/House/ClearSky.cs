namespace DesignSearch.Season.House;

/// <summary>Temperature of a cloudless sky; without a cloud term it doubles the frost hours of a bare house, so the season model reads the winter's own sky instead.</summary>
public static class ClearSky
{
    /// <summary>Swinbank 1963, from the air alone [°C].</summary>
    /// <param name="airC">Outside air [°C].</param>
    public static double SwinbankC(double airC) => 0.0552 * Math.Pow(airC + 273.15, 1.5) - 273.15;

    /// <summary>Berdahl and Martin 1984 at sea level [°C].</summary>
    /// <param name="airC">Outside air [°C].</param>
    /// <param name="dewPointC">Dew point [°C].</param>
    /// <param name="solarHour">Hour of the day, 0 at midnight.</param>
    public static double BerdahlMartinC(double airC, double dewPointC, double solarHour)
    {
        var dew = dewPointC / 100;
        var emissivity = 0.711 + 0.56 * dew + 0.73 * dew * dew + 0.013 * Math.Cos(2 * Math.PI * solarHour / 24);
        return (airC + 273.15) * Math.Sqrt(Math.Sqrt(emissivity)) - 273.15;
    }
}
