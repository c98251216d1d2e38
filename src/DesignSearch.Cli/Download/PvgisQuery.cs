namespace DesignSearch.Cli.Download;

/// <summary>What the service is asked for: a place, and its typical year or the hours of some years.</summary>
/// <param name="LatitudeDeg">North positive, −90 to 90.</param>
/// <param name="LongitudeDeg">East positive, −180 to 180.</param>
/// <param name="Years">First and last year of an hourly series, both within the served ones; none: the typical year.</param>
public sealed record PvgisQuery(double LatitudeDeg, double LongitudeDeg, YearSpan? Years)
{
    /// <summary>Years that version 5.3 of the service serves (its documentation of the hourly series).</summary>
    internal static YearSpan Served { get; } = new(2005, 2023);

    /// <summary>
    /// Tool and parameters as the service documents them, behind its address. The light is asked for on the level and without the hills
    /// that the service knows: the hills of the place are those of the scenario.
    /// </summary>
    internal string Target => Years is null
        ? FormattableString.Invariant($"tmy?lat={LatitudeDeg:0.####}&lon={LongitudeDeg:0.####}&usehorizon=0&outputformat=csv")
        : FormattableString.Invariant($"seriescalc?lat={LatitudeDeg:0.####}&lon={LongitudeDeg:0.####}&startyear={Years.First}&endyear={Years.Last}")
            + "&components=1&angle=0&aspect=0&usehorizon=0&outputformat=csv";
}
