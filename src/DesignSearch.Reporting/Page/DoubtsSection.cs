using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>How sure the answer is: what is not known, and every figure that was assumed.</summary>
internal static class DoubtsSection
{
    /// <summary>The section.</summary>
    public static Markup Of(StoredRun run) => Markup.Of($"""
        <section aria-labelledby="doubts"><h2 id="doubts">How sure is this?</h2>
        {Told(run.Judgement.Doubts)}{Drawn(run.Judgement)}{Figures(run)}{Assumptions(run.Scenario)}</section>

        """);

    private static Markup Told(IReadOnlyList<string> doubts) =>
        Markup.When(doubts.Count > 0, () => Markup.Of($"<ul>{doubts.Select(d => Markup.Of($"<li>{PlainText.Sentence(d)}</li>"))}</ul>\n"));

    private static Markup Drawn(Judgement judgement) => Markup.When(judgement.Drawn.Count > 0, () =>
    {
        var rows = judgement.Drawn.Select(d => new Cell[] { PlainText.Name(d.Name), PlainText.Sentence(d.Range), PlainText.Sentence(d.Why) });
        return Markup.Of($"""
            <p>How sure a layout is was asked with all of these drawn anew for each winter, together, more often near the usual figure than near the ends.</p>
            {PageTable.Of("What was drawn", [new("figure"), new("ends of its range"), new("why")], rows)}
            """);
    });

    private static Markup Figures(StoredRun run)
    {
        var picks = PickNames.Of(run.Judgement)
            .Select(p => (
                Name: PickNames.Heading(p.Names), p.Layout.Plants,
                run.Weighing.Picks.FirstOrDefault(w => w.Rank == p.Layout.Rank)?.Doubts))
            .Where(p => p.Doubts is { Count: > 0 })
            .ToList();
        var columns = new Column[]
        {
            new("pick, if"),
            new("holds"),
            new("frost hours, worst winter", IsFigure: true),
            new("lowest air", IsFigure: true),
            new("electric heat [kWh]", IsFigure: true),
            new($"life cost [{PlainText.Cut(run.Scenario.Currency, 24)}]", IsFigure: true),
            new("what that means"),
        };
        var rows = picks.SelectMany(p => p.Doubts!.Select(d => new Cell[]
        {
            $"{p.Name}, if {PlainText.Name(d.What)}",
            d.Holds ? "yes" : "no",
            Cell.Figure(Say.TwoFigures(d.WorstFrostHours), d.WorstFrostHours),
            PlantAir.Of(d.LowestAirC, run.Scenario.FrostLimitC, p.Plants),
            Cell.Figure(Say.TwoFigures(d.StandbyKwh), d.StandbyKwh),
            Cell.Figure(Say.Whole((double)d.LifeCost), (double)d.LifeCost),
            PlainText.Sentence(d.Sentence),
        }));
        return Markup.When(picks.Count > 0, () =>
        {
            var (name, _, doubts) = picks[0];
            var fails = doubts!.Where(d => !d.Holds).Select(d => PlainText.Name(d.What)).ToList();
            var finding = fails.Count == 0
                ? $"{name}: none of these doubts, one at a time, makes it fail."
                : fails.Count == doubts!.Count ? $"{name}: it does not hold with or without these doubts."
                : $"{name}: it would no longer hold if {Say.Joined(fails)}.";
            return Markup.Of($"<p>{finding}</p>\n{PageTable.Of("The biggest doubts, one at a time", columns, rows, sortable: true)}");
        });
    }

    private static Markup Assumptions(ScenarioRecord scenario) => Markup.When(scenario.Assumptions.Count > 0, () => Markup.Of(
        $"<p>{AssumptionsSection.LeftOf(scenario)} All of them: <a href=\"{FiguresPage.Name}\">{FiguresPage.Name}</a>.</p>\n"));
}
