using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Decide.Sure;

/// <summary>
/// Counts in how many draws layouts fail, the hardest draws first and no longer than it matters: most layouts that are not sure enough have shown it after a few.
/// </summary>
/// <param name="draws">The draws.</param>
/// <param name="bare">The bare house: the colder it gets in a draw, the harder the draw.</param>
/// <param name="threads">Threads to work on; what comes out does not depend on it.</param>
internal sealed class ChanceBook(DoubtDraws draws, BuiltLayout bare, int threads)
{
    private const int Block = 8;

    private readonly Dictionary<Layout, Count> known = [];
    private int[]? order;

    /// <summary>In how many draws a layout failed so far.</summary>
    public int Failed(Trial layout) => known[layout.Layout].Failed;

    /// <summary>Lowest hour mean of the plants' air over all draws [°C], of a layout that went through all.</summary>
    public double LowestAirC(Trial layout) => known[layout.Layout].LowestAirC;

    /// <summary>Which layouts fail in so many draws at most.</summary>
    /// <param name="layouts">The layouts.</param>
    /// <param name="mayFail">In how many draws they may fail.</param>
    /// <returns>Those that do, each gone through all draws, in the order given.</returns>
    public IReadOnlyList<Trial> Sure(IReadOnlyList<Trial> layouts, int mayFail)
    {
        order ??= Hardest();
        foreach (var layout in layouts)
            known.TryAdd(layout.Layout, new());
        for (var from = 0; from < order.Length; from += Block)
        {
            var to = Math.Min(from + Block, order.Length);
            var open = layouts.Where(l => known[l.Layout] is var k && k.Failed <= mayFail && k.Done == from).DistinctBy(l => l.Layout).ToList();
            if (open.Count > 0)
                Go(open, from, to);
        }

        return [.. layouts.Where(l => known[l.Layout] is var k && k.Failed <= mayFail && k.Done == order.Length)];
    }

    private void Go(List<Trial> open, int from, int to)
    {
        BuiltLayout[] built = [.. open.Select(l => l.Priced.Built)];
        var outcomes = new Season.Outcome[to - from][];
        Share.Out(to - from, threads, i => outcomes[i] = draws.Of(order![from + i], built));
        for (var l = 0; l < open.Count; l++)
        {
            var count = known[open[l].Layout];
            count.Done = to;
            foreach (var draw in outcomes)
            {
                count.Failed += draw[l].FrostHours > 0 ? 1 : 0;
                count.LowestAirC = Math.Min(count.LowestAirC, draw[l].LowestAirC);
            }
        }
    }

    private int[] Hardest()
    {
        var outcomes = draws.All(bare, threads);
        return [.. Enumerable.Range(0, draws.Count).OrderByDescending(i => outcomes[i].FrostDegreeHoursKh).ThenBy(i => outcomes[i].LowestAirC).ThenBy(i => i)];
    }

    private sealed class Count
    {
        public int Done { get; set; }

        public int Failed { get; set; }

        public double LowestAirC { get; set; } = double.PositiveInfinity;
    }
}
