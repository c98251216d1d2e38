namespace DesignSearch.Search;

/// <summary>The result of one evaluated point.</summary>
/// <param name="Objectives">One value per objective, all minimised, finite.</param>
/// <param name="Violations">One value per constraint, 0 where it is met, else how far it is missed.</param>
/// <param name="Merit">A further measure that the problem wants the best of kept (higher is better); 0 where it has none.</param>
public sealed record Evaluation(double[] Objectives, double[] Violations, double Merit = 0);
