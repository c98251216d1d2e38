namespace DesignSearch.Climate.Weather;

/// <summary>What a person should know of a weather record at a glance.</summary>
/// <param name="Months">The months the record holds, in calendar order; twelve for a whole year.</param>
/// <param name="FrostHours">Hours below 0 °C in a mean year of the record [h].</param>
/// <param name="ColdestDayC">Lowest mean of a calendar day [°C].</param>
/// <param name="ColdestThreeDaysC">Lowest mean of three days running [°C].</param>
/// <param name="ColdestWeekC">Lowest mean of seven days running [°C].</param>
public sealed record WeatherSummary(
    IReadOnlyList<MonthSummary> Months,
    double FrostHours,
    double ColdestDayC,
    double ColdestThreeDaysC,
    double ColdestWeekC);
