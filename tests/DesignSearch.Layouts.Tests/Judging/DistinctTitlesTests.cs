using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Search.Engine;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class DistinctTitlesTests
{
    [Fact]
    public void Layouts_that_differ_in_a_variant_only_are_told_apart_in_words_and_others_keep_theirs()
    {
        using var small = new SmallScenario([.. WeighedSample.Short, ("sealing = [\"none\", \"sealing-basic\"]", "sealing = \"none\""), ("heater_set_c = 4", "heater_set_c = [4, 5]")]);
        var scenario = small.Read();
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario));
        var problem = new LayoutProblem(assessor);
        var result = new SearchEngine(problem, new SearchSettings { MaxEvaluations = 400, EnumerateUpTo = 0, BestByMerit = 40 }).Run();
        var ranking = new Judge(assessor).Of(result, problem.Space, []).Ranking;
        Assert.Equal(ranking.Count, ranking.Select(l => l.FullTitle).Distinct().Count());
        Assert.Contains(ranking, l => l.FullTitle.EndsWith("; with stand-by heater's thermostat 5 °C", StringComparison.Ordinal));
        Assert.DoesNotContain(ranking.Where(l => !l.Choices.ContainsKey("heater_set_c")), l => l.FullTitle.Contains("thermostat", StringComparison.Ordinal));
    }
}
