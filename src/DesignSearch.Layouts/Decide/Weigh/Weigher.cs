using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Sure;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Search;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Weighs the result of a search; what it needs beyond the search it simulates, and it invents nothing.</summary>
/// <param name="assessor">Prices, checks and simulates.</param>
/// <param name="threads">Threads to work on; the result does not depend on it.</param>
/// <param name="seed">Seed of the search that is weighed: its own questions are searched from there.</param>
/// <param name="asked">Told the share of the questions of comparison that were searched [0…1], after each; null for silence.</param>
public sealed class Weigher(LayoutAssessor assessor, int threads, ulong seed, Action<double>? asked = null)
{
    private const int MostRefused = 64;

    // Of what the search tried, each question gets this part again for itself.
    private const int ShareOfAWay = 6;
    private const int LeastOfAWay = 48;
    private const int MostOfAWay = 5000;

    private readonly TrialBook book = new(assessor, threads);
    private readonly Lazy<IReadOnlyList<Winter>> unseenWinters = new(() => UnseenJudging.Winters(assessor.Scenario));
    private WaySearch? ways;
    private IReadOnlyDictionary<string, WayBound> bounds = new Dictionary<string, WayBound>();

    /// <summary>Weighs a judgement.</summary>
    /// <param name="judgement">What the search came to.</param>
    /// <param name="tried">Every point that the search simulated.</param>
    /// <param name="space">Turns points into layouts.</param>
    /// <param name="isExact">True when the search tried every layout there is.</param>
    public Weighing Of(Judgement judgement, IReadOnlyList<(double[] Point, Evaluation Evaluation)> tried, LayoutSpace space, bool isExact)
    {
        var scenario = assessor.Scenario;
        var bare = book.Of(Layout.Bare(scenario.Systems.Choices));
        int[] ranks = [.. new[] { judgement.Picks.First, judgement.Picks.CheapestThatHolds, judgement.Picks.BestValue, judgement.Picks.MostProtection }.OfType<int>().Distinct()];
        var picks = ranks.Select(r => book.Of(LayoutOf(judgement.Ranking[r - 1]))).ToList();
        var finder = new WayFinder(book, Passed(tried, space), isExact);
        var nearest = judgement.Picks.First ?? judgement.Picks.MostProtection;
        var best = nearest is { } rank ? book.Of(LayoutOf(judgement.Ranking[rank - 1])) : bare;
        var unseen = scenario.Search.UnseenWinters > 0 && picks.Count > 0 ? UnseenJudging.Of(scenario, picks, assessor.Winters, unseenWinters.Value) : [];
        var solar = judgement.Ranking.FirstOrDefault(l => l.Turning is not ("none" or "fixed")) ?? judgement.Ranking.FirstOrDefault(l => l.CollectorAreaM2 > 0);
        var (doubts, whatIfs) = (new DoubtWeighing(book), new WhatIfWeighing(book));
        // Ways are held against each other by what the design winters ask; one may be better than what the search came to, and is then the measure.
        var cheapest = judgement.Picks.CheapestThatHolds is { } c ? book.Of(LayoutOf(judgement.Ranking[c - 1])) : best;
        var comparisons = new WayComparing(book, finder, Ways(tried.Count, isExact), bounds).Of(finder.Best(_ => true, cheapest.Layout) ?? cheapest);
        return new Weighing
        {
            UnseenFrom = unseen.Count > 0 ? UnseenJudging.From(scenario) : "",
            Picks =
            [
                .. picks.Select((p, i) => new PickWeighing(
                    ranks[i], unseen.Count > 0 ? unseen[i] : null, SwapWeighing.Of(p, book),
                    doubts.Of(p, judgement.Ranking), WeekMaking.Of(p, bare, assessor), whatIfs.Of(p))),
            ],
            Comparisons = comparisons,
            Turning = new TurningWeighing(book).Of(solar is null ? null : book.Of(LayoutOf(solar))),
            Purchases = PurchaseList.Of(judgement, scenario.Money.Budget),
            PurchaseStep = PurchaseList.Step(scenario.Money.Budget),
            Stages = nearest is null ? [] : StagePlan.Of(best, bare, book),
            CheckCosts = best.Holds ? CheckCosts(best, finder) : [],
            Miss = judgement.AnythingHolds || nearest is null ? null : new MissWeighing(book, threads).Of(nearest.Value, best),
        };
    }

    /// <summary>
    /// Layouts that serve better than the ranking's own and are met while the ways are compared: of all, and of each way of
    /// turning. They are to be ranked before an answer is given.
    /// </summary>
    /// <param name="judgement">What the search came to.</param>
    /// <param name="tried">Every point that the search simulated.</param>
    /// <param name="space">Turns points into layouts.</param>
    /// <param name="isExact">True when the search tried every layout there is: then nothing is better.</param>
    public IReadOnlyList<Layout> Better(Judgement judgement, IReadOnlyList<(double[] Point, Evaluation Evaluation)> tried, LayoutSpace space, bool isExact)
    {
        if (isExact || (judgement.Picks.CheapestThatHolds ?? judgement.Picks.MostProtection) is not { } rank)
            return [];
        var best = book.Of(LayoutOf(judgement.Ranking[rank - 1]));
        var finder = new WayFinder(book, Passed(tried, space), isExact);
        var comparing = new WayComparing(book, finder, Ways(tried.Count, isExact), bounds);
        var own = finder.Best(_ => true, best.Layout) ?? best;
        comparing.Of(own);
        var ranked = judgement.Ranking.Select(l => book.Of(LayoutOf(l))).ToList();
        return
        [
            .. comparing.Found.Append(own)
                .Where(t => t.Holds && (t.Beats(best) || !ranked.Any(r => Turning(r) == Turning(t) && !t.Beats(r))))
                .Select(t => t.Layout)
                .Distinct(),
        ];
    }

