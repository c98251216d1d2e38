using System.Collections.Concurrent;
using System.Diagnostics;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Checks;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Layouts.Systems;
using DesignSearch.Layouts.Tests;
using DesignSearch.Search;
using DesignSearch.Search.Engine;
using DesignSearch.Search.Space;
using DesignSearch.Search.Tests;

namespace DesignSearch.Benchmarks;

/// <summary>The search on invented greenhouses: one of which every layout is simulated first, so that the exact front is known, and one far too large for that.</summary>
internal static class GreenhouseCourses
{
    private static readonly long[] Marks = [500, 1000, 2000, 5000];

    public static void Known(int seeds, int first, int block)
    {
        using var small = ProofScenario.Middling();
        var scenario = small.Read();
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario));
        var problem = new LayoutProblem(assessor);
        var space = new SearchSpace(problem.Variables);
        var watch = Stopwatch.StartNew();
        var all = new ConcurrentDictionary<PointKey, Evaluation>();
        var screened = new ConcurrentDictionary<PointKey, (double Bound, double Missed)>();
        Parallel.ForEach(space.Points().Chunk(256), new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, points => GoThrough(assessor, problem.Space, points, all, screened));
        var known = KnownFront.Of(all.Values.Where(e => e.TotalViolation == 0).Select(e => e.Objectives));
        Console.WriteLine(FormattableString.Invariant($"# {space.Size} different layouts, {all.Count} simulated in {watch.Elapsed.TotalSeconds:0} s, exact front {known.Points.Count} points"));
        var stored = new StoredProblem(problem, all, screened);
        Console.WriteLine("| search | " + string.Join(" | ", Marks) + " | found 2000/last | to 99 % | to 99.9 % |");
        Console.WriteLine("|" + string.Concat(Enumerable.Repeat("---|", Marks.Length + 4)));
        Row("ours", Enumerable.Range(first, seeds).Select(seed => Ours(stored, known, seed, block)));
        if (block == 1)
            Row("ours, blocks of 16", Enumerable.Range(first, seeds).Select(seed => Ours(stored, known, seed, 16)));
        Row("random", Enumerable.Range(first, seeds).Select(seed => AtRandom(stored, space, known, seed)));
        foreach (var size in new[] { 40, 100 })
        {
            var runs = Enumerable.Range(first, Math.Min(seeds, 11)).Select(seed => Outside(stored, space, known, seed, size)).ToList();
            Row(FormattableString.Invariant($"NSGA-II (DEAP) {size}, every call"), runs.Select(r => r.Every));
            Row(FormattableString.Invariant($"NSGA-II (DEAP) {size}, simulations"), runs.Select(r => r.Started));
        }

        foreach (var budget in new[] { 1000, 2000 })
        {
            var proof = new SearchEngine(problem, new() { MaxEvaluations = budget, EnumerateUpTo = 0, ProofSimulations = 400_000, BlockSize = 16, Threads = 2 }).Run();
            Console.WriteLine(FormattableString.Invariant($"proof after {budget}: {proof.StoppedInWords} Bounds {proof.Proof!.Bounds}, evaluations {proof.Proof.Evaluations}; {known.Found([.. proof.Front.Select(p => p.Evaluation.Objectives)])} of {known.Points.Count} exact points, {proof.Front.Count} on the front"));
        }
    }

    public static void Large(int seeds, int first, int most, int simulations, int boxes)
    {
        using var small = ProofScenario.Large();
        var problem = Problem(small);
        var results = new List<SearchResult>();
        for (var seed = first; seed < first + seeds; seed++)
        {
            var settings = new SearchSettings { Seed = (ulong)seed, MaxEvaluations = most, BlockSize = 16, Threads = 2, ProofSimulations = seed == first ? simulations : 0, ProofBoxes = boxes };
            results.Add(new SearchEngine(problem, settings).Run());
            if (results[^1].Proof is { } proof)
                Console.WriteLine(FormattableString.Invariant($"# {new SearchSpace(problem.Variables).Size} different layouts; proof with {proof.Simulations} simulations and {proof.Boxes} boxes: gap {100 * proof.Gap:0.0} %"));
        }

        var union = KnownFront.Of(results.SelectMany(r => r.Front).Select(p => p.Evaluation.Objectives));
        foreach (var (result, i) in results.Select((r, i) => (r, i)))
        {
            var front = result.Front.Select(p => p.Evaluation.Objectives).ToList();
            Console.WriteLine(FormattableString.Invariant($"seed {first + i}: {result.Evaluations} evaluations, {100 * union.Share(front):0.00} % of the area of all together, {union.Found(front)} of its {union.Points.Count} points, {100.0 * result.Front.Count(p => p.Index < result.Evaluations / 2) / result.Front.Count:0} % of the front found in the first half"));
        }
    }

    private static LayoutProblem Problem(SmallScenario small)
    {
        var scenario = small.Read();
        return new(new LayoutAssessor(scenario, WinterSet.Make(scenario)));
    }

    // Each layout priced once, and simulated where no check that needs no season refuses it.
    private static void GoThrough(LayoutAssessor assessor, LayoutSpace layouts, double[][] points, ConcurrentDictionary<PointKey, Evaluation> all, ConcurrentDictionary<PointKey, (double Bound, double Missed)> screened)
    {
        var passing = new List<(PointKey Key, PricedLayout Priced)>();
        foreach (var point in points)
        {
            var priced = assessor.Price(layouts.At(point));
            var missed = Missed(assessor.Checks(priced, []));
            var bound = (double)(priced.BuildPrice + priced.Replacements + Pricer.Labour(priced.LabourHours, assessor.Scenario.Money));
            screened[SearchSpace.KeyOf(point)] = (bound, missed);
            if (missed == 0)
                passing.Add((SearchSpace.KeyOf(point), priced));
        }

        var outcomes = assessor.Simulate([.. passing.Select(p => p.Priced.Built)]);
        for (var i = 0; i < passing.Count; i++)
        {
            var figures = assessor.Figures(passing[i].Priced, outcomes[i], true);
            all[passing[i].Key] = new([(double)figures.LifeCost, figures.FrostDegreeHoursKh], [Missed(assessor.Checks(passing[i].Priced, outcomes[i]))]);
        }
    }

    private static double Missed(IReadOnlyList<Check> checks)
    {
        var violations = new double[SystemList.All.Rules.Count];
        CheckList.Violations(SystemList.All, checks, violations);
        return violations.Sum(v => Math.Max(0, v));
    }

    private static Course Ours(StoredProblem problem, KnownFront known, int seed, int block)
    {
        var course = new Course(known, Marks);
        new SearchEngine(problem, new() { Seed = (ulong)seed, MaxEvaluations = Marks[^1], BlockSize = block, EnumerateUpTo = 0 }).Run(log: course);
        return course;
    }

    private static Course AtRandom(StoredProblem problem, SearchSpace space, KnownFront known, int seed)
    {
        var course = new Course(known, Marks);
        var random = new Random(seed);
        var met = new HashSet<PointKey>();
        while (met.Count < Marks[^1])
        {
            double[] point = [.. space.Variables.Select(v => (double)random.Next(v.Levels))];
            space.Canonicalise(point);
            if (problem.Known(point) is { } result && met.Add(SearchSpace.KeyOf(point)))
                course.Append(0, [point], [result]);
        }

        return course;
    }

    private static (Course Every, Course Started) Outside(StoredProblem problem, SearchSpace space, KnownFront known, int seed, int population)
    {
        Course every = new(known, Marks), started = new(known, Marks);
        var met = new HashSet<PointKey>();
        var watched = new WatchedProblem(problem, (point, result) =>
        {
            every.Append(0, [point], [result]);
            if (problem.Known(point) is not null && met.Add(SearchSpace.KeyOf(point)))
                started.Append(0, [point], [result]);
        });
        var (found, missing) = OutsideNsga2.Run(watched, seed, (int)Marks[^1], population);
        return found is null ? throw new InvalidOperationException(missing) : (every, started);
    }

    private static void Row(string name, IEnumerable<Course> runs)
    {
        var courses = runs.ToList();
        var cells = Marks.Select(m => Table.Share([.. courses.Select(c => c.ShareAt.GetValueOrDefault(m, c.ShareAt.Values.LastOrDefault()))]));
        Console.WriteLine($"| {name} | {string.Join(" | ", cells)} | {Table.Median([.. courses.Select(c => (double)c.FoundAt.GetValueOrDefault(2000))]):0}/{Table.Median([.. courses.Select(c => (double)c.FoundAt.GetValueOrDefault(Marks[^1]))]):0} | "
            + $"{Table.Count([.. courses.Select(c => c.To99)])} | {Table.Count([.. courses.Select(c => c.To999)])} |");
    }
}
