using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>Where the weather comes from: a record read from a file, or twelve monthly means.</summary>
/// <param name="Record">The file's record; null when means are given.</param>
/// <param name="Monthly">The means; null when a file is given.</param>
/// <param name="Sentence">Where it came from, for the report.</param>
/// <param name="Seed">Seed of winters that are made.</param>
public sealed record ClimateSource(WeatherRecord? Record, MonthlyClimate? Monthly, string Sentence, ulong Seed = 1)
{
    /// <summary>The lowest temperature the builder knows of.</summary>
    public KnownLowest? Known { get; init; }

    /// <summary>Standard deviation of the lowest temperature from year to year [K].</summary>
    public double LowestYearlySpreadK { get; init; } = 3;

    /// <summary>Share of each month with snow on the ground, January first; null: no snow.</summary>
    public IReadOnlyList<double>? SnowCoverByMonth { get; init; }
}
