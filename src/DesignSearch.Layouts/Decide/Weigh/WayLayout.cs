namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>The figures by which a way is compared.</summary>
/// <param name="Title">The layout in a few plain words.</param>
/// <param name="Holds">True when it holds.</param>
/// <param name="BuildPrice">Build price.</param>
/// <param name="LifeCost">Life cost.</param>
/// <param name="FrostDegreeHoursKh">Frost degree-hours, weighted over the winters [K·h].</param>
/// <param name="WorstFrostHours">Frost hours of the worst winter.</param>
/// <param name="StandbyKwh">Stand-by electricity, weighted over the winters [kWh].</param>
/// <param name="CollectorAreaM2">Collector [m²].</param>
public sealed record WayLayout(
    string Title,
    bool Holds,
    decimal BuildPrice,
    decimal LifeCost,
    double FrostDegreeHoursKh,
    int WorstFrostHours,
    double StandbyKwh,
    double CollectorAreaM2);
