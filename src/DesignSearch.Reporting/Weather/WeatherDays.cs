using System.Globalization;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Weather;

/// <summary>Weather day by day, as the picture of a weather file shows it. Every list has one entry a day; NaN leaves a gap.</summary>
public sealed record WeatherDays
{
    /// <summary>Title of the picture: place and period.</summary>
    public required string Title { get; init; }

    /// <summary>First day; the year is nominal for a typical year.</summary>
    public required DateOnly FirstDay { get; init; }

    /// <summary>Lowest hour of each day [°C].</summary>
    public required IReadOnlyList<double> LowestC { get; init; }

    /// <summary>Mean of each day [°C].</summary>
    public required IReadOnlyList<double> MeanC { get; init; }

    /// <summary>Highest hour of each day [°C].</summary>
    public required IReadOnlyList<double> HighestC { get; init; }

    /// <summary>Sun on the flat over each day [kWh/m²].</summary>
    public required IReadOnlyList<double> GhiKwhPerM2 { get; init; }

    /// <summary>Hours of each day below the frost limit.</summary>
    public required IReadOnlyList<double> FrostHours { get; init; }

    /// <summary>The frost limit [°C].</summary>
    public required double FrostLimitC { get; init; }

    /// <summary>What the picture shows, in one sentence; empty where the temperature is not known.</summary>
    public string Finding
    {
        get
        {
            if (ColdestDay is not { } coldest)
                return "";
            var hours = FrostHours.Where(double.IsFinite).Sum();
            var days = FrostHours.Count(h => h > 0);
            return string.Create(
                CultureInfo.InvariantCulture,
                $"Lowest {Say.Plain(Math.Round(LowestC[coldest], 1))} °C on {FirstDay.AddDays(coldest):d MMMM}; {hours:0} hours "
                    + $"below {Say.Plain(FrostLimitC)} °C, spread over {days} of {MeanC.Count} days");
        }
    }

    /// <summary>Number of the day with the lowest hour; null where none is known.</summary>
    public int? ColdestDay => Enumerable.Range(0, LowestC.Count).Where(d => double.IsFinite(LowestC[d])).Select(d => (int?)d).MinBy(d => LowestC[d!.Value]);
}
