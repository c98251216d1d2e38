using System.Collections.Concurrent;
using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Decide.Sure;

/// <summary>
/// Winters that no layout was chosen on, each with all that is in doubt drawn anew and together; the same draws for every layout. Each figure goes once through
/// every one of as many equal shares of its range as there are draws (a Latin hypercube, McKay, Beckman and Conover 1979). Safe to use from several threads.
/// </summary>
internal sealed class DoubtDraws
{
    private readonly ulong seed;
    private readonly LayoutAssessor[] assessors;
    private readonly Lazy<LayoutAssessor>[] forgetful;
    private readonly ConcurrentDictionary<string, double[]> shares = new(StringComparer.Ordinal);

    /// <summary>Draws.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="winters">The winters, one a draw.</param>
    /// <param name="seed">Any number; other figures by another.</param>
    /// <param name="threads">Threads to work on; what comes out does not depend on it.</param>
    public DoubtDraws(Scenario scenario, IReadOnlyList<Winter> winters, ulong seed, int threads)
    {
        (this.seed, Count) = (seed, winters.Count);
        var soil = Unknowns.Soil(scenario);
        assessors = new LayoutAssessor[Count];
        forgetful = new Lazy<LayoutAssessor>[Count];
        Share.Out(Count, threads, i =>
        {
            var own = Unknowns.WithSoil(scenario, soil.At(Part(soil, i)));
            var winter = Colder(winters[i], Unknowns.Sky.At(Part(Unknowns.Sky, i)));
            assessors[i] = new(own, WinterSet.Of(own, [(winter, 1.0)]));
            forgetful[i] = new(() => new(own, WinterSet.Of(own, [(Forgetting.In(winter, Forgetting.Figure.At(Part(Forgetting.Figure, i)), SeedOf(i)), 1.0)])));
        });
    }

    /// <summary>How many.</summary>
    public int Count { get; }

    /// <summary>What a draw does to layouts.</summary>
    /// <param name="draw">Its number, from 0.</param>
    /// <param name="layouts">The layouts.</param>
    /// <returns>One outcome a layout.</returns>
    public Outcome[] Of(int draw, IReadOnlyList<BuiltLayout> layouts)
    {
        var outcomes = new Outcome[layouts.Count];
        foreach (var group in Enumerable.Range(0, layouts.Count).GroupBy(i => Forgetting.Matters(layouts[i])))
        {
            int[] places = [.. group];
            var simulated = (group.Key ? forgetful[draw].Value : assessors[draw]).Simulate([.. places.Select(p => Drawn(draw, layouts[p]))]);
            for (var i = 0; i < places.Length; i++)
                outcomes[places[i]] = simulated[i][0];
        }

        return outcomes;
    }

    /// <summary>What every draw does to a layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="threads">Threads to work on.</param>
    public Outcome[] All(BuiltLayout layout, int threads)
    {
        var outcomes = new Outcome[Count];
        Share.Out(Count, threads, i => outcomes[i] = Of(i, [layout])[0]);
        return outcomes;
    }

    /// <summary>A winter under a colder sky.</summary>
    /// <param name="winter">The winter.</param>
    /// <param name="kelvin">By how much it is colder [K].</param>
    internal static Winter Colder(Winter winter, double kelvin) => winter with { SkyC = [.. winter.SkyC.Select(s => s - kelvin)] };

    private BuiltLayout Drawn(int draw, BuiltLayout built)
    {
        var plant = built.Installation;
        foreach (var doubt in Unknowns.Of(built))
            plant = doubt.Change(plant, doubt.Figure.At(Part(doubt.Figure, draw)));
        return built with { Installation = plant };
    }

    private double Part(DoubtfulFigure figure, int draw) => shares.GetOrAdd(figure.Name, Shuffled)[draw];

    private int SeedOf(int draw) => unchecked((int)(seed ^ (seed >> 32)) + draw);

    // The middles of equal shares in an order that hangs on the figure's name and the seed alone.
    private double[] Shuffled(string name)
    {
        var all = Enumerable.Range(0, Count).Select(i => (i + 0.5) / Count).ToArray();
        var mix = seed;
        foreach (var letter in name)
            mix = (mix ^ letter) * 0x100000001B3UL;
        new Random((int)(mix ^ (mix >> 32))).Shuffle(all);
        return all;
    }
}
