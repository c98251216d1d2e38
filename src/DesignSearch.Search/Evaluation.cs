namespace DesignSearch.Search;

/// <summary>The result of one evaluated point.</summary>
/// <param name="Objectives">One value per objective, all minimised, finite.</param>
/// <param name="Violations">One value per constraint, 0 where it is met, else how far it is missed.</param>
/// <param name="Merit">A further measure that the problem wants the best of kept (higher is better); 0 where it has none.</param>
public sealed record Evaluation(double[] Objectives, double[] Violations, double Merit = 0)
{
    /// <summary>Sum of the violations; 0 where every constraint is met.</summary>
    public double TotalViolation
    {
        get
        {
            var sum = 0.0;
            foreach (var violation in Violations)
                sum += Math.Max(violation, 0);
            return sum;
        }
    }
}
