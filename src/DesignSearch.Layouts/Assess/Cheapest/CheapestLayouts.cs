using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Search.Proof;
using DesignSearch.Season;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>The cheapest layout over the years that passes every check and has no frost in any design winter, as a problem that can be proved.</summary>
/// <param name="assessor">Prices, checks and simulates.</param>
public sealed class CheapestLayouts(LayoutAssessor assessor) : ICheapestProblem
{
    // A plant at least as good as a whole set has no more frost and needs no more current, but for this much.
    private const double FrostSlackKh = 0.05;
    private const double WideFrostSlackKh = 2;
    private const double CurrentSlack = 0.005;

    // Where stores are open their ends stand for what lies between, and long steps will do.
    private const double WideCurrentSlack = 0.02;
    private const double WideStepSeconds = 900;
    private const int Stretch = 16;

    private readonly LayoutProblem problem = new(assessor);
    private readonly BestPlant best = new(assessor, new LayoutSpace(assessor.Scenario));
    private readonly PriceFloor floor = new(assessor);
    private readonly SplitOrder order = new(assessor, new LayoutSpace(assessor.Scenario).Variables);
    private readonly (int Rule, int[] Choices)[] scopes =
        [.. RuleScopes.All.Select(p => (assessor.Scenario.Systems.PlaceOf(p.Key), p.Value.Select(assessor.Scenario.Systems.Choices.IndexOf).ToArray()))];

    // The coldest winter first: where it brings frost the others need not be asked.
    private readonly int[] winters = [.. Enumerable.Range(0, assessor.Winters.Winters.Count).OrderBy(w => assessor.Winters.Winters[w].Winter.AirC.Min())];

    /// <inheritdoc/>
    public LevelSets All { get; } = LevelSets.All(new LayoutSpace(assessor.Scenario).Variables);

    /// <summary>All layouts without a collector, and all with one; null where the scenario offers none of the kind.</summary>
    public (LevelSets? Without, LevelSets? With) ByCollector => (Of(isNone: true), Of(isNone: false));

    private double Slack => 0.02 + (0.11 * (double)assessor.Scenario.Money.LabourRatePerHour);

    /// <inheritdoc/>
    public double Cheaply(LevelSets set)
    {
        ArgumentNullException.ThrowIfNull(set);
        Span<double> violations = stackalloc double[problem.Constraints.Count];
        if (set.IsPoint)
        {
            var priced = assessor.Screen(problem.Space.At(set.Lowest()), violations)!;
            return violations.ContainsAnyExcept(0) ? double.PositiveInfinity : (double)priced.LifeCostWithoutCurrent(assessor.Scenario.Money) - Slack;
        }

        var least = floor.Of(set);
        return least.Build > (double)assessor.Scenario.Money.Budget || IsRefused(set, violations) ? double.PositiveInfinity : least.Life;
    }

    /// <inheritdoc/>
    public bool CanSimulate(LevelSets set) => order.CanSimulate(set);

    /// <inheritdoc/>
    public Branching Split(LevelSets set) => order.Split(set);

    /// <inheritdoc/>
    public void Simulate(ReadOnlySpan<LevelSets> sets, Span<double> added, int threads)
    {
        var all = sets.ToArray();
        var optima = new Optimum[all.Length];
        Share.Out(all.Length, threads, i => optima[i] = best.Of(all[i]));
        var runs = optima.Select((o, i) => o.Plants.Select(p => new Run(i, p)).ToArray()).ToArray();
        foreach (var isWide in new[] { true, false })
            Through([.. runs.Where((_, i) => optima[i].IsWide == isWide)], optima, isWide, threads);
        for (var i = 0; i < all.Length; i++)
            added[i] = !runs[i].Any(r => !r.HasFrost) ? double.PositiveInfinity
                : order.IsOneHeater(all[i]) ? Current(runs[i].Min(r => r.Kwh), optima[i].IsWide)
                : 0;
    }

    /// <inheritdoc/>
    public void Evaluate(ReadOnlySpan<LevelSets> points, Span<double> costs, int threads)
    {
        PricedLayout[] priced = [.. points.ToArray().Select(p => assessor.Price(problem.Space.At(p.Lowest())))];
        var outcomes = assessor.Simulate([.. priced.Select(p => p.Built)], threads);
        for (var i = 0; i < priced.Length; i++)
        {
            var figures = assessor.Figures(priced[i], outcomes[i], assessor.Checks(priced[i], outcomes[i]).All(c => c.Passed));
            costs[i] = figures.Holds ? (double)figures.LifeCost : double.PositiveInfinity;
        }
    }

