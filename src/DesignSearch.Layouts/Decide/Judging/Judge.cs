using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Checks;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Decide.Sure;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Search.Engine;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>Judges layouts: figures, checks, bill, settings and cautions of each; ranking, picks and the answer of a search.</summary>
/// <param name="assessor">Prices, checks and simulates.</param>
public sealed class Judge(LayoutAssessor assessor)
{
    private const int LongestSlug = 60;

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
    /// <param name="sure">How sure layouts are, and which to pick for it; null where that was not asked.</param>
    public Judgement Of(
        SearchResult result, LayoutSpace space, IReadOnlyList<EvaluatedPoint> others, IReadOnlyList<Layout>? found = null, SureFound? sure = null)
    {
        var bare = Of(Layout.Bare(assessor.Scenario.Systems.Choices));
        var list = new Shortlist(this, [.. (found ?? []).Concat(sure?.Chances.Keys ?? []).Distinct()]);
        list.Add(result.Front.Select(p => space.At(p.Point)), isOnFront: true, isKept: true);
        list.Add(others.Select(p => space.At(p.Point)), isOnFront: false, isKept: true);
        list.Add(result.BestByMerit.Select(p => space.At(p.Point)), isOnFront: false, isKept: false);
        var (ranking, front) = list.Rank(assessor.Scenario.Search.Ranked);
        ranking = [.. ranking.Zip(DistinctTitles.Of(ranking, assessor.Scenario), (l, apart) => l with { Apart = apart })];
        var layouts = ranking.Select(l => l.ToLayout(assessor.Scenario)).ToList();
        ranking = [.. ranking.Select((l, i) => l with { Chance = sure?.Chances.GetValueOrDefault(layouts[i]) })];
        var picks = PickChooser.Choose(ranking, sure is null ? null : (layouts.IndexOf(sure.First) + 1, layouts.IndexOf(sure.MostProtection) + 1));
        // The bare house costs nothing, so it always begins the front.
        var ranks = front.Select(r => ranking[r - 1]).Where(l => l.FrostDegreeHoursKh < bare.FrostDegreeHoursKh)
            .OrderBy(l => l.LifeCost).ThenBy(l => l.FrostDegreeHoursKh).Select(l => l.Rank);
        return new Judgement
        {
            Answer = AnswerWords.Answer(assessor.Scenario, bare, ranking, picks, result.IsExact),
            Remark = picks.First is { } best && !bare.Holds ? AnswerWords.Remark(ranking[best - 1], result.IsExact).Trim() : "",
            AnythingHolds = picks.CheapestThatHolds is not null || bare.Holds,
            BareHouse = bare,
            Ranking = ranking,
            Front = [0, .. ranks],
            Picks = picks,
            Sureness = sure is null ? [] : SureWords.Of(sure, ranking, picks, sure.Surer is { } surer ? ranking[layouts.IndexOf(surer)] : null, assessor.Scenario),
            Drawn = [.. (sure?.Drawn ?? []).Select(f => new DrawnDoubt(f.Name, f.Range, f.Why))],
            NearestMiss = picks.CheapestThatHolds is null && !bare.Holds ? AnswerWords.NearestMiss(assessor.Scenario, ranking, picks) : [],
            Refusals = RefusalCounter.Count(assessor, space),
            Doubts = AnswerWords.Doubts(assessor.Scenario, assessor.Winters, ranking),
        };
    }

    private JudgedLayout Of(PricedLayout priced, IReadOnlyList<Outcome> outcomes)
    {
        var checks = assessor.Checks(priced, outcomes);
        var figures = assessor.Figures(priced, outcomes, checks.All(c => c.Passed));
        var built = priced.Built;
        var title = PlantWords.Title(built);
        return new JudgedLayout
        {
            Rank = 0,
            Slug = Slug(built.Layout),
            Title = title,
            Turning = built.Find<DesignedSolar>()?.TurningWord ?? "none",
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
            CollectorAreaM2 = built.Find<DesignedSolar>()?.Loop.AreaM2 ?? 0,
            OtherSkyShare = assessor.OtherSkyShare(built),
            Winters = [.. outcomes.Select((o, i) =>
            {
                var (winter, weight, _) = assessor.Winters.Winters[i];
                return new WinterOutcome(winter.Name, weight, o, assessor.DriveKwh(built, winter), assessor.Plane(built, winter)?.Moves ?? 0);
            })],
            Checks = checks,
            Bill = assessor.Bill(priced),
            Wires = WireWriter.Of(built),
            Scheme = SchemeDrawing.Of(built),
            Site = SitePlan.Of(built, assessor.Scenario),
            Frame = built.Systems.Select(s => s.Frame(built.Parts)).FirstOrDefault(f => f is not null),
            Settings = built.Settings(assessor.Scenario),
            Cautions = Cautions(built),
            Upkeep = [.. built.Systems.SelectMany(s => s.Upkeep)],
            Papers = PlantPapers.Of(assessor.Scenario, built),
            LicensedPerHour = assessor.LicensedPerHour,
            Wears = Pricer.Wears(built.Parts, assessor.Scenario.Stock, assessor.Scenario.Money),
            Plants = built.Plants,
        };
    }

    // A name for files: readable and safe; that it differs for different layouts is the rank's work, which stands before it there.
    private static string Slug(Layout layout)
    {
        var words = layout.Awake.Where(a => a.Choice is PartChoice { NamesTheLayout: true } && !a.Value.IsNone).Select(a => a.Value.Id);
        var text = string.Join('-', words);
        return text.Length == 0 ? "bare" : text.Length <= LongestSlug ? text : text[..LongestSlug].TrimEnd('-');
    }

    // Each danger once, however many systems share it; a power cut, which is the whole plant's, comes last.
    private static IReadOnlyList<Caution> Cautions(BuiltLayout built) =>
        [.. built.Systems.Reverse().SelectMany(s => s.Cautions)
            .Concat(built.Supply is null or { Battery: not null } ? [] : [Dangers.PowerCut]).DistinctBy(c => c.Topic)];
}
