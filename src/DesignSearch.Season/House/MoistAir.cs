using DesignSearch.Physics;

namespace DesignSearch.Season.House;

/// <summary>Water in air.</summary>
public static class MoistAir
{
    /// <summary>Saturation pressure over ice below 0 °C and over water above [Pa] (Hyland and Wexler 1983, ASHRAE Handbook Fundamentals).</summary>
    /// <param name="airC">Temperature [°C], −100 to 200.</param>
    public static double SaturationPa(double airC)
    {
        var t = airC + Temperature.ZeroCelsiusK;
        var exponent = airC < 0
            ? -5.6745359e3 / t + 6.3925247 - 9.677843e-3 * t + 6.2215701e-7 * t * t + 2.0747825e-9 * t * t * t - 9.484024e-13 * t * t * t * t + 4.1635019 * Math.Log(t)
            : -5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t * t - 1.4452093e-8 * t * t * t + 6.5459673 * Math.Log(t);
        return Math.Exp(exponent);
    }

    /// <summary>Kilograms of water per kilogram of dry air when saturated: 0.621945 pws/(p − pws).</summary>
    /// <param name="airC">Temperature [°C].</param>
    /// <param name="pressurePa">Pressure [Pa].</param>
    public static double SaturatedHumidityRatio(double airC, double pressurePa = 101325) => 0.621945 * SaturationPa(airC) / (pressurePa - SaturationPa(airC));

    /// <summary>Inner surface of a cover in steady state [°C]: Ti − U/hi (Ti − To).</summary>
    /// <param name="insideC">Ti [°C].</param>
    /// <param name="outsideC">To [°C].</param>
    /// <param name="uWPerM2K">U [W/(m²K)].</param>
    /// <param name="insideFilmWPerM2K">hi [W/(m²K)].</param>
    public static double InnerSurfaceC(double insideC, double outsideC, double uWPerM2K, double insideFilmWPerM2K) => insideC - uWPerM2K / insideFilmWPerM2K * (insideC - outsideC);

    /// <summary>Relative humidity above which a surface drips [0…1].</summary>
    /// <param name="airC">Air [°C].</param>
    /// <param name="surfaceC">Surface [°C].</param>
    public static double DrippingHumidity(double airC, double surfaceC) => SaturationPa(surfaceC) / SaturationPa(airC);
}
