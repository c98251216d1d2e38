using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>A layout that was priced, simulated and checked.</summary>
/// <param name="Priced">The layout priced.</param>
/// <param name="Outcomes">One a winter.</param>
/// <param name="Checks">Every check.</param>
/// <param name="Figures">Its figures.</param>
/// <param name="StandbyKwh">Stand-by electricity, weighted over the winters [kWh].</param>
internal sealed record Trial(
    PricedLayout Priced,
    IReadOnlyList<Outcome> Outcomes,
    IReadOnlyList<Check> Checks,
    LayoutFigures Figures,
    double StandbyKwh)
{
    public Layout Layout => Priced.Built.Layout;

    public bool Holds => Figures.Holds;

    public Check? Failed => Checks.FirstOrDefault(c => !c.Passed);

    /// <summary>Parts over the years of use: build price and replacements.</summary>
    public decimal Parts => Priced.BuildPrice + Priced.Replacements;

    /// <summary>True when this serves a builder better: holding first, then passing checks, then less frost (or, holding, less cost).</summary>
    public bool Beats(Trial other) => Key().CompareTo(other.Key()) < 0;

    public WayLayout ToWay() => new(
        PlantWords.Title(Priced.Built),
        Holds,
        Figures.BuildPrice,
        Figures.LifeCost,
        Figures.FrostDegreeHoursKh,
        Figures.WorstFrostHours,
        StandbyKwh,
        Priced.Built.Find<DesignedSolar>()?.Loop.AreaM2 ?? 0);

    private (bool, bool, double, decimal) Key() => (!Holds, !Figures.PassesChecks, Holds ? 0 : Figures.FrostDegreeHoursKh, Figures.LifeCost);
}
