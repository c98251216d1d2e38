namespace DesignSearch.Search.Engine;

/// <summary>Where a search stands after a block.</summary>
/// <param name="Evaluations">Points evaluated so far, replayed ones included.</param>
/// <param name="Fraction">Share of the budget that is spent, 0 … 1; the time left follows from it.</param>
/// <param name="BestPerObjective">The least value met of each objective among points that meet every constraint; empty before the first.</param>
/// <param name="Hypervolume">Share of the box from the start's worst to its best figures that the front dominates; it may pass 1 and never falls.</param>
/// <param name="FrontSize">Points on the front.</param>
public sealed record SearchProgress(long Evaluations, double Fraction, IReadOnlyList<double> BestPerObjective, double Hypervolume, int FrontSize);
