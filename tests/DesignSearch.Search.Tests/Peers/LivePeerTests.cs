using DesignSearch.Search.Engine;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Search.Tests;

/// <summary>Ours and an outside program side by side in one run, on the same problem with the same number of calls; three seeds of nine on a usual day.</summary>
public class LivePeerTests
{
    [SkippableTheory]
    [InlineData("catalogue", 1000)]
    [InlineData("catalogue", 2000)]
    [InlineData("gear", 1000)]
    public void Median_of_nine_seeds_is_above_the_outside_nsga2(string name, int evaluations)
    {
        IProblem Make() => name == "gear" ? Engineering.Gear() : new CatalogueProblem(screened: false);
        var front = KnownFront.All[name];
        var theirs = new List<double>();
        var ours = new List<double>();
        var seeds = Longer.IsOn ? 9 : 3;
        for (var seed = 1; seed <= seeds; seed++)
        {
            var (found, missing) = OutsideNsga2.Run(Make(), seed, evaluations, 40);
            if (found is null)
            {
                Assert.False(Environment.GetEnvironmentVariable("DESIGNSEARCH_NO_SKIP") == "1", missing);
                Skip.If(true, missing);
            }

            theirs.Add(front.Share(found!));
            ours.Add(front.Share(new SearchEngine(Make(), new() { Seed = (ulong)seed, MaxEvaluations = evaluations, BlockSize = 1 }).Run().Front.Select(p => p.Evaluation.Objectives)));
        }

        theirs.Sort();
        ours.Sort();
        if (!Longer.IsOn)
        {
            Assert.InRange(ours[1], theirs[1], 1.00001);
            return;
        }

        Validation.Within($"search live {name} at {evaluations}", "share of the exact hypervolume, median of 9 seeds, every call counted", theirs[4], 1.00001, ours[4],
            FormattableString.Invariant($"NSGA-II of Debian's python3-deap, population 40, run beside it: {theirs[4]:0.0000}"), "SearchEngine.Run");
    }
}
