using DesignSearch.Files;
using DesignSearch.Runs.Simulate;

namespace DesignSearch.Reporting.Tables;

/// <summary>Many simulated layouts as a table, one a row and weather.</summary>
public sealed class SimulationTable
{
    private static readonly (string Name, Func<SimulatedLayout, object?> Value)[] Figures =
    [
        ("name", l => l.Name),
        ("weather", l => l.Weather),
        ("holds", l => l.Holds ? "yes" : "no"),
        ("fails", l => string.Join(' ', l.Fails)),
        ("build_price", l => l.BuildPrice),
        ("life_cost", l => l.LifeCost),
        ("score", l => Finite(l.Score)),
        ("frost_hours", l => Finite(l.FrostHours)),
        ("worst_frost_hours", l => l.WorstFrostHours),
        ("frost_degree_hours_kh", l => Finite(l.FrostDegreeHoursKh)),
        ("lowest_air_c", l => Finite(l.LowestAirC)),
        ("standby_kwh", l => Finite(l.StandbyKwh)),
        ("electric_kwh", l => Finite(l.ElectricKwh)),
        ("collector_yield_kwh", l => Finite(l.CollectorYieldKwh)),
        ("pump_hours", l => Finite(l.PumpHours)),
    ];

    private readonly CsvText text = new([], [.. Figures.Select(f => f.Name)]);

    /// <summary>Adds a row.</summary>
    /// <param name="layout">The layout.</param>
    public void Add(SimulatedLayout layout) => text.Row([.. Figures.Select(f => f.Value(layout))]);

    /// <inheritdoc/>
    public override string ToString() => text.ToString();

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
