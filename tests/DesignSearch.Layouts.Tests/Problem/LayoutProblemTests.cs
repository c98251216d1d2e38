using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Search.Engine;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class LayoutProblemTests
{
    [Fact]
    public void The_front_of_an_enumerated_space_is_what_a_plain_loop_finds()
    {
        using var small = new SmallScenario(("lining = [\"none\", \"bubble-lining-large\"]", "lining = \"none\""), ("mount = [\"stand-timber\", \"two-position-rocker\"]", "mount = \"stand-timber\""));
        var scenario = small.Read();
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario));
        var problem = new LayoutProblem(assessor);
        var result = new SearchEngine(problem, new SearchSettings { MaxEvaluations = 5000, EnumerateUpTo = 5000 }).Run();
        Assert.True(result.IsExact);

        var seen = new Dictionary<string, (decimal Cost, double Frost)>();
        foreach (var cover in new[] { "none", "aluminised-hand" })
            foreach (var sealing in new[] { "none", "sealing-basic" })
                foreach (var barrels in new[] { 0, 2, 4, 6 })
                    foreach (var heater in new[] { "none", "fan-heater-1kw", "fan-heater-2kw" })
                        foreach (var collector in new[] { false, true })
                        {
                            (string, object)[] choices =
                            [
                                ("night_cover", cover), ("sealing", sealing), ("barrel", barrels > 0 ? "barrel-200-used" : "none"), ("barrel_count", Math.Max(1, barrels)), ("heater", heater), ("heater_set_c", 4),
            ];
                            var layout = collector ? SmallScenario.Solar(scenario, choices) : SmallScenario.Of(scenario, choices);
                            var priced = assessor.Price(layout);
                            var outcomes = assessor.Simulate([priced.Built])[0];
                            if (assessor.Checks(priced, outcomes).All(c => c.Passed))
                                seen[LayoutFile.Write(layout, "")] = (assessor.Figures(priced, outcomes, true).LifeCost, assessor.Figures(priced, outcomes, true).FrostDegreeHoursKh);
                        }

        Assert.True(seen.Count > 40);
        var front = seen.Values.Where(a => !seen.Values.Any(b => b != a && b.Cost <= a.Cost && b.Frost <= a.Frost)).OrderBy(a => a.Cost).Distinct().ToList();
        Assert.Equal(front.Select(f => ((double)f.Cost, f.Frost)), result.Front.Select(p => (p.Evaluation.Objectives[0], p.Evaluation.Objectives[1])));
    }

    [Fact]
    public void One_thread_and_three_give_the_same_bits()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var problem = new LayoutProblem(new LayoutAssessor(scenario, WinterSet.Make(scenario)));
        var one = new SearchEngine(problem, new SearchSettings { MaxEvaluations = 96, EnumerateUpTo = 0, Threads = 1 }).Run();
        var three = new SearchEngine(problem, new SearchSettings { MaxEvaluations = 96, EnumerateUpTo = 0, Threads = 3 }).Run();
        Assert.Equal(one.Front.Select(p => (p.Index, p.Evaluation.Objectives[0], p.Evaluation.Objectives[1])), three.Front.Select(p => (p.Index, p.Evaluation.Objectives[0], p.Evaluation.Objectives[1])));
    }
}
