using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Gathering;

/// <summary>A fan coil that works backwards by day: the house's surplus warms the tank's water.</summary>
/// <param name="AirWPerK">From the house's air to the water from the tank's top while pump and fan run, no more than the water carries [W/K].</param>
/// <param name="FanW">Electricity of pump and fan [W], all of which ends in the house's air.</param>
/// <param name="AboveC">Air above which it gathers, below the vents and above every heater [°C].</param>
public sealed record GatheringNumbers(double AirWPerK, double FanW, double AboveC) : SourceNumbers
{
    /// <inheritdoc/>
    public override bool IsPresent => AirWPerK > 0;

    // What a lane holds whose layout gathers nothing.
    internal static GatheringNumbers None { get; } = new(0, 0, 0);

    internal override SourceKind Kind => GatheringFlows.Kind;

    internal override SourceRunner<T> Open<T>(in SourceStart start, int batches) => new TankRunner<GatheringBlock<T>, T>(Kind, start, batches);
}
