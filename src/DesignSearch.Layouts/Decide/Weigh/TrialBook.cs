using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Simulates layouts for a weighing, each once.</summary>
/// <param name="assessor">Prices, checks and simulates.</param>
/// <param name="threads">Threads to work on; what comes out does not depend on it.</param>
internal sealed class TrialBook(LayoutAssessor assessor, int threads)
{
    private const int Block = 8;

    private readonly Dictionary<Layout, Trial> known = [];

    public LayoutAssessor Assessor => assessor;

    public Scenario Scenario => assessor.Scenario;

    /// <summary>The best so far that fits and passes every check, whatever it was simulated for; null for none.</summary>
    public Trial? Best(Func<Layout, bool> fits)
    {
        Trial? best = null;
        foreach (var trial in known.Values)
        {
            if (trial.Figures.PassesChecks && fits(trial.Layout) && (best is null || trial.Beats(best)))
                best = trial;
        }

        return best;
    }

    /// <summary>Every layout met so far that holds.</summary>
    public IEnumerable<Trial> Holding => known.Values.Where(t => t.Holds);

    public Trial Of(Layout layout) => Of([layout])[0];

    public IReadOnlyList<Trial> Of(IReadOnlyList<Layout> layouts)
    {
        var wanted = layouts.Where(l => !known.ContainsKey(l)).Distinct().ToList();
        var blocks = wanted.Chunk(Block).ToArray();
        var made = new Trial[blocks.Length][];
        Parallel.For(0, blocks.Length, new ParallelOptions { MaxDegreeOfParallelism = threads }, b => made[b] = Simulated(blocks[b]));
        foreach (var (layout, trial) in wanted.Zip(made.SelectMany(m => m)))
            known.Add(layout, trial);
        return [.. layouts.Select(l => known[l])];
    }

    private Trial[] Simulated(IEnumerable<Layout> layouts)
    {
        var priced = layouts.Select(assessor.Price).ToList();
        var outcomes = assessor.Simulate([.. priced.Select(p => p.Built)]);
        return [.. priced.Select((p, i) =>
        {
            var checks = assessor.Checks(p, outcomes[i]);
            return new Trial(p, outcomes[i], checks, assessor.Figures(p, outcomes[i], checks.All(c => c.Passed)), assessor.Weighted(outcomes[i], (o, _) => o.StandbyKwh));
        })];
    }
}