    /// <summary>A question about the layouts of which every choice has a level of some.</summary>
    /// <param name="keeps">Whether a level of a choice is asked for.</param>
    /// <param name="known">What the cheapest of them costs that is known to hold; infinite without one.</param>
    public ProofAim Aim(Func<Choice, ChoiceValue, bool> keeps, double known)
    {
        ArgumentNullException.ThrowIfNull(keeps);
        return new([.. assessor.Scenario.Choices.Select(c =>
            c.Levels.All(l => keeps(c.Choice, l)) ? null : (IReadOnlySet<int>)Enumerable.Range(0, c.Levels.Count).Where(l => keeps(c.Choice, c.Levels[l])).ToHashSet())], known);
    }

    /// <summary>Whether a layout that passes costs less than the floor says of it: then no proof may rest on the floor.</summary>
    /// <param name="point">A canonical point that passes the checks that need no season.</param>
    public bool Contradicts(IReadOnlyList<double> point)
    {
        ArgumentNullException.ThrowIfNull(point);
        var (least, priced) = (floor.Of(LevelSets.At(point)), assessor.Price(problem.Space.At([.. point])));
        return least.Build > (double)priced.BuildPrice || least.Life > (double)priced.LifeCostWithoutCurrent(assessor.Scenario.Money);
    }

    private LevelSets? Of(bool isNone)
    {
        var at = assessor.Scenario.Systems.Choices.IndexOf(SolarChoices.Collector);
        int[] levels = [.. All[at].ToArray().Where(l => assessor.Scenario.Choices[at].Levels[l].IsNone == isNone)];
        return levels.Length == 0 ? null : All.With(at, levels, problem.Space.Variables);
    }

    // Winter by winter, a set as long as one of its plants has no frost: the current of all of them is asked for then, since any may be near the layout sought.
    private void Through(List<Run[]> sets, Optimum[] optima, bool isWide, int threads)
    {
        foreach (var w in winters)
        {
            var (winter, weight, forcing) = assessor.Winters.Winters[w];
            Run[] left = [.. sets.Where(s => s.Any(r => !r.HasFrost)).SelectMany(s => s)];
            Share.Out((left.Length + Stretch - 1) / Stretch, threads, part =>
            {
                Run[] some = [.. left.Skip(part * Stretch).Take(Stretch)];
                LayoutCase[] cases = [.. some.Select(r => new LayoutCase(r.Plant, optima[r.Set].Plane(winter)))];
                var outcomes = new Outcome[cases.Length];
                SeasonSimulator.Run(forcing, cases, outcomes, isWide ? WideStepSeconds : SeasonSimulator.UsualStepSeconds);
                for (var i = 0; i < some.Length; i++)
                {
                    some[i].HasFrost |= outcomes[i].FrostDegreeHoursKh > (isWide ? WideFrostSlackKh : FrostSlackKh);
                    some[i].Kwh += weight * outcomes[i].StandbyKwh;
                }
            });
        }
    }

    // At the cheaper of the tariffs.
    private double Current(double kwh, bool isWide)
    {
        var terms = assessor.Scenario.Money;
        var tariff = terms.Night is { } night && night.PerKwh < terms.TariffPerKwh ? night.PerKwh : terms.TariffPerKwh;
        var running = Pricer.Running(kwh * (1 - (isWide ? WideCurrentSlack : CurrentSlack)), 0, 0, terms with { TariffPerKwh = tariff, Night = null });
        return Math.Max(0, (double)running.PresentValue - Slack);
    }

    // Whether a check refuses all of them that hangs on nothing that is open.
    private bool IsRefused(LevelSets set, Span<double> violations)
    {
        if (!Array.Exists(scopes, s => Array.TrueForAll(s.Choices, set.IsSingle)))
            return false;
        assessor.Screen(problem.Space.At(set.Lowest()), violations, double.Epsilon);
        foreach (var (rule, choices) in scopes)
        {
            if (violations[rule] > 0 && Array.TrueForAll(choices, set.IsSingle))
                return true;
        }

        return false;
    }

    // One plant of a set on its way through the winters.
    private sealed class Run(int set, Installation plant)
    {
        public int Set => set;

        public Installation Plant => plant;

        public bool HasFrost { get; set; }

        public double Kwh { get; set; }
    }
}
