namespace DesignSearch.Reporting.Front;

/// <summary>An axis: even, or stretched near its start by a square root so that small amounts can still be told apart.</summary>
/// <param name="Largest">Largest value to be drawn.</param>
/// <param name="Stretched">True for the square root.</param>
/// <param name="Least">Where it starts; 0 for a stretched one.</param>
internal sealed record ChartScale(double Largest, bool Stretched, double Least = 0)
{
    private const double Headroom = 1.06;
    private const double NearestTicks = 0.09;

    private double End => Least + (Math.Max(Largest - Least, 1e-6) * Headroom);

    /// <summary>Where a value lies on the axis: 0 at its start, 1 at its end.</summary>
    public double Share(double value) => Stretched ? Math.Sqrt(Math.Max(0, value) / End) : (value - Least) / (End - Least);

    /// <summary>Round values to write at the axis, from its start up.</summary>
    public IReadOnlyList<double> Ticks()
    {
        if (!Stretched)
        {
            var step = RoundSteps().First(s => (End - Least) / s <= 6.5);
            var first = Math.Ceiling(Least / step);
            return [.. Enumerable.Range(0, (int)(Math.Floor(End / step) - first) + 1).Select(i => (first + i) * step)];
        }

        List<double> ticks = [0];
        var below = RoundSteps().TakeWhile(v => v <= End).Reverse().ToList();
        foreach (var value in below)
        {
            if (Share(value) > NearestTicks && (ticks.Count == 1 || Share(ticks[^1]) - Share(value) > NearestTicks))
                ticks.Add(value);
        }

        ticks.Sort();
        return ticks;
    }

    private static IEnumerable<double> RoundSteps()
    {
        for (var power = -6; power < 15; power++)
        {
            var unit = Math.Pow(10, power);
            yield return unit;
            yield return 2 * unit;
            yield return 5 * unit;
        }
    }
}
