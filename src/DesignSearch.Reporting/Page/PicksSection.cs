using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Front;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>The picks side by side, with the bare house to hold them against.</summary>
internal static class PicksSection
{
    /// <summary>The section.</summary>
    public static Markup Of(StoredRun run)
    {
        var picks = PickNames.Of(run.Judgement);
        var bare = run.Judgement.BareHouse;
        var none = Markup.When(picks.Count == 0, () => Markup.Of($"No layout passes every check, so there is none to recommend. "));
        var average = Say.Hours(bare.FrostHours, "frost hour");
        var compared = Markup.Of(
            $"For comparison, the bare house with nothing added: {average} in an average winter, {Say.TwoFigures(bare.WorstFrostHours)} "
                + $"in the worst, lowest air {Say.Air(bare.LowestAirC, run.Scenario.FrostLimitC)}.");
        return Markup.Of($"""
            <section aria-labelledby="picks"><h2 id="picks">{Heading(picks.Count)}</h2>
            <p class="wide-words">{none}{compared}</p>
            <div class="cards">
            {picks.Select(p => Card(p.Layout, p.Names, picks.Count(other => other.Layout.Title == p.Layout.Title) > 1, run.Scenario))}</div>
            {FirstStep(run)}</section>

            """);
    }

    /// <summary>The main figures of one layout, as a list of terms; what it has none of is not told.</summary>
    public static Markup Figures(JudgedLayout layout, ScenarioRecord scenario)
    {
        var currency = scenario.Currency;
        (string Term, string Value)[] rows =
        [
            ("Build price", Say.Money(layout.BuildPrice, currency)),
            ($"Life cost, {Say.Count(scenario.Years, "year")}", Say.Money(layout.LifeCost, currency)),
            ("Electricity a year", Say.Money(layout.Running.ElectricityPerYear, currency)),
            .. layout.WorstFrostHours > 0
                ? new[]
                {
                    ("Frost hours, average winter", Say.TwoFigures(layout.FrostHours)),
                    ("Frost hours, worst winter", Say.TwoFigures(layout.WorstFrostHours)),
                    ("Frost, hours × degrees too cold", Say.DegreeHours(layout.FrostDegreeHoursKh)),
                }
                : [("Frost hours", "none")],
            (layout.Plants is { } place ? $"Lowest air {place.Where}" : "Lowest air", Say.Air(layout.LowestAirC, scenario.FrostLimitC)),
            .. layout.Chance is { } chance ? new[] { ("Held in other winters, doubts drawn", $"{Say.Whole(chance.Held)} of {Say.Whole(chance.Of)}") } : [],
            .. layout.Plants is not null ? new[] { ("Lowest air in the house", Say.Celsius(layout.LowestHouseAirC)) } : [],
            ("Electric heat", Say.Kwh(layout.StandbyKwh)),
            .. layout.CollectorAreaM2 > 0
                ? new[]
                {
                    ("Collector", $"{Say.Plain(Math.Round(layout.CollectorAreaM2, 1))} m², {TurningMode.Of(layout.Turning).Words}"),
                    ("Collector yield", Say.Kwh(layout.CollectorYieldKwh)),
                }
                : [],
            ("Own work", Say.Hours(layout.LabourHours)),
        ];
        return Markup.Of($"<dl>{rows.Select(r => Markup.Of($"<div><dt>{r.Term}</dt><dd>{r.Value}</dd></div>"))}</dl>");
    }

    private static Markup FirstStep(StoredRun run) => PickNames.FirstStep(run.Judgement) is { } step
        ? Markup.Of($"""
            <p class="wide-words"><strong>A first step, if the money is not there yet:</strong> {PlainText.Name(step.FullTitle)},
            {Say.Money(step.BuildPrice, run.Scenario.Currency)} to build,
            <a href="#layout-{step.Rank}">layout {step.Rank}</a>. It does not hold: {Say.Hours(step.WorstFrostHours, "frost hour")} in the worst winter,
            {Say.Air(step.LowestAirC, run.Scenario.FrostLimitC)} at the lowest.{ComeTrue(step)}</p>

            """)
        : Markup.None;

    private static Markup ComeTrue(JudgedLayout layout) =>
        Markup.All(layout.ComeTrue.Select(c => Markup.Of($" <strong>Take care, in that cold:</strong> {PlainText.Sentence(c.Text)}")));

    private static string Heading(int count) => count switch
    {
        0 => "Nothing to pick",
        1 => "One layout wins every pick",
        2 => "Two layouts to look at first",
        3 => "Three layouts to look at first",
        _ => "Four layouts to look at first",
    };

    private static Markup Card(JudgedLayout layout, IReadOnlyList<string> names, bool sharesTitle, ScenarioRecord scenario) => Markup.Of($"""
        <article class="card{(layout.Holds ? " holds" : "")}"><h3>{PickNames.Heading(names)}</h3>
        <p class="title">{Say.Capital(PlainText.Name(sharesTitle ? layout.FullTitle : layout.Title))}</p>
        <p>{Verdict(layout)}{ComeTrue(layout)}</p>
        {Figures(layout, scenario)}
        {Cautions(layout)}{Bill(layout, scenario.Currency)}<p><a href="#layout-{layout.Rank}">Everything about layout {layout.Rank}</a></p>
        </article>

        """);

    private static Markup Cautions(JudgedLayout layout)
    {
        string[] topics = [.. layout.Cautions.Select(c => Say.Small(PlainText.Name(c.Topic)))];
        return Markup.When(
            topics.Length > 0, () => Markup.Of($"<p class=\"care\"><strong>Take care:</strong> {Say.Joined(topics)}.</p>\n"));
    }

    private static Markup Bill(JudgedLayout layout, string currency) => Markup.When(layout.Bill.Count > 0, () => Markup.Of(
        $"<details><summary>Its list, {Say.Money(layout.BuildPrice, currency)}</summary>\n{ShoppingSection.Short(layout, currency)}</details>\n"));

    private static string Verdict(JudgedLayout layout) => layout switch
    {
        { Holds: true, Plants: { } place } => $"Holds the limit {place.Where} in every design winter; the rest of the house is not held.",
        { Holds: true } => "Holds the limit in every design winter.",
        { PassesChecks: true } => "Passes every check, but does not hold the limit in every winter.",
        _ => "Does not pass every check.",
    };
}
