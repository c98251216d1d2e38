using DesignSearch.Layouts.Decide.Judging;

namespace DesignSearch.Runs.Simulate;

/// <summary>One layout simulated by itself.</summary>
/// <param name="Scenario">Name of the scenario.</param>
/// <param name="Currency">Its currency word.</param>
/// <param name="FrostLimitC">Its frost limit [°C].</param>
/// <param name="LossWPerK">Loss coefficient of the house with what is added to its skin, night cover open, in calm air [W/K].</param>
/// <param name="Layout">The layout with all its figures.</param>
/// <param name="Files">Paths of the files that were read.</param>
public sealed record Simulation(string Scenario, string Currency, double FrostLimitC, double LossWPerK, JudgedLayout Layout, IReadOnlyList<string> Files);
