namespace DesignSearch.Climate.Weather;

/// <summary>What a column of a weather file may hold.</summary>
public enum WeatherField
{
    /// <summary>Air temperature [°C].</summary>
    Air,

    /// <summary>Dew point [°C].</summary>
    DewPoint,

    /// <summary>Relative humidity [%].</summary>
    Humidity,

    /// <summary>Wind at 10 m [m/s].</summary>
    Wind,

    /// <summary>Global irradiance on the level [W/m²].</summary>
    Global,

    /// <summary>Diffuse irradiance on the level [W/m²].</summary>
    Diffuse,

    /// <summary>Beam normal to the sun [W/m²].</summary>
    BeamNormal,

    /// <summary>Beam on the level [W/m²].</summary>
    BeamLevel,

    /// <summary>Long-wave irradiance from the sky [W/m²].</summary>
    SkyLongWave,

    /// <summary>Wind at 2 m [m/s]; used where there is none at 10 m.</summary>
    WindAt2M,

    /// <summary>Cover of the sky by cloud [%].</summary>
    Cloud,

    /// <summary>Highest air temperature of a day [°C].</summary>
    High,

    /// <summary>Lowest air temperature of a day [°C].</summary>
    Low,
}
