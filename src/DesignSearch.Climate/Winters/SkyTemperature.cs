using DesignSearch.Physics;

namespace DesignSearch.Climate.Winters;

/// <summary>Long-wave light of the sky.</summary>
public static class SkyTemperature
{
    /// <summary>Clear-sky emissivity; P. Berdahl and M. Martin, Solar Energy 32 (1984).</summary>
    /// <param name="dewPointC">[°C], −20 to 30.</param>
    /// <param name="solarHour">Hours since solar midnight.</param>
    /// <param name="pressureHPa">Of the air [hPa]: less of it above a high place shines less.</param>
    public static double ClearEmissivity(double dewPointC, double solarHour, double pressureHPa)
    {
        var d = dewPointC / 100;
        return 0.711 + 0.56 * d + 0.73 * d * d + 0.013 * Math.Cos(2 * Math.PI * solarHour / 24) + 0.00012 * (pressureHPa - 1000);
    }

    /// <summary>Sky temperature under cloud: eight tenths of what the clear sky lacks is made up by a full cover.</summary>
    /// <param name="airC">[°C].</param>
    /// <param name="dewPointC">[°C].</param>
    /// <param name="cloud">0 clear to 1 overcast.</param>
    /// <param name="solarHour">Hours since solar midnight.</param>
    /// <param name="pressureHPa">Of the air [hPa].</param>
    /// <returns>[°C].</returns>
    public static double UnderCloudC(double airC, double dewPointC, double cloud, double solarHour, double pressureHPa)
    {
        var clear = ClearEmissivity(dewPointC, solarHour, pressureHPa);
        var emissivity = Math.Min(1, clear + 0.8 * (1 - clear) * cloud);
        return (airC + Temperature.ZeroCelsiusK) * Math.Sqrt(Math.Sqrt(emissivity)) - Temperature.ZeroCelsiusK;
    }

    /// <summary>Sky temperature that gives a measured long-wave irradiance.</summary>
    /// <param name="longWaveWPerM2">[W/m²], over 0.</param>
    /// <returns>[°C].</returns>
    public static double FromLongWaveC(double longWaveWPerM2) =>
        Math.Sqrt(Math.Sqrt(Math.Max(50, longWaveWPerM2) / Radiation.StefanBoltzmannWPerM2K4)) - Temperature.ZeroCelsiusK;

    /// <summary>Long-wave irradiance of a sky of a temperature [W/m²].</summary>
    /// <param name="skyC">[°C].</param>
    public static double LongWave(double skyC) => Radiation.StefanBoltzmannWPerM2K4 * Math.Pow(skyC + Temperature.ZeroCelsiusK, 4);

    /// <summary>
    /// Cover of the sky hour by hour from the clearness of the days, which runs straight from noon to noon. The line is fitted to the nights of seven open
    /// typical years (TMY3: opaque cover, October to April): it leaves −0.06 to +0.08 of a site's mean cover by night.
    /// </summary>
    /// <param name="clearness">Daily global over extraterrestrial irradiation; at least one day.</param>
    /// <param name="hour">Hours since the first day's midnight.</param>
    /// <returns>0 to 1.</returns>
    public static double CoverAt(double[] clearness, double hour) => Math.Clamp(1.345 - 1.752 * ClearnessAt(clearness, hour), 0, 1);

    /// <summary>Clearness that runs straight from noon to noon.</summary>
    /// <param name="clearness">Of the days; at least one.</param>
    /// <param name="hour">Hours since the first day's midnight.</param>
    internal static double ClearnessAt(double[] clearness, double hour)
    {
        var days = Math.Clamp(hour / 24 - 0.5, 0, clearness.Length - 1);
        var day = Math.Min((int)days, Math.Max(0, clearness.Length - 2));
        var next = Math.Min(day + 1, clearness.Length - 1);
        return clearness[day] + (days - day) * (clearness[next] - clearness[day]);
    }
}
