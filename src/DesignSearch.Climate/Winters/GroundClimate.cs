namespace DesignSearch.Climate.Winters;

/// <summary>Yearly wave of the undisturbed ground surface, after Kusuda and Achenbach (1965).</summary>
/// <param name="MeanC">Yearly mean at the surface [°C].</param>
/// <param name="AmplitudeK">Half the yearly swing [K], 0 or more.</param>
/// <param name="ColdestDay">Day of the year with the coldest surface, 1 to 365.</param>
public sealed record GroundClimate(double MeanC, double AmplitudeK, double ColdestDay)
{
    /// <summary>Ground temperature at a depth on a day.</summary>
    /// <param name="depthM">Depth below the surface [m], 0 or more.</param>
    /// <param name="dayOfYear">Day, may carry a fraction.</param>
    /// <param name="diffusivityM2PerS">Thermal diffusivity of the soil [m²/s], about 3e-7 (dry) to 1e-6 (wet).</param>
    /// <returns>Temperature [°C].</returns>
    public double TemperatureC(double depthM, double dayOfYear, double diffusivityM2PerS)
    {
        var perDay = diffusivityM2PerS * 86400;
        var damping = depthM * Math.Sqrt(Math.PI / (365 * perDay));
        var lagDays = depthM / 2 * Math.Sqrt(365 / (Math.PI * perDay));
        return MeanC - AmplitudeK * Math.Exp(-damping) * Math.Cos(2 * Math.PI / 365 * (dayOfYear - ColdestDay - lagDays));
    }
}
