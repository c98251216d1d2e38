using DesignSearch.Search.Engine;
using Xunit;

namespace DesignSearch.Search.Tests;

public class SearchSettingsTests
{
    private static readonly SearchSettings Few = new() { MaxEvaluations = 5 };

    public static TheoryData<string, SearchSettings> OutOfRange => new()
    {
        { nameof(SearchSettings.MaxEvaluations), Few with { MaxEvaluations = 0 } },
        { nameof(SearchSettings.BlockSize), Few with { BlockSize = 0 } },
        { nameof(SearchSettings.BlockSize), Few with { BlockSize = 65 } },
        { nameof(SearchSettings.Threads), Few with { Threads = 0 } },
        { nameof(SearchSettings.BestByMerit), Few with { BestByMerit = -1 } },
        { nameof(SearchSettings.EnumerateUpTo), Few with { EnumerateUpTo = -1 } },
        { nameof(SearchSettings.ProofSimulations), Few with { ProofSimulations = -1 } },
        { nameof(SearchSettings.ProofBoxes), Few with { ProofBoxes = 0 } },
        { nameof(SearchSettings.StagnationEvaluations), Few with { StagnationEvaluations = 0 } },
    };

    [Theory]
    [MemberData(nameof(OutOfRange))]
    public void A_setting_out_of_range_is_refused_by_name(string name, SearchSettings settings) =>
        Assert.Equal(name, Assert.Throws<ArgumentOutOfRangeException>(() => new SearchEngine(new ShelfProblem(), settings).Run()).ParamName);

    [Fact]
    public void The_ends_of_every_range_are_taken()
    {
        var least = new SearchSettings { MaxEvaluations = 1, BlockSize = 1, Threads = 1, BestByMerit = 0, EnumerateUpTo = 0, ProofSimulations = 0, ProofBoxes = 1, StagnationEvaluations = 1 };
        Assert.Equal(1, new SearchEngine(new ShelfProblem(), least).Run().Evaluations);
        Assert.Equal(StopReason.Budget, new SearchEngine(new ShelfProblem(), least with { BlockSize = 64 }).Run().StoppedBecause);
    }

    // Eight counts of boards, three woods, bare or in three coats: 8 · 3 · (1 + 3) = 96 shelves; the screen refuses the heavy ones.
    [Theory]
    [InlineData(95, false)]
    [InlineData(96, true)]
    public void A_space_is_gone_through_where_the_budget_just_covers_it(long budget, bool through) =>
        Assert.Equal(through, new SearchEngine(new ShelfProblem(), new() { MaxEvaluations = budget }).GoesThroughAll);

    [Fact]
    public void What_no_problem_may_answer_is_refused()
    {
        Variable[] one = FormulaProblem.Whole(5000);
        string Said(double[] objectives, double[] violations) =>
            Assert.Throws<InvalidOperationException>(() => new SearchEngine(new FormulaProblem(one, 2, 1, _ => (objectives, violations)), Few).Run()).Message;
        Assert.Contains("1 objectives and 1 violations; expected 2 and 1", Said([1], [0]), StringComparison.Ordinal);
        Assert.Contains("2 objectives and 0 violations; expected 2 and 1", Said([1, 2], []), StringComparison.Ordinal);
        Assert.Contains("not finite", Said([1, double.PositiveInfinity], [0]), StringComparison.Ordinal);
        Assert.Contains("not a number", Said([1, 2], [double.NaN]), StringComparison.Ordinal);
    }
}
