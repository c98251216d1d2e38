using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>Head of the page: the answer first, then what the page is and is not.</summary>
internal static class AnswerSection
{
    private static readonly Markup WhatItIsNot = Markup.Of(
        $"It compares layouts by a simplified model of one house; it is not a design, an approval or a promise.");

    private static readonly Markup WhatComesFirst = Markup.Of(
        $"Local codes, makers' instructions and the law where you live come first, and work that needs a licence, "
            + $"such as mains wiring, pressure vessels and structure, belongs to a licensed person.");

    // Of the cost over the years: what the model and the prices are known to.
    private const decimal Unsettled = 0.03m;

    /// <summary>The section.</summary>
    public static Markup Of(StoredRun run)
    {
        var scenario = run.Scenario;
        var budget = Say.Money(scenario.Budget, scenario.Currency);
        var limit = Markup.Of(
            $"{It(run)} must stay above {Say.Plain(scenario.FrostLimitC)}{"\u00A0"}°C from {scenario.Season}, on a budget of {budget}");
        var first = PickNames.Of(run.Judgement) is [var pick, ..] && run.Judgement.AnythingHolds && !run.Judgement.BareHouse.Holds ? pick.Layout : null;
        return Markup.Of($"""
            <header>
            {Banner(run.Search)}{Missing(run.Unmade)}{InDoubt(scenario.InDoubt)}<p class="place">{PlainText.Name(scenario.Name)} · {PlainText.Name(scenario.PlaceName)}</p>
            {(first is null ? Markup.Of($"<h1>{PlainText.Sentence(run.Judgement.Answer)}</h1>\n") : AnswerFacts.Of(run, first))}
            {NearestMiss(run)}<div class="said">
            {Sureness(run)}{Proved(run)}{Remark(run, first)}<p>{scenario.Description}</p>
            <p>The house: {scenario.House}. {limit} for building. {HowSure(run)}</p></div>
            <p class="aid"><strong>This is a planning aid.</strong> {WhatItIsNot}
            {WhatComesFirst}</p>
            </header>

            """);
    }

    private static Markup Remark(StoredRun run, JudgedLayout? first) =>
        Markup.When(first is not null && run.Judgement.Remark.Length > 0, () => Markup.Of($"<p>{PlainText.Sentence(run.Judgement.Remark)}</p>\n"));

    private static string It(StoredRun run) =>
        run.Judgement.Ranking.Select(l => l.Plants).FirstOrDefault(p => p is not null) is { } place ? $"It, {place.Also}," : "It";

    private static Markup Banner(SearchRecord search) => Markup.When(search.IsPartial, () => Markup.Of(
        $"<p class=\"banner\" role=\"note\"><strong>Stopped early.</strong> {search.StoppedInWords} What stands here is the best found "
            + $"so far, from {Say.Count(search.Evaluations, "layout")}; a longer search may find better.</p>\n"));

    private static Markup Missing(IReadOnlyList<string> unmade) => Markup.When(unmade.Count > 0, () => Markup.Of(
        $"<p class=\"banner\" role=\"note\"><strong>Not whole.</strong> {string.Join(' ', unmade.Select(PlainText.Sentence))} What is here can be used.</p>\n"));

    private static Markup InDoubt(IReadOnlyList<string> doubts) => Markup.When(doubts.Count > 0, () => Markup.Of(
        $"<p class=\"banner\" role=\"note\"><strong>In doubt.</strong> {string.Join(' ', doubts.Select(PlainText.Sentence))}</p>\n"));

    // Where it is proved the proof says it above.
    private static Markup HowSure(StoredRun run) => run.Search.IsExact && run.Certificate is { IsProved: true } ? Markup.None
        : run.Search is { IsExact: true } search ? search.Evaluations == 1
            ? Markup.Of($"The only layout that can be made from the choices was simulated.")
            : Markup.Of(
                $"Every one of the {Say.Whole(search.Evaluations)} layouts that can be made from the choices was simulated, so no better "
                    + $"one exists in this model with these parts.")
        : Markup.Of($"The search simulated {Say.Whole(run.Search.Evaluations)} of {Space(run.Search.SpaceSize)} possible layouts{Settled(run)}");

    // In money, since that is what a longer search might save.
    private static string Settled(StoredRun run)
    {
        var (search, currency) = (run.Search, run.Scenario.Currency);
        if (run.Judgement.Picks.CheapestThatHolds is not { } rank)
            return ", so a slightly better one may exist.";
        var cheapest = run.Judgement.Ranking[rank - 1].LifeCost;
        return search.CheapestHalfWay switch
        {
            null => $"; by half time it had found none that holds. Search longer before you buy{Budget(search)}.",
            { } then when then - cheapest < 1 => "; its second half found none cheaper that holds, which is no proof that there is none.",
            { } then when then - cheapest > Unsettled * cheapest =>
                $"; all after half time took {Say.Money(then - cheapest, currency)} off the cheapest that holds. Search longer before you buy{Budget(search)}.",
            { } then => $"; all after half time took {Say.Money(then - cheapest, currency)} off the cheapest that holds, so a slightly better one may exist.",
        };
    }

    // A search that was cut short by hand or clock needs no larger budget, only time.
    private static string Budget(SearchRecord search) =>
        search.StoppedBecause == "evaluations" ? FormattableString.Invariant($", with --evaluations {2 * search.Evaluations}") : "";

    private static string Space(double size) => size switch
    {
        < 1e6 => Say.Whole(size),
        < 1e12 => $"about {Say.TwoFigures(size / 1e6)} million",
        < 1e18 => $"about {Say.TwoFigures(size / 1e12)} million million",
        _ => "more than a million million million",
    };

    private static Markup Sureness(StoredRun run) => Markup.When(
        run.Judgement.Sureness.Count > 0,
        () => Markup.Of($"<p class=\"sure\">{string.Join(' ', run.Judgement.Sureness.Select(PlainText.Sentence))}</p>\n"));

    private static Markup Proved(StoredRun run) => run.Certificate is { } certificate
        ? Markup.Of($"<p class=\"proved\">{PlainText.Sentence(certificate.Sentence)}</p>\n")
        : Markup.None;

    private static Markup NearestMiss(StoredRun run) => Markup.When(run.Judgement.NearestMiss.Count > 0, () => Markup.Of($"""
        <section class="miss" aria-labelledby="miss"><h2 id="miss">How near it came</h2>
        <ul>{run.Judgement.NearestMiss.Select(s => Markup.Of($"<li>{PlainText.Sentence(s)}</li>"))}</ul></section>

        """));
}
