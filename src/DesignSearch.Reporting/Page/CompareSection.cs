using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>Ways to protect the house compared at equal protection, turning against more fixed collector first.</summary>
internal static class CompareSection
{
    private const string Caption = "Ways at equal protection";

    /// <summary>The section.</summary>
    public static Markup Of(StoredRun run)
    {
        var (weighing, currency) = (run.Weighing, PlainText.Cut(run.Scenario.Currency, 24));
        Column[] columns =
        [
            new("way"),
            new("layout"),
            new("holds"),
            new($"build price [{currency}]", IsFigure: true),
            new($"life cost [{currency}]", IsFigure: true),
            new("frost hours, worst winter", IsFigure: true),
            new("electric heat [kWh]", IsFigure: true),
            new("collector [m²]", IsFigure: true),
        ];
        var heads = columns.Select(c => c.IsFigure ? Markup.Of($"""<th scope="col" class="n">{c.Head}</th>""") : Markup.Of($"""<th scope="col">{c.Head}</th>"""));
        var groups = weighing.Comparisons.Select(c => Markup.Of($"""
            <tbody><tr class="system"><th scope="rowgroup" colspan="{columns.Length}"><div>{c.Question} {Answer(c)}</div></th></tr>
            {c.Ways.Select(Row)}</tbody>

            """));
        return Markup.When(weighing.Comparisons.Count > 0, () => Markup.Of($"""
            <section aria-labelledby="compare"><h2 id="compare">Is it worth its money?</h2>
            <p><strong>Turning or a bigger fixed collector?</strong> {PlainText.Sentence(weighing.Turning.Sentence)}</p>
            <p>Each way is shown by the cheapest layout found of it that holds, or the nearest where none holds. {Cheaper(run)}</p>
            {PageTable.Box(Caption, Markup.Of($"""<table class="ways"><caption>{Caption}</caption><thead><tr>{heads}</tr></thead>{groups}</table>"""))}</section>

            """));
    }

    // The comparing looks on where the search ended; what it finds is said, not hidden.
    private static string Cheaper(StoredRun run)
    {
        var pick = run.Judgement.Ranking.Where(l => l.Holds).Select(l => (decimal?)l.LifeCost).Min();
        var found = run.Weighing.Comparisons.SelectMany(c => c.Ways).Select(w => w.Best).OfType<WayLayout>().Where(l => l.Holds).MinBy(l => l.LifeCost);
        return found is not null && pick is { } known && found.LifeCost < known
            ? $"In comparing, a cheaper layout that holds was met than the search had found: {PlainText.Name(found.Title)} for "
                + $"{Say.Money(found.LifeCost, run.Scenario.Currency)} over the years. Search again with more evaluations before you buy."
            : "";
    }

    private static Markup Answer(Comparison comparison) => Markup.Of($"""<span class="answer">{PlainText.Sentence(comparison.Answer)}</span>""");

    private static Markup Row(Way way) => way.Best is not { } best
        ? Markup.Of($"""<tr><th scope="row">{PlainText.Name(way.Name)}</th><td colspan="7">None: {way.WhyNone}.</td></tr>{"\n"}""")
        : Markup.Of($"""<tr><th scope="row">{PlainText.Name(way.Name)}</th>{Cells(best)}</tr>{"\n"}""");

    private static Markup Cells(WayLayout best) => Markup.All(
    [
        Markup.Of($"<td>{Say.Capital(PlainText.Name(best.Title))}</td><td>{(best.Holds ? "yes" : "no")}</td>"),
        Figure(Say.Whole((double)best.BuildPrice)),
        Figure(Say.Whole((double)best.LifeCost)),
        Figure(Say.TwoFigures(best.WorstFrostHours)),
        Figure(Say.TwoFigures(best.StandbyKwh)),
        Figure(Say.Plain(Math.Round(best.CollectorAreaM2, 1))),
    ]);

    private static Markup Figure(string text) => Markup.Of($"""<td class="n">{text}</td>""");
}
