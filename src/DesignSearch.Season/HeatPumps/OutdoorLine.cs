namespace DesignSearch.Season.HeatPumps;

/// <summary>
/// A line with up to three bends through two to five points over outdoor temperature; it runs on straight beyond the coldest point and 10 K
/// beyond
/// the warmest. Written as one slope and its turns, so that lanes of different pumps need no search.
/// </summary>
/// <param name="FromC">Coldest point [°C].</param>
/// <param name="Value">Value there.</param>
/// <param name="Slope">Slope from there [1/K].</param>
/// <param name="Bend1C">First bend [°C].</param>
/// <param name="Turn1">What the slope gains there [1/K].</param>
/// <param name="Bend2C">Second bend [°C].</param>
/// <param name="Turn2">What the slope gains there [1/K].</param>
/// <param name="Bend3C">Third bend [°C].</param>
/// <param name="Turn3">What the slope gains there [1/K].</param>
/// <param name="ToC">Outdoor air beyond which the value stays [°C].</param>
public readonly record struct OutdoorLine(
    double FromC,
    double Value,
    double Slope,
    double Bend1C,
    double Turn1,
    double Bend2C,
    double Turn2,
    double Bend3C,
    double Turn3,
    double ToC)
{
    private const int Most = 5;
    private const double BeyondK = 10;

    /// <summary>The line through points.</summary>
    /// <param name="points">Two to five points, from the coldest to the warmest.</param>
    /// <param name="value">What of a point is the value.</param>
    /// <exception cref="ArgumentException">Too few or too many points, or not in order.</exception>
    public static OutdoorLine Through(IReadOnlyList<RatedPoint> points, Func<RatedPoint, double> value)
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(value);
        if (points.Count is < 2 or > Most)
            throw new ArgumentException("Two to five points are needed.", nameof(points));
        Span<double> slopes = stackalloc double[Most - 1];
        Span<double> bends = stackalloc double[Most - 1];
        Span<double> turns = stackalloc double[Most - 1];
        slopes.Clear();
        bends.Clear();
        turns.Clear();
        for (var i = 1; i < points.Count; i++)
        {
            var apart = points[i].OutdoorC - points[i - 1].OutdoorC;
            if (!(apart > 0))
                throw new ArgumentException("Points go from the coldest to the warmest.", nameof(points));
            slopes[i - 1] = (value(points[i]) - value(points[i - 1])) / apart;
            if (i > 1)
                (bends[i - 2], turns[i - 2]) = (points[i - 1].OutdoorC, slopes[i - 1] - slopes[i - 2]);
        }

        return new(points[0].OutdoorC, value(points[0]), slopes[0], bends[0], turns[0], bends[1], turns[1], bends[2], turns[2],
            points[^1].OutdoorC + BeyondK);
    }

    /// <summary>The line with every value times a factor.</summary>
    /// <param name="factor">The factor, above 0.</param>
    public OutdoorLine Times(double factor) => this with
    {
        Value = factor * Value,
        Slope = factor * Slope,
        Turn1 = factor * Turn1,
        Turn2 = factor * Turn2,
        Turn3 = factor * Turn3,
    };
}
