using DesignSearch.Layouts.Design.Money;

namespace DesignSearch.Layouts.Assess;

/// <summary>The figures by which layouts are compared.</summary>
/// <param name="BuildPrice">What is bought.</param>
/// <param name="LifeCost">Build price plus present value of the years of use; own work too where the builder gave a rate.</param>
/// <param name="Running">Running cost.</param>
/// <param name="FrostHours">Frost hours, weighted over the winters.</param>
/// <param name="FrostDegreeHoursKh">Frost degree-hours, weighted over the winters [K·h].</param>
/// <param name="WorstFrostHours">Frost hours of the worst winter.</param>
/// <param name="LowestAirC">Lowest hour mean over the winters [°C].</param>
/// <param name="PassesChecks">True when every check passes.</param>
public sealed record LayoutFigures(
    decimal BuildPrice,
    decimal LifeCost,
    RunningCost Running,
    double FrostHours,
    double FrostDegreeHoursKh,
    int WorstFrostHours,
    double LowestAirC,
    bool PassesChecks)
{
    /// <summary>True when no design winter has a frost hour and every check passes.</summary>
    public bool Holds => PassesChecks && WorstFrostHours == 0;

    /// <summary>Frost-free hours gained over the bare house per unit of life cost; 0 for a layout that costs nothing.</summary>
    /// <param name="bareFrostHours">Frost hours of the bare house, weighted over the same winters.</param>
    public double Score(double bareFrostHours) => LifeCost > 0 ? (bareFrostHours - FrostHours) / (double)LifeCost : 0;
}
