using DesignSearch.Season.Sources;

namespace DesignSearch.Season.HeatPumps;

/// <summary>An air-source heat pump with one indoor unit and its thermostat.</summary>
/// <param name="HeatW">Heat at full output by outdoor air [W].</param>
/// <param name="Cop">Heat over electricity at full output by outdoor air, indoor air 20 °C.</param>
/// <param name="LeastShare">Least output while it runs as a share of the full one, above 0 to 1.</param>
/// <param name="CopGainAtLeast">Efficiency at least output as a factor on that at full output, 1 or more.</param>
/// <param name="CyclingLoss">Cd of EN 14825: share of efficiency lost when it runs hardly any of the time, 0 to below 1.</param>
/// <param name="LeastOutdoorC">Outdoor air below which it stops [°C].</param>
/// <param name="IdleW">Electricity while the compressor rests [W].</param>
/// <param name="IsFrostRated">Whether the points hold the defrosting.</param>
/// <param name="SetPointC">Middle of the band that is dialled in, never below what the unit can hold [°C].</param>
public sealed record HeatPumpNumbers(
    OutdoorLine HeatW,
    OutdoorLine Cop,
    double LeastShare,
    double CopGainAtLeast,
    double CyclingLoss,
    double LeastOutdoorC,
    double IdleW,
    bool IsFrostRated,
    double SetPointC) : SourceNumbers
{
    /// <inheritdoc/>
    public override bool IsPresent => LeastShare > 0;

    // What a lane holds whose layout has no heat pump: nothing comes of it.
    internal static HeatPumpNumbers None { get; } = new(default, default, 0, 1, 0, double.NegativeInfinity, 0, true, 0);

    internal override SourceKind Kind => HeatPumpFlows.Kind;

    internal override SourceRunner<T> Open<T>(in SourceStart start, int batches) =>
        new BlockRunner<HeatPumpBlock<T>, T>(Kind, start, batches);
}
