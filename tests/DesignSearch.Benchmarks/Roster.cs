using DesignSearch.Search;
using DesignSearch.Search.Engine;
using DesignSearch.Search.Tests;

namespace DesignSearch.Benchmarks;

/// <summary>The problems of the table: a name, the known front, a fresh problem.</summary>
internal static class Roster
{
    public static IReadOnlyList<(string Name, string Front, Func<IProblem> Make)> All { get; } =
    [
        ("catalogue", "catalogue", () => new CatalogueProblem()),
        ("catalogue-black", "catalogue", () => new CatalogueProblem(screened: false)),
        ("catalogue 7", "7", () => new CatalogueProblem(7)),
        ("catalogue 77", "77", () => new CatalogueProblem(77)),
        ("catalogue 777", "777", () => new CatalogueProblem(777)),
        ("gear", "gear", Engineering.Gear),
        ("ZDT1", "ZDT1", () => Continuous.Zdt(1)),
        ("ZDT1-inside", "ZDT1", Continuous.MovedInside),
        ("ZDT2", "ZDT2", () => Continuous.Zdt(2)),
        ("ZDT3", "ZDT3", () => Continuous.Zdt(3)),
        ("ZDT4", "ZDT4", () => Continuous.Zdt(4)),
        ("ZDT6", "ZDT6", () => Continuous.Zdt(6)),
        ("RE21", "RE21", () => Engineering.Re(21)),
        ("RE22", "RE22", () => Engineering.Re(22)),
        ("RE23", "RE23", () => Engineering.Re(23)),
        ("RE24", "RE24", () => Engineering.Re(24)),
        ("RE25", "RE25", () => Engineering.Re(25)),
        .. new[] { (1, 12, 4, 12), (2, 12, 4, 12), (3, 12, 4, 24), (4, 12, 4, 66), (5, 10, 5, 15), (6, 15, 3, 20), (7, 8, 8, 12), (8, 12, 4, 18) }
            .Select(c => ($"coupled {c.Item1}", $"coupled {c.Item1}", (Func<IProblem>)(() => new CoupledKinds(c.Item1, c.Item2, c.Item3, c.Item4)))),
        .. new[] { (1, 6, 4, 8, 2.0), (2, 6, 4, 8, 1.0), (3, 4, 6, 10, 2.0), (4, 3, 5, 6, 2.0), (5, 5, 4, 12, 1.0), (6, 2, 6, 5, 1.0) }
            .Select(c => ($"fitted {c.Item1}", $"fitted {c.Item1}", (Func<IProblem>)(() => new FittedKinds(c.Item1, c.Item2, c.Item3, c.Item4, c.Item5)))),
        .. new[] { (1, 1, 1.0, 0.0), (2, 1, 2.0, 0.0), (3, 2, 1.0, 0.0), (4, 3, 1.0, 0.0), (5, 1, 1.0, 0.2), (6, 2, 1.5, 0.1) }
            .Select(c => ($"moved {c.Item1}", $"ZDT{c.Item2}", (Func<IProblem>)(() => Continuous.Moved(c.Item2, c.Item1, c.Item3, c.Item4)))),
    ];

    /// <summary>The known front; that of another catalogue is proved by branch and bound first.</summary>
    public static KnownFront Front(string key)
    {
        if (KnownFront.All.TryGetValue(key, out var known))
            return known;
        switch (All.First(p => p.Front == key).Make())
        {
            case CoupledKinds coupled:
                return coupled.Front();
            case FittedKinds fitted:
                return fitted.Front();
        }

        var result = new SearchEngine(new CatalogueProblem(ulong.Parse(key, System.Globalization.CultureInfo.InvariantCulture)), new() { MaxEvaluations = 10_000, ProofSimulations = 20_000_000 }).Run();
        if (!result.IsExact)
            throw new InvalidOperationException(result.StoppedInWords);
        return KnownFront.Of(result.Front.Select(p => p.Evaluation.Objectives));
    }
}
