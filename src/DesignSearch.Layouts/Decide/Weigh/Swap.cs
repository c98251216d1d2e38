namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>A layout with one choice changed for its neighbour; differences are the changed layout less the pick.</summary>
/// <param name="Choice">What is changed, in plain words.</param>
/// <param name="From">What the pick has.</param>
/// <param name="To">What takes its place.</param>
/// <param name="BuildPriceMore">Build price more.</param>
/// <param name="LifeCostMore">Life cost more.</param>
/// <param name="FrostDegreeHoursMoreKh">Frost degree-hours more, weighted over the winters [K·h].</param>
/// <param name="WorstFrostHours">Frost hours of its worst winter.</param>
/// <param name="StandbyMoreKwh">Stand-by electricity more, weighted over the winters [kWh].</param>
/// <param name="Holds">True when it holds.</param>
/// <param name="FailedCheck">The check it fails, in plain words; empty when it passes all.</param>
public sealed record Swap(
    string Choice,
    string From,
    string To,
    decimal BuildPriceMore,
    decimal LifeCostMore,
    double FrostDegreeHoursMoreKh,
    int WorstFrostHours,
    double StandbyMoreKwh,
    bool Holds,
    string FailedCheck);
