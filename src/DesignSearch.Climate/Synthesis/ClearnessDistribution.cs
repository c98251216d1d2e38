using MathNet.Numerics.RootFinding;

namespace DesignSearch.Climate.Synthesis;

/// <summary>How the clearness of single days is spread in a month; Hollands and Huget, Solar Energy 30 (1983).</summary>
public sealed class ClearnessDistribution
{
    private const double Highest = 0.864;
    private readonly double lambda;
    private readonly double scale;

    /// <summary>For a month of a given mean.</summary>
    /// <param name="monthlyClearness">Mean clearness, 0.1 to 0.8; outside it is clipped.</param>
    public ClearnessDistribution(double monthlyClearness)
    {
        var gamma = Highest / (Highest - Math.Clamp(monthlyClearness, 0.1, 0.8));
        lambda = (2 * gamma - 17.519 * Math.Exp(-1.3118 * gamma) - 1062 * Math.Exp(-5.0426 * gamma)) / Highest;
        scale = 1 / (Math.Exp(lambda * Highest) - 1 - lambda * Highest);
    }

    /// <summary>Share of days not clearer than this, 0 to 1.</summary>
    /// <param name="clearness">Daily clearness.</param>
    public double Share(double clearness)
    {
        var k = Math.Clamp(clearness, 0, Highest);
        return scale * ((1 + lambda * (Highest - k)) * Math.Exp(lambda * k) - (1 + lambda * Highest));
    }

    /// <summary>The clearness that a share of the days does not exceed.</summary>
    /// <param name="share">0 to 1.</param>
    public double AtShare(double share) =>
        share <= 0 ? 0 : share >= Share(Highest) ? Highest : Bisection.FindRoot(k => Share(k) - share, 0, Highest, 1e-10, 200);
}
