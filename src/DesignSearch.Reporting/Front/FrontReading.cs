namespace DesignSearch.Reporting.Front;

/// <summary>How the layouts of a run are read as a chart: what stands across, what stands up.</summary>
/// <param name="Words">The reading in a few words, to choose it by.</param>
/// <param name="Across">Across.</param>
/// <param name="Up">Up.</param>
/// <param name="ShowsHolding">True where the limit and the budget are lines, and grey is what does not hold.</param>
internal sealed record FrontReading(string Words, Func<FrontPoint, double> Across, Func<FrontPoint, double> Up, bool ShowsHolding)
{
    /// <summary>What the builder asks: how cold it gets for which price to build.</summary>
    public static readonly FrontReading ColdestHour = new("Coldest hour inside, against the price to build", p => p.BuildPrice, p => p.LowestAirC, true);

    /// <summary>What the search goes by: how much frost for which cost over the years.</summary>
    public static readonly FrontReading Frost = new("Frost, against the cost over the years", p => p.LifeCost, p => p.FrostKh, false);
}
