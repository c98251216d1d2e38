using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Checks;
using DesignSearch.Layouts.Assess.Money;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Search.Engine;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>Judges layouts: figures, checks, bill, settings and cautions of each; ranking, picks and the answer of a search.</summary>
/// <param name="assessor">Prices, checks and simulates.</param>
public sealed class Judge(LayoutAssessor assessor)
{
    private const int LongestSlug = 60;
    private const long FoundLater = -1;

    /// <summary>Judges one layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <returns>The layout with rank 0.</returns>
    public JudgedLayout Of(Layout layout)
    {
        var priced = assessor.Price(layout);
        return Of(priced, assessor.Simulate([priced.Built])[0]);
    }

    /// <summary>Judges the result of a search.</summary>
    /// <param name="result">What the search found.</param>
    /// <param name="space">Turns its points into layouts.</param>
    /// <param name="others">Further points to rank, for instance the best of each way of turning.</param>
    /// <param name="found">Layouts that were found after the search, for instance by <see cref="Weigher.Better"/>; none by default.</param>
    public Judgement Of(SearchResult result, LayoutSpace space, IReadOnlyList<EvaluatedPoint> others, IReadOnlyList<Layout>? found = null)
    {
        var bare = Of(Layout.Bare(assessor.Scenario.Catalogue));
        var front = result.Front.Select(p => p.Index).ToHashSet();
        var kept = others.Select(p => p.Index).Concat(front).ToHashSet();
        var points = result.Front.Concat(result.BestByMerit).Concat(others).DistinctBy(p => p.Index).ToList();
        var later = (found ?? []).Select(Of).ToList();
        var judged = later.Select(l => (Layout: l, Index: FoundLater)).Concat(points.Select(p => (Layout: Of(space.At(p.Point)), p.Index))).Where(j => j.Layout.BuildPrice > 0).DistinctBy(j => j.Layout.Slug).ToList();
        bool IsBeaten(JudgedLayout l) => later.Any(o => o.PassesChecks && o.LifeCost <= l.LifeCost && o.FrostDegreeHoursKh <= l.FrostDegreeHoursKh && (o.LifeCost < l.LifeCost || o.FrostDegreeHoursKh < l.FrostDegreeHoursKh))
            || (later.Contains(l) && judged.Any(o => front.Contains(o.Index) && o.Layout.LifeCost <= l.LifeCost && o.Layout.FrostDegreeHoursKh <= l.FrostDegreeHoursKh && o.Layout.Slug != l.Slug));
        var onFront = judged.Where(j => (j.Index == FoundLater || front.Contains(j.Index)) && !IsBeaten(j.Layout)).Select(j => j.Layout.Slug).ToHashSet(StringComparer.Ordinal);
        var always = judged.Where(j => j.Index == FoundLater || kept.Contains(j.Index)).Select(j => j.Layout.Slug).ToHashSet(StringComparer.Ordinal);
        var ranking = PickChooser.Rank(judged.Select(j => j.Layout), assessor.Scenario.Search.Ranked, l => always.Contains(l.Slug));
        ranking = [.. ranking.Zip(DistinctTitles.Of(ranking, assessor.Scenario), (l, apart) => l with { Apart = apart })];
        var picks = PickChooser.Choose(ranking);
        // The bare house costs nothing, so it always begins the front.
        var ranks = ranking.Where(l => onFront.Contains(l.Slug) && l.FrostDegreeHoursKh < bare.FrostDegreeHoursKh).OrderBy(l => l.LifeCost).ThenBy(l => l.FrostDegreeHoursKh).Select(l => l.Rank).ToList();
        return new Judgement
        {
            Answer = AnswerWriter.Answer(assessor.Scenario, bare, ranking, picks),
            AnythingHolds = picks.CheapestThatHolds is not null || bare.Holds,
            BareHouse = bare,
            Ranking = ranking,
            Front = [0, .. ranks],
            Picks = picks,
            NearestMiss = picks.CheapestThatHolds is null && !bare.Holds ? AnswerWriter.NearestMiss(assessor.Scenario, ranking, picks) : [],
            Refusals = RefusalCounter.Count(assessor, space),
            Doubts = AnswerWriter.Doubts(assessor.Scenario, assessor.Winters, ranking),
        };
    }

    private JudgedLayout Of(PricedLayout priced, IReadOnlyList<Outcome> outcomes)
    {
        var checks = assessor.Checks(priced, outcomes);
        var figures = assessor.Figures(priced, outcomes, checks.All(c => c.Passed));
        var built = priced.Built;
        var title = LayoutWords.Title(built);
        return new JudgedLayout
        {
            Rank = 0,
            Slug = Slug(built.Layout),
            Title = title,
            Turning = LayoutWords.Turning(built),
            Choices = built.Layout.Awake.ToDictionary(a => a.Choice.Key, a => a.Value.ToString()),
            Holds = figures.Holds,
            PassesChecks = figures.PassesChecks,
            BuildPrice = figures.BuildPrice,
            LifeCost = figures.LifeCost,
            Running = figures.Running,
            LabourHours = priced.LabourHours,
            LabourCost = Pricer.Labour(priced.LabourHours, assessor.Scenario.Money),
            Score = figures.Score(assessor.BareFrostHours),
            FrostHours = figures.FrostHours,
            WorstFrostHours = figures.WorstFrostHours,
            FrostDegreeHoursKh = figures.FrostDegreeHoursKh,
            LowestAirC = figures.LowestAirC,
            StandbyKwh = assessor.Weighted(outcomes, (o, _) => o.StandbyKwh),
            CollectorYieldKwh = assessor.Weighted(outcomes, (o, _) => o.CollectorYieldKwh),
            PumpHours = assessor.Weighted(outcomes, (o, _) => o.PumpHours),
            CollectorAreaM2 = built.Solar?.AreaM2 ?? 0,
            OtherSkyShare = assessor.OtherSkyShare(built),
            Winters = [.. outcomes.Select((o, i) =>
            {
                var (winter, weight, _) = assessor.Winters.Winters[i];
                return new WinterOutcome(winter.Name, weight, o, assessor.DriveKwh(built, winter), assessor.Plane(built, winter)?.Moves ?? 0);
            })],
            Checks = checks,
            Bill = assessor.Bill(priced),
            Wires = WireWriter.Of(built),
            Settings = SettingsWriter.Of(assessor.Scenario, built),
            Cautions = CautionWriter.Of(built),
        };
    }

    /// <summary>A name for files: readable, safe, and different for different layouts, because a short sum of all choices ends it.</summary>
    public static string Slug(Layout layout)
    {
        var words = layout.Awake.Where(a => a.Choice.Kind == ChoiceKind.Part && !a.Value.IsNone && ChoiceTable.NamesTheLayout(a.Choice)).Select(a => a.Value.Id);
        var text = string.Join('-', words);
        var head = text.Length == 0 ? "bare" : text.Length <= LongestSlug ? text : text[..LongestSlug].TrimEnd('-');
        var sum = 2166136261u;
        foreach (var letter in LayoutFile.Write(layout, ""))
            sum = (sum ^ letter) * 16777619u;
        return FormattableString.Invariant($"{head}-{sum & 0xFFFFFF:x6}");
    }
}
