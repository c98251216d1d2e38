namespace DesignSearch.Climate.Weather;

/// <summary>A run of cold or dark days in a record.</summary>
/// <param name="First">First day; its year is nominal in a typical year.</param>
/// <param name="Days">Length.</param>
/// <param name="MeanC">Mean air over the run [°C].</param>
/// <param name="LowestC">Lowest hour mean [°C].</param>
/// <param name="SunKwhPerM2Day">Mean daily sun on the level [kWh/m²].</param>
public sealed record WeatherSpell(DateOnly First, int Days, double MeanC, double LowestC, double SunKwhPerM2Day);
