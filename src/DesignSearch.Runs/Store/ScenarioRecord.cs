using DesignSearch.Files;

namespace DesignSearch.Runs.Store;

/// <summary>The scenario in the words of the report.</summary>
public sealed record ScenarioRecord
{
    /// <summary>Name of the run.</summary>
    public required string Name { get; init; }

    /// <summary>The scenario's own description; says so where it is invented.</summary>
    public required string Description { get; init; }

    /// <summary>Currency word for display.</summary>
    public required string Currency { get; init; }

    /// <summary>Place for display.</summary>
    public required string PlaceName { get; init; }

    /// <summary>Latitude, north positive [°].</summary>
    public required double LatitudeDeg { get; init; }

    /// <summary>Longitude, east positive [°].</summary>
    public required double LongitudeDeg { get; init; }

    /// <summary>Season in words, for instance "1 November to 31 March".</summary>
    public required string Season { get; init; }

    /// <summary>Frost limit [°C].</summary>
    public required double FrostLimitC { get; init; }

    /// <summary>Limit of the build price.</summary>
    public required decimal Budget { get; init; }

    /// <summary>Years of use.</summary>
    public required int Years { get; init; }

    /// <summary>Interest the builder counts with, per year [0…1].</summary>
    public required double Interest { get; init; }

    /// <summary>Price of a kilowatt-hour.</summary>
    public required decimal TariffPerKwh { get; init; }

    /// <summary>The house in a few plain words.</summary>
    public required string House { get; init; }

    /// <summary>The winters it was judged on.</summary>
    public required IReadOnlyList<WinterRecord> Winters { get; init; }

    /// <summary>Where the weather came from, in a plain sentence, attribution included.</summary>
    public required string WeatherSource { get; init; }

    /// <summary>What is in doubt about the weather or the season, in plain sentences.</summary>
    public IReadOnlyList<string> InDoubt { get; init; } = [];

    /// <summary>What parts the cells of the tables that are written.</summary>
    public CellSeparator Separator { get; init; }

    /// <summary>Shares of the weather that were measured, modelled, filled and synthesised, field by field.</summary>
    public required IReadOnlyList<WeatherShare> WeatherShares { get; init; }

    /// <summary>Every assumption of the model with its value.</summary>
    public required IReadOnlyList<AssumptionRecord> Assumptions { get; init; }
}
