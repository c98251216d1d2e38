using DesignSearch.Layouts.Assess.Checks;
using DesignSearch.Search;
using DesignSearch.Search.Space;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Assess.Problem;

/// <summary>The search for layouts: life cost against frost degree-hours, under the checks.</summary>
/// <param name="assessor">Prices, checks and simulates.</param>
public sealed class LayoutProblem(LayoutAssessor assessor) : IBoundedProblem, ISharingProblem, IEarlyScreen
{
    // Layouts that hold rank before all others, whatever their score.
    private const double HoldsFirst = 1e6;

    private readonly LayoutAssessor assessor = assessor;
    private readonly LayoutSpace space = new(assessor.Scenario);
    private LayoutBounds? bounds;

    /// <summary>The choices as variables.</summary>
    public LayoutSpace Space => space;

    /// <inheritdoc/>
    public IReadOnlyList<Variable> Variables => space.Variables;

    /// <inheritdoc/>
    public IReadOnlyList<string> Objectives { get; } = [ObjectiveWords.LifeCost, ObjectiveWords.Frost];

    /// <inheritdoc/>
    public IReadOnlyList<string> Constraints { get; } = [.. assessor.Scenario.Systems.Rules.Select(r => r.Id)];

    /// <inheritdoc/>
    public IReadOnlyList<bool> ActsOneWay => Bounds.ActsOneWay;

    private LayoutBounds Bounds => LazyInitializer.EnsureInitialized(ref bounds, () => new(assessor, space));

    /// <inheritdoc/>
    public bool BoundCheaply(LevelBox box, Span<double> objectiveBounds)
    {
        ArgumentNullException.ThrowIfNull(box);
        return Bounds.Cheaply(box, objectiveBounds);
    }

    /// <inheritdoc/>
    public void BoundBySimulation(LevelBox box, Span<double> objectiveBounds)
    {
        ArgumentNullException.ThrowIfNull(box);
        Bounds.BySimulation(box, objectiveBounds);
    }

    /// <inheritdoc/>
    public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations) =>
        ScreenUntil(point, objectiveBounds, violations, double.PositiveInfinity);

    /// <inheritdoc/>
    public bool ScreenUntil(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations, double enough)
    {
        if (assessor.Screen(space.At(point), violations, enough) is not { } priced)
            return false;
        objectiveBounds[0] = (double)priced.LifeCostWithoutCurrent(assessor.Scenario.Money);
        objectiveBounds[1] = 0;
        return true;
    }

    /// <inheritdoc/>
    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
    {
        var work = Begin(points.ToArray(), 1);
        for (var piece = 0; piece < work.Pieces; piece++)
            work.Do(piece);
        work.Finish(evaluations);
    }

    /// <inheritdoc/>
    public IBlockWork Begin(IReadOnlyList<double[]> points, int threads)
    {
        ArgumentNullException.ThrowIfNull(points);
        return new Work(this, [.. points.Select(p => assessor.Price(space.At(p)))], threads);
    }

    private Evaluation Weigh(PricedLayout priced, Outcome[] outcomes)
    {
        var checks = assessor.Checks(priced, outcomes);
        var figures = assessor.Figures(priced, outcomes, checks.All(c => c.Passed));
        var violations = new double[Constraints.Count];
        CheckList.Violations(assessor.Scenario.Systems, checks, violations);
        return new Evaluation([(double)figures.LifeCost, figures.FrostDegreeHoursKh], violations, figures.Score(assessor.BareFrostHours) + (figures.Holds ? HoldsFirst : 0));
    }

    // Priced at once, simulated in pieces, weighed at the end.
    private sealed class Work(LayoutProblem problem, PricedLayout[] priced, int threads) : IBlockWork
    {
        private readonly SeasonPieces seasons = problem.assessor.Begin([.. priced.Select(p => p.Built)], threads);

        public int Pieces => seasons.Pieces;

        public void Do(int piece) => seasons.Do(piece);

        public void Finish(Span<Evaluation> evaluations)
        {
            for (var i = 0; i < priced.Length; i++)
                evaluations[i] = problem.Weigh(priced[i], seasons.Outcomes[i]);
        }
    }
}
