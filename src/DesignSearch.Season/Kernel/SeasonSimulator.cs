namespace DesignSearch.Season;

/// <summary>Runs one winter over layouts, hour by hour in implicit Euler steps; the same layout gives the same bits wherever it stands in a block.</summary>
public static class SeasonSimulator
{
    /// <summary>Runs a block of layouts.</summary>
    /// <param name="winter">The winter, made ready.</param>
    /// <param name="block">The layouts.</param>
    /// <param name="outcomes">Receives one outcome for each, in their order.</param>
    /// <param name="stepSeconds">Step [s], a whole part of an hour.</param>
    /// <exception cref="ArgumentException">Too few places for the outcomes, a collector without a plane, or a step that does not divide an hour.</exception>
    public static void Run(WinterForcing winter, ReadOnlySpan<LayoutCase> block, Span<Outcome> outcomes, double stepSeconds = 300)
    {
        if (outcomes.Length < block.Length)
            throw new ArgumentException("There are fewer places for outcomes than layouts.", nameof(outcomes));
        for (var i = 0; i < block.Length; i++)
            outcomes[i] = Run(winter, block[i], null, stepSeconds);
    }

    /// <summary>Runs one layout.</summary>
    /// <param name="winter">The winter, made ready.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="hourly">Receives every hour, warm-up included; null when nobody asks.</param>
    /// <param name="stepSeconds">Step [s], a whole part of an hour.</param>
    /// <exception cref="ArgumentException">A collector without a plane, or a step that does not divide an hour.</exception>
    public static Outcome Run(WinterForcing winter, LayoutCase layout, Action<HourRow>? hourly = null, double stepSeconds = 300)
    {
        ArgumentNullException.ThrowIfNull(winter);
        ArgumentNullException.ThrowIfNull(layout);
        if (layout.Installation.Collector.AreaM2 > 0 && layout.Plane is null)
            throw new ArgumentException("A collector needs the irradiance of its plane.", nameof(layout));
        var steps = (int)Math.Round(3600 / stepSeconds);
        if (steps < 1 || Math.Abs(steps * stepSeconds - 3600) > 1e-9)
            throw new ArgumentException("The step must be a whole part of an hour.", nameof(stepSeconds));

        var run = new SeasonRun(winter, layout, stepSeconds, steps);
        for (var hour = 0; hour < winter.Winter.Hours; hour++)
            run.Hour(hour, hourly);
        return run.Close();
    }
}
