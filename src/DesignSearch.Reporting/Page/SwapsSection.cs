using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>Each pick with one part changed for its neighbour: which choice matters.</summary>
internal static class SwapsSection
{
    /// <summary>The section.</summary>
    public static Markup Of(StoredRun run)
    {
        var picks = PickNames.Of(run.Judgement)
            .Select(p => (Name: PickNames.Heading(p.Names), run.Weighing.Picks.FirstOrDefault(w => w.Rank == p.Layout.Rank)?.Swaps))
            .Where(p => p.Swaps is { Count: > 0 })
            .ToList();
        return Markup.When(picks.Count > 0, () => Markup.Of($"""
            <section aria-labelledby="swaps"><h2 id="swaps">Which choice matters</h2>
            <p>One choice at a time is changed for the next cheaper, dearer, smaller or larger one. A plus is more than without the change;
            the change that matters most for frost stands first.</p>
            {picks.Select((p, i) => One(p.Name, p.Swaps!, run, isOpen: i == 0))}</section>

            """));
    }

    private static Markup One(string name, IReadOnlyList<Swap> swaps, StoredRun run, bool isOpen)
    {
        var currency = PlainText.Cut(run.Scenario.Currency, 24);
        var columns = new Column[]
        {
            new("change"),
            new("instead of"),
            new("to"),
            new("holds"),
            new($"build price [{currency}]", IsFigure: true),
            new($"life cost [{currency}]", IsFigure: true),
            new("frost [K·h]", IsFigure: true),
            new("frost hours, worst winter", IsFigure: true),
            new("electric heat [kWh]", IsFigure: true),
        };
        var rows = swaps.Select(s => new Cell[]
        {
            Say.Capital(PlainText.Name(s.Choice)),
            PlainText.Name(s.From),
            PlainText.Name(s.To),
            s.Holds ? "yes" : s.FailedCheck.Length > 0 ? $"no, fails: {PlainText.Name(s.FailedCheck)}" : "no",
            More(Say.Whole, (double)s.BuildPriceMore),
            More(Say.Whole, (double)s.LifeCostMore),
            More(Say.TwoFigures, s.FrostDegreeHoursMoreKh),
            Cell.Figure(Say.TwoFigures(s.WorstFrostHours), s.WorstFrostHours),
            More(Say.TwoFigures, s.StandbyMoreKwh),
        });
        return Markup.Of($"""
            <details{(isOpen ? Markup.Of($" open") : Markup.None)}><summary>{name}: {Finding(swaps, currency)}</summary>
            {PageTable.Of($"{name}, one choice changed", columns, rows, sortable: true)}</details>

            """);
    }

    private static string Finding(IReadOnlyList<Swap> swaps, string currency)
    {
        var (frost, cost) = (swaps[0], swaps.MaxBy(s => Math.Abs(s.LifeCostMore))!);
        var mattersForFrost = Math.Abs(frost.FrostDegreeHoursMoreKh) > 0.5
            ? $"changing {PlainText.Name(frost.Choice)} matters most for frost"
            : "no single change brings back more than a trace of frost";
        return $"{mattersForFrost}; changing {PlainText.Name(cost.Choice)} matters most for cost ({Signed(Say.Whole, (double)cost.LifeCostMore)} {currency})";
    }

    private static Cell More(Func<double, string> say, double value) => Cell.Figure(Signed(say, value), value);

    // What is too small for two figures is no change.
    private static string Signed(Func<double, string> say, double value) => Math.Abs(value) < 0.05 ? "0" : value > 0 ? "+" + say(value) : say(value);
}
