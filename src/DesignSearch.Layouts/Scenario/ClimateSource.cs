using DesignSearch.Climate;

namespace DesignSearch.Layouts;

/// <summary>Where the weather comes from: a record read from a file, or twelve monthly means.</summary>
/// <param name="Record">The file's record; null when means are given.</param>
/// <param name="Monthly">The means; null when a file is given.</param>
/// <param name="Sentence">Where it came from, for the report.</param>
/// <param name="Seed">Seed of winters that are made.</param>
public sealed record ClimateSource(WeatherRecord? Record, MonthlyClimate? Monthly, string Sentence, ulong Seed = 1);
