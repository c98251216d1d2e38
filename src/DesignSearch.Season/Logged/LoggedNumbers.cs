using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Logged;

/// <summary>
/// What a log of a house says hour by hour, put in the place of heater and thermostat: heat that was given to the air, and hours in which the air is held at what
/// was measured. It writes down what the air then was.
/// </summary>
/// <param name="HeatW">Heat to the air, hour mean [W], one entry for each hour of the winter.</param>
/// <param name="HeldC">Air that is held in an hour [°C]; NaN where it runs free.</param>
/// <param name="AirC">Receives the air's mean of every hour [°C].</param>
public sealed record LoggedNumbers(double[] HeatW, double[] HeldC, double[] AirC) : SourceNumbers
{
    /// <inheritdoc/>
    public override bool IsPresent => HeatW.Length > 0;

    internal override SourceKind Kind => LoggedFlows.Kind;

    internal override SourceRunner<T> Open<T>(in SourceStart start, int batches)
    {
        var lanes = new (double[], double[], double[])?[batches * T.Width];
        for (var i = 0; i < lanes.Length; i++)
            lanes[i] = start.Find<LoggedNumbers>(i) is { } log ? (log.HeatW, log.HeldC, log.AirC) : null;
        return new ArrayRunner<T>(Kind, lanes, start.StepSeconds);
    }
}