    /// <summary>The ways that are compared, each with what the cheapest known costs that holds; null where none is known.</summary>
    /// <param name="tried">Every point that the search simulated.</param>
    /// <param name="space">Turns points into layouts.</param>
    public IReadOnlyList<(WayClass Way, decimal? Known)> Ways(IReadOnlyList<(double[] Point, Evaluation Evaluation)> tried, LayoutSpace space)
    {
        var holding = Passed(tried, space).Where(t => t.FrostKh == 0).Select(t => (t.Layout, Cost: (decimal)t.LifeCost))
            .Concat(book.Holding.Select(t => (t.Layout, Cost: t.Figures.LifeCost))).OrderBy(t => t.Cost).ToList();
        return [.. WayClass.All(assessor.Scenario).Select(w => (w, holding.Where(t => w.Holds(t.Layout)).Select(t => (decimal?)t.Cost).FirstOrDefault()))];
    }

    /// <summary>Takes what a proof says of the ways, and layouts that came to light in it.</summary>
    /// <param name="proved">What is proved of ways.</param>
    /// <param name="met">Layouts that hold.</param>
    public void Take(IReadOnlyList<WayBound> proved, IReadOnlyList<Layout> met)
    {
        bounds = proved.ToDictionary(b => b.Way);
        book.Of(met);
    }

    /// <summary>Asks how sure layouts are in winters they were not chosen on, and which is the cheapest that is sure enough.</summary>
    /// <param name="judgement">What the search came to.</param>
    /// <param name="tried">Every point that the search simulated.</param>
    /// <param name="space">Turns points into layouts.</param>
    /// <param name="isExact">True when the search tried every layout there is.</param>
    /// <returns>Null where the scenario does not ask, nothing holds, or nothing need be added.</returns>
    public SureFound? Sure(Judgement judgement, IReadOnlyList<(double[] Point, Evaluation Evaluation)> tried, LayoutSpace space, bool isExact)
    {
        if (assessor.Scenario.Search is not { Certainty: > 0, UnseenWinters: > 0 } || judgement.BareHouse.Holds || judgement.Picks.CheapestThatHolds is null)
            return null;
        var holders = Passed(tried, space).Where(t => t.FrostKh == 0).Select(t => (t.Layout, Cost: t.LifeCost))
            .Concat(judgement.Ranking.Where(l => l.Holds).Select(l => (LayoutOf(l), (double)l.LifeCost)))
            .Concat(book.Holding.Select(t => (t.Layout, (double)t.Figures.LifeCost)))
            .DistinctBy(h => h.Item1).OrderBy(h => h.Item2).Select(h => h.Item1).ToList();
        return new SurePicking(book, threads, unseenWinters.Value).Of(holders, isExact);
    }

    private WaySearch? Ways(int tried, bool isExact) => isExact ? null : ways ??= new WaySearch(
        book, threads, seed, Math.Clamp(tried / ShareOfAWay, LeastOfAWay, MostOfAWay),
        count => asked?.Invoke(Math.Min(1, count / (double)WayComparing.MostWays(assessor.Scenario))));

    private static string Turning(Trial trial) => trial.Priced.Built.Find<DesignedSolar>()?.TurningWord ?? "none";

    private static List<(Layout Layout, double LifeCost, double FrostKh)> Passed(IReadOnlyList<(double[] Point, Evaluation Evaluation)> tried, LayoutSpace space) =>
        [.. tried.Where(t => t.Evaluation.TotalViolation == 0).Select(t => (space.At(t.Point), t.Evaluation.Objectives[0], t.Evaluation.Objectives[1]))];

    // Layouts that the checks alone kept from being cheaper: one choice away from the best, or met on the way to it.
    private List<CheckCost> CheckCosts(Trial best, WayFinder finder)
    {
        var near = Neighbours.All(assessor.Scenario, best.Layout).Select(n => n.Layout);
        var cheaper = finder.Refused.Take(MostRefused).Concat(near).Where(l => assessor.Price(l) is var p && p.BuildPrice + p.Replacements < best.Figures.LifeCost).ToList();
        return
        [
            .. book.Of(cheaper)
                .Where(t => t.Figures.WorstFrostHours == 0 && t.Checks.Count(c => !c.Passed) == 1 && t.Figures.LifeCost < best.Figures.LifeCost)
                .GroupBy(t => t.Failed!.Id)
                .Select(g => g.MinBy(t => t.Figures.LifeCost)!)
                .Select(t => new CheckCost(t.Failed!.Title, PlantWords.Title(t.Priced.Built), t.Figures.LifeCost, best.Figures.LifeCost - t.Figures.LifeCost, t.Failed.Sentence))
                .OrderByDescending(c => c.Saved),
        ];
    }

    private Layout LayoutOf(JudgedLayout judged) => judged.ToLayout(assessor.Scenario);
}
