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
    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations) => Evaluate(points, evaluations, 1);

    /// <inheritdoc/>
    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations, int threads)
    {
        var block = points.ToArray();
        var (priced, made) = (new PricedLayout[block.Length], new Evaluation[block.Length]);
        Share.Out(block.Length, threads, i => priced[i] = assessor.Price(space.At(block[i])));
        var outcomes = assessor.Simulate([.. priced.Select(p => p.Built)], threads);
        Share.Out(block.Length, threads, i => made[i] = Weigh(priced[i], outcomes[i]));
        made.CopyTo(evaluations);
    }

    private Evaluation Weigh(PricedLayout priced, Outcome[] outcomes)
    {
        var checks = assessor.Checks(priced, outcomes);
        var figures = assessor.Figures(priced, outcomes, checks.All(c => c.Passed));
        var violations = new double[Constraints.Count];
        CheckList.Violations(assessor.Scenario.Systems, checks, violations);
        return new Evaluation([(double)figures.LifeCost, figures.FrostDegreeHoursKh], violations, figures.Score(assessor.BareFrostHours) + (figures.Holds ? HoldsFirst : 0));
    }
}
