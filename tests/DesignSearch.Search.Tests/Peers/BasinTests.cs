using DesignSearch.Search.Engine;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Search.Tests;

/// <summary>Problems on which changing one thing after another ends in a basin: seeds that reach a share of the exact area. On a usual day three seeds, of which one has to reach it.</summary>
public class BasinTests
{
    private const string Own = "own problem, exact front by enumeration";

    [Theory]
    [InlineData(1, 12, 4, 12, 0.995)]
    [InlineData(4, 12, 4, 66, 0.995)]
    [InlineData(5, 10, 5, 15, 0.995)]
    [InlineData(7, 8, 8, 12, 0.995)]
    public void Kinds_coupled_in_pairs_are_found(int table, int kinds, int levels, int pairs, double least)
    {
        var front = new CoupledKinds(table, kinds, levels, pairs).Front();
        var shares = Shares(() => new CoupledKinds(table, kinds, levels, pairs), front, 20_000);
        if (IsShort(shares, least))
            return;
        Validation.Within($"search coupled kinds {table}", "least share of the exact hypervolume of the best 19 of 21 seeds, 20 000 evaluations", least, 1.00001, shares[2], Own, "SearchEngine.Run");
    }

    [Theory]
    [InlineData(1, 0.76)]
    [InlineData(2, 0.76)]
    public void An_optimum_away_from_the_bounds_is_approached(int places, double least)
    {
        var shares = Shares(() => Continuous.Moved(1, places, places), KnownFront.All["ZDT1"], 2000);
        if (IsShort(shares, least))
            return;
        Validation.Within($"search moved optimum {places}", "share of the exact hypervolume, median of 21 seeds, 2000 evaluations", least, 1.00001, shares[10], "analytic: the front of ZDT1 (Zitzler, Deb and Thiele, 2000)", "SearchEngine.Run");
    }

    [Theory]
    [InlineData(1, 6, 4, 8, 0.97)]
    [InlineData(4, 3, 5, 6, 0.97)]
    public void Kinds_and_reals_are_fitted_together(int table, int kinds, int levels, int reals, double least)
    {
        var front = new FittedKinds(table, kinds, levels, reals).Front();
        var shares = Shares(() => new FittedKinds(table, kinds, levels, reals), front, 5000);
        if (IsShort(shares, least))
            return;
        Validation.Within($"search fitted kinds {table}", "share of the exact hypervolume, median of 21 seeds, 5000 evaluations", least, 1.00001, shares[10], Own, "SearchEngine.Run");
    }

    // The page tells of the long run.
    private static bool IsShort(double[] shares, double least)
    {
        if (!Longer.IsOn)
            Assert.InRange(shares[^1], least, 1.00001);
        return !Longer.IsOn;
    }

    private static double[] Shares(Func<IProblem> make, KnownFront front, int evaluations) =>
        [.. Enumerable.Range(1, Longer.IsOn ? 21 : 3).AsParallel().Select(seed => front.Share(new SearchEngine(make(), new() { Seed = (ulong)seed, MaxEvaluations = evaluations, BlockSize = 1 })
            .Run().Front.Select(p => p.Evaluation.Objectives))).Order()];
}
