namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>The best of the front for a sum of money.</summary>
/// <param name="UpTo">The sum, as build price.</param>
/// <param name="Rank">Rank of the layout; 0 for the bare house.</param>
/// <param name="Title">The layout in a few plain words.</param>
/// <param name="BuildPrice">Its build price.</param>
/// <param name="FrostDegreeHoursKh">Frost degree-hours that are left, weighted over the winters [K·h].</param>
/// <param name="WorstFrostHours">Frost hours of the worst winter that are left.</param>
/// <param name="TakenAwayKh">Frost degree-hours less than in the row before [K·h].</param>
public sealed record Purchase(decimal UpTo, int Rank, string Title, decimal BuildPrice, double FrostDegreeHoursKh, int WorstFrostHours, double TakenAwayKh);
