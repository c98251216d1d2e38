namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>A pick when one doubtful figure is otherwise.</summary>
/// <param name="What">What is otherwise, in plain words.</param>
/// <param name="Holds">True when it still holds: no frost hour in a design winter, inside the budget.</param>
/// <param name="WorstFrostHours">Frost hours of its worst winter.</param>
/// <param name="LowestAirC">Lowest hour mean [°C].</param>
/// <param name="StandbyKwh">Stand-by electricity, weighted over the winters [kWh].</param>
/// <param name="LifeCost">Life cost.</param>
/// <param name="Sentence">What that means, in a sentence.</param>
public sealed record Doubt(string What, bool Holds, int WorstFrostHours, double LowestAirC, double StandbyKwh, decimal LifeCost, string Sentence);
