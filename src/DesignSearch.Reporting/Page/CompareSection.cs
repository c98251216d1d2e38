using DesignSearch.Layouts;
using DesignSearch.Runs;

namespace DesignSearch.Reporting;

/// <summary>Ways to protect the house compared at equal protection, turning against more fixed collector first.</summary>
internal static class CompareSection
{
    /// <summary>The section.</summary>
    public static Markup Of(StoredRun run)
    {
        var (weighing, currency) = (run.Weighing, PlainText.Cut(run.Scenario.Currency, 24));
        var columns = new Column[]
        {
            new("way"), new("cheapest layout found that holds, or the nearest"), new("holds"), new($"build price [{currency}]", IsFigure: true), new($"life cost [{currency}]", IsFigure: true), new("frost hours, worst winter", IsFigure: true), new("stand-by [kWh]", IsFigure: true), new("collector [m²]", IsFigure: true),
        };
        var rows = weighing.Comparisons.SelectMany(c => c.Ways.Select(w => Row(c, w)));
        return Markup.When(weighing.Comparisons.Count > 0, () => Markup.Of($"""
            <section aria-labelledby="compare"><h2 id="compare">Is it worth its money?</h2>
            <p><strong>Turning or a bigger fixed collector?</strong> {weighing.Turning.Sentence}</p>
            <ul>{weighing.Comparisons.Select(c => Markup.Of($"<li><strong>{c.Question}</strong> {c.Answer}</li>"))}</ul>
            <div class="fronts">{PageTable.Of("Ways at equal protection", columns, rows)}</div></section>

            """));
    }

    private static Cell[] Row(Comparison comparison, Way way)
    {
        var name = $"{PlainText.Name(comparison.Question)} {PlainText.Name(way.Name)}";
        return way.Best is not { } best
            ? [name, $"None: {PlainText.Name(way.WhyNone)}.", "no", "–", "–", "–", "–", "–"]
            :
            [
                name,
                Say.Capital(PlainText.Name(best.Title)),
                best.Holds ? "yes" : "no",
                Cell.Figure(Say.Whole((double)best.BuildPrice), (double)best.BuildPrice),
                Cell.Figure(Say.Whole((double)best.LifeCost), (double)best.LifeCost),
                Cell.Figure(Say.TwoFigures(best.WorstFrostHours), best.WorstFrostHours),
                Cell.Figure(Say.TwoFigures(best.StandbyKwh), best.StandbyKwh),
                Cell.Figure(Say.Plain(Math.Round(best.CollectorAreaM2, 1)), best.CollectorAreaM2),
            ];
    }
}
