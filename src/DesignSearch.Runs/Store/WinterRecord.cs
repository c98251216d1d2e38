namespace DesignSearch.Runs.Store;

/// <summary>One winter as the report shows it.</summary>
/// <param name="Name">Name.</param>
/// <param name="Kind">"typical", "hard", "recorded" or "joined".</param>
/// <param name="Weight">Weight in the means.</param>
/// <param name="MeanC">Mean outdoor air of the season [°C].</param>
/// <param name="LowestC">Lowest outdoor hour mean [°C].</param>
/// <param name="FrostHoursOutside">Hours outdoors below the frost limit.</param>
/// <param name="SunKwhPerM2Day">Mean daily sun on the flat [kWh/m²].</param>
/// <param name="Remarks">What a reader must know of how it was made.</param>
public sealed record WinterRecord(
    string Name,
    string Kind,
    double Weight,
    double MeanC,
    double LowestC,
    int FrostHoursOutside,
    double SunKwhPerM2Day,
    IReadOnlyList<string> Remarks)
{
    /// <summary>
    /// Local standard time at the start of hour 0, warm-up counted, so that the hours of an outcome can be dated; null in runs that
    /// did not keep it. The year is nominal for typical winters.
    /// </summary>
    public DateTime? Start { get; init; }
}
