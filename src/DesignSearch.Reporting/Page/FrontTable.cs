using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Front;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>The front as a table.</summary>
internal static class FrontTable
{
    /// <summary>The section.</summary>
    /// <param name="run">The run.</param>
    public static Markup Of(StoredRun run) => Markup.Of($"""
        <section aria-labelledby="front"><h2 id="front">The best for each sum of money</h2>
        <div class="fronts">{Table(run)}</div></section>

        """);

    private static Markup Table(StoredRun run)
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
            new("frost, hours × degrees too cold [K·h]", IsFigure: true),
            new($"less frost for {Say.Whole(step)} {currency} more [K·h]", IsFigure: true),
            new("frost hours, worst winter", IsFigure: true),
            new("lowest air", IsFigure: true),
            new("electric heat [kWh]", IsFigure: true),
        };
        var rows = layouts.Select(l => new Cell[]
        {
            new(Name(l), l.Rank),
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
        return PageTable.Of("The best for each sum of money: no other layout beats one of these on both life cost and frost", columns, rows, sortable: true);
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

    private static Markup Name(JudgedLayout layout) => layout.Rank == 0
        ? Markup.Of($"{Say.Capital(PlainText.Name(layout.FullTitle))}")
        : Markup.Of($"{layout.Rank}: {PlainText.Name(layout.FullTitle)}");
}
