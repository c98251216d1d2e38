using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Cheapest;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Search.Proof;
using DesignSearch.Search.Space;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>
/// What the bounds of sets of layouts come to, and in which order sets are split, as it was when it was last looked at: a bound that is merely weaker breaks no proof
/// and is noticed nowhere else.
/// </summary>
public sealed class PinnedBoundsTests
{
    private const int Ways = 7;
    private const int Simulated = 10;
    private const int Boxes = 24;

    private static readonly string[] Digests =
    [
        "day stores box 2e64da87", "everything box 0202dede", "everything planes ded03291", "everything plants 6c26d19e", "everything price 24892928",
        "everything simulated 6140c2d9", "everything split 13ab694e", "heat pumps box 46a100a0", "large box 6967f583", "large planes 172fb6cf",
        "large plants ce728fd2", "large price 9d57627e", "large simulated c55247f4", "large split 890098db", "own work box 95cf09c4",
    ];

    [SkippableFact]
    public void Pinned_what_sets_of_layouts_cost_at_least()
    {
        Pins.OnlyHere();
        var pins = new Pins();
        using (var all = ProofScenario.Everything())
            Tell(pins, "everything", Assessor(all), 1);
        using (var large = ProofScenario.Large())
            Tell(pins, "large", Assessor(large), 2);
        using (var own = ProofScenario.OwnWork())
            Box(pins, "own work", Assessor(own));
        using (var pumps = ProofScenario.HeatPumps())
            Box(pins, "heat pumps", Assessor(pumps));
        using (var stores = ProofScenario.DayStores())
            Box(pins, "day stores", Assessor(stores));
        pins.Compare(Digests);
    }

    private static LayoutAssessor Assessor(SmallScenario small)
    {
        var scenario = small.Read();
        return new(scenario, FormulaWinters.Of(scenario));
    }

    // Down from all layouts to one, a random part at each step.
    private static void Tell(Pins pins, string name, LayoutAssessor assessor, int seed)
    {
        var (random, problem, space) = (new Random(seed), new CheapestLayouts(assessor), new LayoutSpace(assessor.Scenario));
        var (best, own, asked) = (new BestPlant(assessor, space), new OwnCosts(assessor), new List<LevelSets>());
        for (var way = 0; way < Ways; way++)
        {
            for (var set = problem.All; ;)
            {
                pins.Tell(name + " price", Spelt.Of(problem.Cheaply(set)));
                if (set.IsPoint)
                    break;
                if (problem.CanSimulate(set))
                {
                    var optimum = best.Of(set);
                    pins.Tell(name + " plants", Spelt.Of(new { optimum.Plants, optimum.IsWide }));
                    pins.Tell(name + " planes", string.Join(' ', assessor.Winters.Winters.Select(w => Spelt.Of(optimum.Plane(w.Winter)?.KwhPerM2(0)))));
                    asked.Add(set);
                }

                var branching = problem.Split(set);
                pins.Tell(name + " split", branching.ShowsInSimulation + string.Join('|', branching.Parts.Select(Text)));
                set = branching.Parts[random.Next(branching.Parts.Count)];
            }
        }

        var few = asked.Where((_, i) => i % Math.Max(1, asked.Count / Simulated) == 0).ToArray();
        var added = new double[few.Length];
        problem.Simulate(few, added, 2);
        pins.Tell(name + " simulated", Spelt.Of(added));
        Box(pins, name, assessor);
    }

    // Random boxes, as the proof of a front asks for them.
    private static void Box(Pins pins, string name, LayoutAssessor assessor)
    {
        var (random, problem) = (new Random(7), new LayoutProblem(assessor));
        var space = new SearchSpace(problem.Variables);
        for (var box = 0; box < Boxes; box++)
        {
            int[] low = new int[space.Count], high = new int[space.Count];
            var point = new double[space.Count];
            for (var i = 0; i < low.Length; i++)
            {
                int a = random.Next(space.Variables[i].Levels), b = random.Next(space.Variables[i].Levels);
                (low[i], high[i]) = problem.ActsOneWay[i] ? (Math.Min(a, b), Math.Max(a, b)) : (a, a);
                point[i] = low[i];
            }

            space.Canonicalise(point);
            for (var i = 0; i < low.Length; i++)
            {
                if (!problem.ActsOneWay[i])
                    low[i] = high[i] = (int)point[i];
            }

            double[] cheap = new double[2], bounds = new double[2];
            var possible = problem.BoundCheaply(new(low, high), cheap);
            pins.Tell(name + " box", possible + Spelt.Of(cheap));
            if (!possible || box % 4 != 0)
                continue;
            problem.BoundBySimulation(new(low, high), bounds);
            pins.Tell(name + " box", Spelt.Of(bounds));
        }
    }

    private static string Text(LevelSets set)
    {
        var text = "";
        for (var i = 0; i < set.Lowest().Length; i++)
            text += string.Join(',', set[i].ToArray()) + "/";
        return text;
    }
}
