using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Front;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>Cost against frost: the chart to click and to walk by keyboard, and the front as a table.</summary>
internal static class FrontSection
{
    private static readonly Markup Spreadsheets = Markup.Of(
        $"Every ranked layout with full figures, for a spreadsheet: <a href=\"ranking.csv\">ranking.csv</a>, "
            + $"the front alone: <a href=\"front.csv\">front.csv</a>.");

    private static readonly Markup Pictures = Markup.Of(
        $"The chart as a picture: <a href=\"pareto.png\">pareto.png</a>, <a href=\"pareto.svg\">pareto.svg</a>.");

    /// <summary>The section.</summary>
    /// <param name="run">The run.</param>
    /// <param name="detailed">Ranks of the layouts that stand on the page in full.</param>
    public static Markup Of(StoredRun run, IReadOnlySet<int> detailed)
    {
        var chart = FrontChart.Of(run);
        Markup Drawn(FrontFrame frame, string name) =>
            Markup.Of($"""<div class="{name}">{PageChart.Of(chart, detailed, frame, name)}</div>""");
        Markup[] drawn = [Drawn(FrontFrame.Wide, "wide"), Drawn(FrontFrame.Narrow, "narrow")];
        return Markup.Of($"""
            <section aria-labelledby="front"><h2 id="front">Cost against frost</h2>
            <figure><figcaption>{chart.Finding} {chart.Note}<span class="screen"> Choose a point to read about its layout; the arrow keys walk along the line.</span></figcaption>
            {Legend(chart)}{drawn}<p class="readout" aria-hidden="true"></p></figure>
            <div class="fronts">{Table(run, detailed)}</div><p class="screen">{Spreadsheets} {Pictures}</p>
            </section>

            """);
    }

    private static Markup Legend(FrontChart chart) => Markup.Of($"""
        <ul class="legend">{chart.Modes.Select(m => Entry(m, m.Words))}{Entry(null, "pale: beaten by another layout")}</ul>

        """);

    private static Markup Entry(TurningMode? mode, string words) => Markup.Of($"<li>{PageChart.Glyph(mode)}{words}</li>");

    private static Markup Table(StoredRun run, IReadOnlySet<int> detailed)
    {
        var judgement = run.Judgement;
        var currency = PlainText.Cut(run.Scenario.Currency, 24);
        var layouts = judgement.Front.Select(r => r == 0 ? judgement.BareHouse : judgement.Ranking[r - 1]).ToList();
        var step = Step(layouts);
        var columns = new Column[]
        {
            new("rank and layout"),
            new("turning"),
            new("holds"),
            new($"life cost [{currency}]", IsFigure: true),
            new($"build price [{currency}]", IsFigure: true),
            new("frost degree-hours [K·h]", IsFigure: true),
            new($"what {Say.Whole(step)} more would take away [K·h]", IsFigure: true),
            new("frost hours, worst winter", IsFigure: true),
            new("lowest air", IsFigure: true),
            new("electric heat [kWh]", IsFigure: true),
        };
        var rows = layouts.Select(l => new Cell[]
        {
            new(Name(l, detailed), l.Rank),
            TurningMode.Of(l.Turning).Words,
            l.Holds ? "yes" : "no",
            Cell.Figure(Say.Whole((double)l.LifeCost), (double)l.LifeCost),
            Cell.Figure(Say.Whole((double)l.BuildPrice), (double)l.BuildPrice),
            Cell.Figure(Say.TwoFigures(l.FrostDegreeHoursKh), l.FrostDegreeHoursKh),
            Bought(layouts, l, step),
            Cell.Figure(Say.TwoFigures(l.WorstFrostHours), l.WorstFrostHours),
            PlantAir.Of(l.LowestAirC, run.Scenario.FrostLimitC, l.Plants),
            Cell.Figure(Say.TwoFigures(l.StandbyKwh), l.StandbyKwh),
        });
        return PageTable.Of("The front: layouts that no other beats on both life cost and frost", columns, rows, sortable: true);
    }

    // A round sum, about a twentieth of what the dearest of the front costs.
    private static double Step(List<JudgedLayout> front)
    {
        var about = Math.Max(1, front.Select(l => (double)l.LifeCost).DefaultIfEmpty(0).Max() / 20);
        var unit = Math.Pow(10, Math.Floor(Math.Log10(about)));
        return unit * (about / unit) switch { < 1.5 => 1, < 3.5 => 2, < 7.5 => 5, _ => 10 };
    }

    private static Cell Bought(List<JudgedLayout> front, JudgedLayout layout, double step)
    {
        var less = layout.FrostDegreeHoursKh - front.Where(l => (double)(l.LifeCost - layout.LifeCost) <= step).Min(l => l.FrostDegreeHoursKh);
        return layout.FrostDegreeHoursKh > 0 ? Cell.Figure(Say.TwoFigures(less), less) : "";
    }

    private static Markup Name(JudgedLayout layout, IReadOnlySet<int> detailed)
    {
        var name = layout.Rank == 0 ? Markup.Of($"{Say.Capital(PlainText.Name(layout.FullTitle))}") : Markup.Of($"{layout.Rank}: {PlainText.Name(layout.FullTitle)}");
        return detailed.Contains(layout.Rank) ? Markup.Of($"""<a href="#layout-{layout.Rank}">{name}</a>""") : name;
    }
}
