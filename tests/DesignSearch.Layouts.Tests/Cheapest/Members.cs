using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Search;
using DesignSearch.Search.Space;

namespace DesignSearch.Layouts.Tests;

/// <summary>Layouts that pass every check and hold, drawn at random: each root left out every second time, what fails mended one choice at a time.</summary>
internal sealed class Members(LayoutAssessor assessor, int seed)
{
    private const int Block = 64;
    private const int Sweeps = 3;

    private readonly LayoutProblem problem = new(assessor);
    private readonly SearchSpace space = new(new LayoutProblem(assessor).Variables);
    private readonly Random random = new(seed);

    /// <summary>So many points that hold, each with its life cost, and without electricity.</summary>
    /// <param name="count">How many.</param>
    /// <param name="needs">A root that most of them shall have; empty for none.</param>
    public IEnumerable<(double[] Point, double LifeCost, double WithoutCurrent)> That_hold(int count, params string[] needs)
    {
        for (var found = 0; found < count;)
        {
            var block = new List<double[]>();
            while (block.Count < Block)
            {
                if (Drawn(needs[random.Next(needs.Length)]) is { } point)
                    block.Add(point);
            }

            var evaluations = new Evaluation[block.Count];
            problem.Evaluate(block.ToArray(), evaluations);
            for (var i = 0; i < block.Count && found < count; i++)
            {
                if (evaluations[i].TotalViolation != 0 || evaluations[i].Objectives[1] != 0)
                    continue;
                found++;
                var priced = assessor.Price(problem.Space.At(block[i]));
                yield return (block[i], evaluations[i].Objectives[0], (double)priced.LifeCostWithoutCurrent(assessor.Scenario.Money));
            }
        }
    }

    private double[]? Drawn(string need)
    {
        var point = new double[space.Count];
        for (var i = 0; i < point.Length; i++)
        {
            var (choice, levels) = (assessor.Scenario.Choices[i].Choice, assessor.Scenario.Choices[i].Levels);
            point[i] = random.Next(levels.Count);
            if (choice is PartChoice { IsRoot: true } && random.Next(2) == 0 && levels.ToList().FindIndex(l => l.IsNone) is >= 0 and var none)
                point[i] = none;
            if (choice.Key == "heater" && random.Next(2) == 0)
                point[i] = levels.Count - 1;
            if (choice.Key == need && levels.Count > 1)
                point[i] = 1 + random.Next(levels.Count - 1);
        }

        space.Canonicalise(point);
        return Mended(point, need);
    }

    private double[]? Mended(double[] point, string need)
    {
        var missed = Missed(point);
        for (var sweep = 0; sweep < Sweeps && missed > 0; sweep++)
        {
            for (var i = 0; i < point.Length && missed > 0; i++)
            {
                for (var level = space.Variables[i].Name == need ? 1 : 0; level < space.Variables[i].Levels; level++)
                {
                    var other = (double[])point.Clone();
                    other[i] = level;
                    space.Canonicalise(other);
                    if (Missed(other) is var less && less < missed)
                        (point, missed) = (other, less);
                }
            }
        }

        return missed > 0 ? null : point;
    }

    private double Missed(double[] point)
    {
        double[] bounds = new double[2], violations = new double[problem.Constraints.Count];
        problem.Screen(point, bounds, violations);
        return violations.Sum();
    }
}
