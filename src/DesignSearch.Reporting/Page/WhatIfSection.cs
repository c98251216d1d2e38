using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>What the picks would come to in weather harder than planned for, in a night when something fails, and with the doubts that chill them most.</summary>
internal static class WhatIfSection
{
    private const int MostDoubts = 2;

    /// <summary>The section.</summary>
    public static Markup Of(StoredRun run)
    {
        var picks = PickNames.Of(run.Judgement)
            .Select(p => (p.Names, p.Layout, run.Weighing.Picks.FirstOrDefault(w => w.Rank == p.Layout.Rank)?.WhatIfs, Doubts: Doubts(run, p.Layout)))
            .Where(p => p.WhatIfs is { Count: > 0 })
            .ToList();
        return Markup.When(picks.Count > 0, () =>
        {
            var limit = run.Scenario.FrostLimitC;
            Column[] columns =
            [
                new("what if"),
                new("lowest outside", IsFigure: true),
                .. picks.SelectMany(p => new Column[]
                {
                    new($"{Say.Joined(p.Names)}: lowest {p.Layout.Plants?.Where ?? "inside"}", IsFigure: true),
                    new("frost hours", IsFigure: true),
                }),
            ];
            var outside = picks[0].WhatIfs![0].OutsideC;
            var weather = picks.SelectMany(p => p.WhatIfs!).DistinctBy(w => w.What)
                .Select(w => Row(w.What, w.OutsideC, picks.Select(p => p.WhatIfs!.FirstOrDefault(o => o.What == w.What))));
            var doubts = picks.SelectMany(p => p.Doubts).DistinctBy(d => d.What)
                .Select(d => Row(d.What, outside, picks.Select(p => Found(run, p.Layout, d.What, outside))));
            return Markup.Of($"""
                <section aria-labelledby="what-if"><h2 id="what-if">What if it gets worse</h2>
                <p>{Finding(picks[0].Names, picks[0].WhatIfs!, limit)}{Mishaps(picks[0].WhatIfs!, limit)}</p>
                {PageTable.Of("Harder than planned for", columns, weather.Concat(doubts))}</section>

                """);

            Cell[] Row(string what, double lowestC, IEnumerable<WhatIf?> each) =>
            [
                Say.Capital(PlainText.Sentence(what)),
                Cell.Figure(Say.Celsius(lowestC), lowestC),
                .. each.SelectMany(w => w is null
                    ? new Cell[] { "–", "–" }
                    : [Cell.Figure(Say.Air(w.LowestAirC, limit), w.LowestAirC), Cell.Figure(Say.TwoFigures(w.FrostHours), w.FrostHours)]),
            ];
        });
    }

    // What the builder most wants to know, in figures of the table: how cold it may get.
    private static string Finding(IReadOnlyList<string> names, IReadOnlyList<WhatIf> whatIfs, double limitC)
    {
        var name = PickNames.Heading(names);
        var colder = whatIfs.Where(w => w.OutsideC < whatIfs[0].OutsideC).ToList();
        var kept = whatIfs.Take(1).Concat(colder).TakeWhile(w => w.FrostHours == 0).LastOrDefault();
        var lost = whatIfs.Take(1).Concat(colder).FirstOrDefault(w => w.FrostHours > 0);
        return (kept, lost) switch
        {
            ({ } k, null) => $"{name}: down to {Say.Celsius(k.OutsideC)} outside it keeps {Say.Plain(limitC)}\u00A0°C; colder was not tried.",
            ({ } k, { } l) => $"{name}: down to {Say.Celsius(k.OutsideC)} outside it keeps {Say.Plain(limitC)}\u00A0°C; "
                + $"at {Say.Celsius(l.OutsideC)} outside it would be {Say.Air(l.LowestAirC, limitC)}.",
            (_, { } l) => $"{name}: at {Say.Celsius(l.OutsideC)} outside it is {Say.Air(l.LowestAirC, limitC)}, below the limit already.",
            _ => "",
        };
    }

    private static string Mishaps(IReadOnlyList<WhatIf> whatIfs, double limitC) => string.Concat(whatIfs.Where(w => w.Mishap != Mishap.None).Select(w =>
        $" If {PlainText.Sentence(w.What)}, it {(w.FrostHours == 0 ? "keeps the limit" : "falls")}: {Say.Air(w.LowestAirC, limitC)} at the lowest."));

    private static IEnumerable<Doubt> Doubts(StoredRun run, JudgedLayout layout)
    {
        var all = run.Weighing.Picks.FirstOrDefault(w => w.Rank == layout.Rank)?.Doubts ?? [];
        return all.Where(d => d.LowestAirC < layout.LowestAirC).OrderBy(d => d.LowestAirC).Take(MostDoubts);
    }

    private static WhatIf? Found(StoredRun run, JudgedLayout layout, string what, double outsideC) =>
        run.Weighing.Picks.FirstOrDefault(w => w.Rank == layout.Rank)?.Doubts.FirstOrDefault(d => d.What == what) is { } doubt
            ? new(what, outsideC, doubt.LowestAirC, doubt.WorstFrostHours, Mishap.None)
            : null;
}
