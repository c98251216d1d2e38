using System.Numerics;
using DesignSearch.Layouts.Design;
using DesignSearch.Season;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Layouts.Assess;

/// <summary>
/// Seasons of several layouts in pieces that threads may share: cut between winters first, for a long stretch of layouts goes faster through the kernel
/// than two short ones; then into more stretches than threads, as long as each fills a few lanes, so that a thread that was held up leaves its last one to
/// another. What comes out does not depend on the cut.
/// </summary>
internal sealed class SeasonPieces
{
    private const int StretchLanes = 2;
    private const int StretchesPerThread = 2;

    private readonly WinterSet winters;
    private readonly IReadOnlyList<BuiltLayout> layouts;
    private readonly int stretches;

    /// <summary>Cuts the work.</summary>
    /// <param name="winters">The winters.</param>
    /// <param name="layouts">The layouts.</param>
    /// <param name="threads">Threads that will share it, 1 or more.</param>
    public SeasonPieces(WinterSet winters, IReadOnlyList<BuiltLayout> layouts, int threads)
    {
        (this.winters, this.layouts) = (winters, layouts);
        var least = threads / (int)BigInteger.GreatestCommonDivisor(threads, winters.Winters.Count);
        stretches = threads == 1 ? 1 : Math.Clamp(layouts.Count / (StretchLanes * SeasonSimulator.LaneWidth) / least, 1, StretchesPerThread) * least;
        Outcomes = [.. layouts.Select(_ => new Outcome[winters.Winters.Count])];
    }

    /// <summary>How many pieces there are.</summary>
    public int Pieces => winters.Winters.Count * stretches;

    /// <summary>For each layout, one outcome a winter; whole once every piece is done.</summary>
    public Outcome[][] Outcomes { get; }

    /// <summary>Does a piece: a stretch of the layouts through one winter.</summary>
    public void Do(int piece)
    {
        var (w, stretch) = (piece % winters.Winters.Count, piece / winters.Winters.Count);
        var (from, to) = (layouts.Count * stretch / stretches, layouts.Count * (stretch + 1) / stretches);
        var (winter, _, forcing) = winters.Winters[w];
        var (cases, outcomes) = (new LayoutCase[to - from], new Outcome[to - from]);
        for (var i = 0; i < cases.Length; i++)
            cases[i] = new LayoutCase(layouts[from + i].Installation, layouts[from + i].Mount is { } mount ? winters.Planes.Get(winter, mount) : null);
        SeasonSimulator.Run(forcing, cases, outcomes);
        for (var i = 0; i < outcomes.Length; i++)
            Outcomes[from + i][w] = outcomes[i];
    }
}
