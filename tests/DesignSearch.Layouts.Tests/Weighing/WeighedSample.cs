using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Search;
using DesignSearch.Search.Engine;

namespace DesignSearch.Layouts.Tests;

/// <summary>A small scenario searched to the end, judged and ready to be weighed.</summary>
public sealed class WeighedSample : IDisposable
{
    /// <summary>Three weeks of January, and no winters beside the chosen.</summary>
    internal static readonly (string, string)[] Short =
        [("start = \"11-01\"\nend = \"03-31\"", "start = \"01-05\"\nend = \"01-25\"\nwarm_up_days = 3"), ("unseen_winters = 20", "unseen_winters = 0")];

    private readonly SmallScenario small;

    // With the electrician's hours a turning collector costs more than the sample's own budget; to weigh it a budget is wanted that it fits.
    public WeighedSample() : this([("budget = 4200", "budget = 5500")])
    {
    }

    internal WeighedSample(params (string From, string To)[] changes) : this(read => read, changes)
    {
    }

    internal WeighedSample(Func<Scenario, Scenario> moved, params (string From, string To)[] changes) : this(moved, s => WinterSet.Make(s), changes)
    {
    }

    internal WeighedSample(Func<Scenario, Scenario> moved, Func<Scenario, WinterSet> winters, params (string From, string To)[] changes)
    {
        small = new SmallScenario(changes);
        Scenario = moved(small.Read());
        Assessor = new LayoutAssessor(Scenario, winters(Scenario));
        var problem = new LayoutProblem(Assessor);
        Space = problem.Space;
        var log = new Log();
        Result = new SearchEngine(problem, new SearchSettings { MaxEvaluations = 5000, EnumerateUpTo = 5000, BestByMerit = 12 }).Run(log: log);
        Tried = log.Points;
        // As a run does: the best with a turning mount is ranked though the front may not hold it.
        var turning = Tried.Select((t, i) => new EvaluatedPoint(t.Point, t.Evaluation, i)).Where(t => t.Evaluation.TotalViolation == 0 && Space.At(t.Point).Get(SolarChoices.Mount)?.Id == "two-position-rocker").OrderByDescending(t => t.Evaluation.Merit).Take(1);
        Judgement = new Judge(Assessor).Of(Result, Space, [.. turning]);
    }

    public Scenario Scenario { get; }

    public LayoutAssessor Assessor { get; }

    public LayoutSpace Space { get; }

    public SearchResult Result { get; }

    public IReadOnlyList<(double[] Point, Evaluation Evaluation)> Tried { get; }

    public Judgement Judgement { get; }

    /// <summary>Weighed once, as after an exact search.</summary>
    public Weighing Weighing => weighing ??= Weigh(Tried, isExact: true, threads: 2);

    private Weighing? weighing;

    public Weighing Weigh(IReadOnlyList<(double[] Point, Evaluation Evaluation)> tried, bool isExact, int threads) => new Weigher(Assessor, threads, 1).Of(Judgement, tried, Space, isExact);

    public void Dispose() => small.Dispose();

    private sealed class Log : ISearchLog
    {
        public List<(double[] Point, Evaluation Evaluation)> Points { get; } = [];

        public void Append(long firstIndex, ReadOnlySpan<double[]> points, ReadOnlySpan<Evaluation> evaluations)
        {
            for (var i = 0; i < points.Length; i++)
                Points.Add(((double[])points[i].Clone(), evaluations[i]));
        }
    }
}
