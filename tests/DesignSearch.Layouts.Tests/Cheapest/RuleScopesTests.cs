using DesignSearch.Layouts.Assess.Cheapest;
using DesignSearch.Layouts.Assess.Problem;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>A check that is said to hang on few choices stays as it is whatever the others are.</summary>
public sealed class RuleScopesTests
{
    [Fact]
    public void A_check_hangs_on_nothing_beside_its_scope()
    {
        using var small = ProofScenario.Everything();
        var assessor = CheapestHonestyTests.Assessor(small);
        var (problem, random, refused) = (new LayoutProblem(assessor), new Random(5), new HashSet<string>());
        var choices = assessor.Scenario.Systems.Choices;
        var collector = choices.All.ToList().FindIndex(c => c.Key == "collector");
        foreach (var (rule, scope) in RuleScopes.All)
        {
            int[] places = [.. scope.Select(choices.IndexOf)];
            for (var time = 0; time < 100; time++)
            {
                double[] one = Drawn(), other = Drawn();
                foreach (var place in places)
                    other[place] = one[place];
                var (fails, too) = (Fails(one, rule), Fails(other, rule));
                Assert.True(fails == too, $"{rule}: {string.Join(',', one)} and {string.Join(',', other)}");
                if (fails)
                    refused.Add(rule);
            }
        }

        Assert.True(refused.Count >= RuleScopes.All.Count / 2, string.Join(' ', refused));

        double[] Drawn()
        {
            double[] point = [.. problem.Variables.Select(v => (double)random.Next(v.Levels))];
            point[collector] = 1 + random.Next(problem.Variables[collector].Levels - 1);
            return point;
        }

        bool Fails(double[] point, string rule)
        {
            double[] bounds = new double[2], violations = new double[problem.Constraints.Count];
            problem.Screen(point, bounds, violations);
            return violations[assessor.Scenario.Systems.PlaceOf(rule)] > 0;
        }
    }
}
