using DesignSearch.Climate.Weather;

namespace DesignSearch.Cli;

/// <summary>What <c>weather --json</c> prints.</summary>
public sealed record WeatherReport(
    string Place,
    double LatitudeDeg,
    double LongitudeDeg,
    double ElevationM,
    double ZoneHours,
    string Source,
    string Period,
    IReadOnlyList<MonthSummary> Months,
    double FrostHours,
    double ColdestDayC,
    double ColdestThreeDaysC,
    double ColdestWeekC,
    IReadOnlyList<WeatherSpell> ColdSpells,
    IReadOnlyList<WeatherSpell> DarkRuns,
    IReadOnlyDictionary<string, IReadOnlyDictionary<string, double>> Shares,
    double LightAfterStampMin,
    IReadOnlyList<string> Doubts,
    IReadOnlyList<string> Repairs)
{
    /// <summary>Takes the figures of a record.</summary>
    public static WeatherReport Of(WeatherRecord r) => new(
        r.Place.Name, r.Place.LatitudeDeg, r.Place.LongitudeDeg, r.Place.ElevationM, r.Place.ZoneHours, r.Source, r.Period,
        r.Summary.Months, r.Summary.FrostHours, r.Summary.ColdestDayC, r.Summary.ColdestThreeDaysC, r.Summary.ColdestWeekC, r.ColdSpells, r.DarkRuns,
        SharesOf(r),
        r.SunFit.FoundMin, r.Doubts, r.Repairs);

    private static Dictionary<string, IReadOnlyDictionary<string, double>> SharesOf(WeatherRecord r) => r.Origins.Keys.Order().ToDictionary(
        Camel, f => (IReadOnlyDictionary<string, double>)r.Shares(f).ToDictionary(s => Camel(s.Key), s => s.Value));

    private static string Camel<T>(T name) where T : struct, Enum => System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(name.ToString());
}
