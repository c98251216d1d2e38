using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Cheapest;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Search;
using DesignSearch.Search.Proof;

namespace DesignSearch.Layouts.Decide.Certify;

/// <summary>Proves that nothing cheaper than the answer holds, or says how far it came; docs/decisions/0015-certificate.md.</summary>
/// <param name="assessor">Prices, checks and simulates.</param>
/// <param name="threads">Threads to work on; the result does not depend on it.</param>
public sealed class Certifier(LayoutAssessor assessor, int threads)
{
    // Some forty seconds of two quiet cores on frost-hollow; what five times as many add to the bound is small on the cases tried.
    private const long MostSimulations = 6_000;
    private const long MostBoxes = 200_000;

    // Layouts of the search that the bounds are held against before anything is said.
    private const int MostHeldAgainst = 2000;

    /// <summary>The certificate of a search that went through every layout.</summary>
    /// <param name="cheapest">The cheapest that holds; null where none does.</param>
    public static Certificate Exact(decimal? cheapest) =>
        new(CertificateWords.Exact(cheapest is not null), true, cheapest, cheapest, cheapest is null ? null : 0, 0, 0, false);

    /// <summary>Proves.</summary>
    /// <param name="cheapest">What the cheapest layout known costs that holds; null where none is known.</param>
    /// <param name="tried">Points that the search simulated.</param>
    /// <param name="progress">Told how far it is; null for silence.</param>
    /// <param name="cancel">Ends it; what is proved so far stands.</param>
    /// <returns>What is proved, and a cheaper layout that holds where one came to light.</returns>
    public (Certificate Certificate, Layout? Better) Of(
        decimal? cheapest, IReadOnlyList<(double[] Point, Evaluation Evaluation)> tried, IProgress<CheapestProof>? progress, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(tried);
        var problem = new CheapestLayouts(assessor);
        var known = cheapest is { } cost ? (double)cost : double.PositiveInfinity;
        var passed = tried.Where(t => t.Evaluation.TotalViolation == 0).ToList();
        var every = Math.Max(1, passed.Count / MostHeldAgainst);
        if (passed.Where((_, i) => i % every == 0).Any(t => problem.Contradicts(t.Point)))
            return (new(CertificateWords.Contradicted, false, null, cheapest, null, 0, 0, false), null);
        var proof = new CheapestProver(problem, MostSimulations, MostBoxes, threads).Run(null, known, progress, cancel);
        var better = proof.Best is { } point ? new LayoutSpace(assessor.Scenario).At(point) : null;
        return (Told(proof), better);
    }

    private Certificate Told(CheapestProof proof)
    {
        var currency = assessor.Scenario.Money.Currency;
        decimal? found = double.IsFinite(proof.Cost) ? Cents(proof.Cost) : null;
        decimal? below = double.IsFinite(proof.Bound) ? Cents(Math.Max(0, proof.Bound)) : null;
        var stopped = proof.IsStopped && !proof.IsComplete;
        return new(
            proof.IsComplete
                ? CertificateWords.Proved(found is not null, proof.Simulations, proof.Boxes)
                : CertificateWords.Below(below!.Value, found, currency, (proof.Simulations, proof.Boxes, stopped)),
            proof.IsComplete,
            below,
            found,
            found is > 0 ? Math.Round((double)((found.Value - below!.Value) / found.Value), 4) : null,
            proof.Simulations,
            proof.Boxes,
            stopped);
    }

    private static decimal Cents(double amount) => decimal.Round((decimal)amount, 2, MidpointRounding.ToZero);
}
