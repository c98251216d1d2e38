using DesignSearch.Search;

namespace DesignSearch.Layouts;

/// <summary>The search for layouts: life cost against frost degree-hours, under the checks.</summary>
/// <param name="assessor">Prices, checks and simulates.</param>
public sealed class LayoutProblem(LayoutAssessor assessor) : IBoundedProblem
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
    public IReadOnlyList<string> Objectives { get; } = ["life cost", "frost degree-hours"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Constraints => CheckList.Names;

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
    public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations)
    {
        var priced = assessor.Price(space.At(point));
        objectiveBounds[0] = (double)(priced.BuildPrice + priced.Replacements + Pricer.Labour(priced.LabourHours, assessor.Scenario.Money));
        objectiveBounds[1] = 0;
        CheckList.Violations(assessor.Checks(priced, []), violations);
    }

    /// <inheritdoc/>
    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
    {
        var priced = new PricedLayout[points.Length];
        for (var i = 0; i < priced.Length; i++)
            priced[i] = assessor.Price(space.At(points[i]));
        var outcomes = assessor.Simulate([.. priced.Select(p => p.Built)]);
        for (var i = 0; i < priced.Length; i++)
        {
            var checks = assessor.Checks(priced[i], outcomes[i]);
            var figures = assessor.Figures(priced[i], outcomes[i], checks.All(c => c.Passed));
            var violations = new double[CheckList.Names.Count];
            CheckList.Violations(checks, violations);
            evaluations[i] = new Evaluation([(double)figures.LifeCost, figures.FrostDegreeHoursKh], violations, figures.Score(assessor.BareFrostHours) + (figures.Holds ? HoldsFirst : 0));
        }
    }
}
