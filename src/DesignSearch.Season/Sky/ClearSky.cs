namespace DesignSearch.Season;

/// <summary>Temperature of a sky without cloud. Clear-sky formulas only: cloud must be added before they are used for a season.</summary>
public static class ClearSky
{
    private const double Kelvin = 273.15;

    /// <summary>0.0552 Ta^1.5 in kelvin (Swinbank 1963) [°C].</summary>
    /// <param name="airC">Air [°C].</param>
    public static double SwinbankC(double airC) => 0.0552 * Math.Pow(airC + Kelvin, 1.5) - Kelvin;

    /// <summary>Emissivity 0.711 + 0.56 Td/100 + 0.73 (Td/100)² + 0.013 cos(2πh/24) (Berdahl and Martin 1984).</summary>
    /// <param name="dewPointC">Dew point [°C].</param>
    /// <param name="hour">Hour of the day, solar.</param>
    public static double BerdahlMartinEmissivity(double dewPointC, double hour) =>
        0.711 + 0.56 * (dewPointC / 100) + 0.73 * (dewPointC / 100) * (dewPointC / 100) + 0.013 * Math.Cos(2 * Math.PI * hour / 24);

    /// <summary>Sky temperature from that emissivity [°C].</summary>
    /// <param name="airC">Air [°C].</param>
    /// <param name="dewPointC">Dew point [°C].</param>
    /// <param name="hour">Hour of the day, solar.</param>
    public static double BerdahlMartinC(double airC, double dewPointC, double hour) => (airC + Kelvin) * Math.Pow(BerdahlMartinEmissivity(dewPointC, hour), 0.25) - Kelvin;
}
