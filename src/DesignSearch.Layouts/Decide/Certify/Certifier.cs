using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Cheapest;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Search;
using DesignSearch.Search.Proof;

namespace DesignSearch.Layouts.Decide.Certify;

/// <summary>Proves that nothing cheaper than the answer holds, or says how far it came; docs/decisions/0015-certificate.md.</summary>
/// <param name="assessor">Prices, checks and simulates.</param>
/// <param name="threads">Threads to work on; the result does not depend on it.</param>
public sealed class Certifier(LayoutAssessor assessor, int threads)
{
    // Without a collector most spaces are proved to the end; with one little is gained by more (docs/decisions/0021-intervals.md).
    private const long MostWithout = 9_000;
    private const long MostWith = 6_000;
    private const long MostBoxes = 200_000;

    // Layouts of the search that the bounds are held against before anything is said.
    private const int MostHeldAgainst = 2000;

    /// <summary>The certificate of a search that went through every layout.</summary>
    /// <param name="cheapest">The cheapest that holds; null where none does.</param>
    public static Certificate Exact(decimal? cheapest) =>
        new(CertificateWords.Exact(cheapest is not null), true, cheapest, cheapest, cheapest is null ? null : 0, 0, 0, false);

    /// <summary>Proves.</summary>
    /// <param name="cheapest">What the cheapest layout known costs that holds; null where none is known.</param>
    /// <param name="ways">Ways to ask about besides, each with what its cheapest costs that is known to hold.</param>
    /// <param name="tried">Points that the search simulated.</param>
    /// <param name="progress">Told how far it is; null for silence.</param>
    /// <param name="cancel">Ends it; what is proved so far stands.</param>
    /// <returns>What is proved, and cheaper layouts that hold where some came to light.</returns>
    public Certified Of(
        decimal? cheapest,
        IReadOnlyList<(WayClass Way, decimal? Known)> ways,
        IReadOnlyList<(double[] Point, Evaluation Evaluation)> tried,
        IProgress<CheapestProof>? progress,
        CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(ways);
        ArgumentNullException.ThrowIfNull(tried);
        var problem = new CheapestLayouts(assessor);
        var known = Cost(cheapest);
        var passed = tried.Where(t => t.Evaluation.TotalViolation == 0).ToList();
        var every = Math.Max(1, passed.Count / MostHeldAgainst);
        if (passed.Where((_, i) => i % every == 0).Any(t => problem.Contradicts(t.Point)))
            return new(new(CertificateWords.Contradicted, false, null, cheapest, null, 0, 0, false), null, []);
        var costs = ways.Select(w => Cost(w.Known)).ToArray();
        var parts = new List<PartProof>();
        foreach (var (part, has) in new[] { (problem.ByCollector.Without, false), (problem.ByCollector.With, true) })
        {
            if (part is null)
                continue;
            var least = parts.Select(p => p.Proof.Cost).Append(known).Min();
            var proof = new CheapestProver(problem, has ? MostWith : MostWithout, MostBoxes, threads)
                .Run(part, null, least, [.. ways.Select((w, i) => problem.Aim(w.Way.Keeps, costs[i]))], progress, cancel);
            parts.Add(new(proof, has));
            for (var i = 0; i < costs.Length; i++)
                costs[i] = proof.Aims[i].Cost;
        }

        var space = new LayoutSpace(assessor.Scenario);
        Layout[] met = [.. parts.SelectMany(p => p.Proof.Aims).Select(a => a.Best).OfType<double[]>().Select(p => space.At(p)).Distinct()];
        var better = parts.Where(p => p.Proof.Best is not null).OrderBy(p => p.Proof.Cost).Select(p => space.At(p.Proof.Best!)).FirstOrDefault();
        WayBound Bound(int i) => new(
            ways[i].Way.Key,
            Below(parts.Min(p => Math.Min(p.Proof.Aims[i].Bound, costs[i]))),
            parts.All(p => p.HasCollector || p.Proof.Aims[i].Bound >= costs[i]));
        return new(Told(parts) with { Ways = [.. Enumerable.Range(0, ways.Count).Select(Bound)] }, better, met);
    }

    private Certificate Told(IReadOnlyList<PartProof> parts)
    {
        var (cost, bound) = (parts.Min(p => p.Proof.Cost), parts.Min(p => p.Proof.Bound));
        var (isComplete, isStopped) = (bound >= cost, parts.Any(p => p.Proof.IsStopped));
        var (found, below) = (Below(cost), Below(bound));
        var way = (parts.Sum(p => p.Proof.Simulations), parts.Sum(p => p.Proof.Boxes), isStopped && !isComplete);
        // Where one part is proved to the end and the other is not, that is worth a sentence.
        var half = !isComplete && parts.Count == 2 ? parts.FirstOrDefault(p => p.Proof.Bound >= cost) : null;
        return new(
            isComplete ? CertificateWords.Proved(found is not null, way.Item1, way.Item2)
                : half is not null ? CertificateWords.Half(half.HasCollector, below!.Value, found, assessor.Scenario.Money.Currency, way)
                : CertificateWords.Below(below!.Value, found, assessor.Scenario.Money.Currency, way),
            isComplete,
            below,
            found,
            found is > 0 ? Math.Round((double)((found.Value - below!.Value) / found.Value), 4) : null,
            way.Item1,
            way.Item2,
            way.Item3);
    }

    private static double Cost(decimal? cost) => cost is { } known ? (double)known : double.PositiveInfinity;

    private static decimal? Below(double bound) => double.IsFinite(bound) ? Cents(Math.Max(0, bound)) : null;

    private static decimal Cents(double amount) => decimal.Round((decimal)amount, 2, MidpointRounding.ToZero);

    private sealed record PartProof(CheapestProof Proof, bool HasCollector);
}
