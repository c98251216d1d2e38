using System.Globalization;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>How the picks stood winters that they were not chosen on.</summary>
internal static class UnseenSection
{
    /// <summary>The section.</summary>
    public static Markup Of(StoredRun run)
    {
        var picks = PickNames.Of(run.Judgement)
            .Select(
                p => (Name: PickNames.Heading(p.Names), p.Layout, run.Weighing.Picks.FirstOrDefault(w => w.Rank == p.Layout.Rank)?.Unseen))
            .Where(p => p.Unseen is not null)
            .ToList();
        var columns = new Column[]
        {
            new("pick"),
            new("held", IsFigure: true),
            new("share in the long run", IsFigure: true),
            new("worst night"),
            new("most frost hours in one", IsFigure: true),
            new("electric heat, least to most (mean)", IsFigure: true),
            new("electric heat, chosen winters", IsFigure: true),
            new("lowest air, hard winter", IsFigure: true),
        };
        var rows = picks.Select(p => new Cell[]
        {
            p.Name,
            Cell.Figure($"{Say.Whole(p.Unseen!.Held)} of {Say.Whole(p.Unseen.Count)}", p.Unseen.Held),
            $"{Say.Percent(p.Unseen.HeldAtLeast)} to {Say.Percent(p.Unseen.HeldAtMost)}",
            $"{Say.Air(p.Unseen.LowestAirC, run.Scenario.FrostLimitC)} {p.Layout.Plants?.Where ?? "inside"} at "
                + $"{Say.Celsius(p.Unseen.OutsideThenC)} outside, "
                + $"{p.Unseen.WorstHour.ToString("d MMMM, HH:mm", CultureInfo.InvariantCulture)}",
            Cell.Figure(Say.TwoFigures(p.Unseen.WorstFrostHours), p.Unseen.WorstFrostHours),
            $"{Say.TwoFigures(p.Unseen.LeastStandbyKwh)} to {Say.Kwh(p.Unseen.MostStandbyKwh)} ({Say.TwoFigures(p.Unseen.MeanStandbyKwh)})",
            Say.Kwh(p.Unseen.ChosenStandbyKwh),
            Hard(p.Layout, run),
        });
        return Markup.When(picks.Count > 0, () => Markup.Of($"""
            <section aria-labelledby="unseen"><h2 id="unseen">On winters it was not chosen on</h2>
            <p>{run.Weighing.UnseenFrom} {Bare(picks[0].Unseen!.BareHeld)}</p>
            <ul>{picks.Select(p => Markup.Of($"<li>{p.Name}: {PlainText.Sentence(p.Unseen!.Sentence)} {PlainText.Sentence(p.Unseen.Flattery)}</li>"))}</ul>
            {PageTable.Of("Unseen winters", columns, rows)}</section>

            """));
    }

    private static Markup Bare(int held) => Markup.Of(
        $"The bare house held in {Say.Whole(held)} of them. The hard winter stands beside them in the last column, not among them.");

    private static Cell Hard(JudgedLayout layout, StoredRun run)
    {
        var hard = run.Scenario.Winters.Where(w => w.Kind == "hard").Select(w => layout.Winters.FirstOrDefault(o => o.Winter == w.Name)).OfType<WinterOutcome>().ToList();
        return hard.Count == 0 ? "none" : PlantAir.Of(hard.Min(w => w.Outcome.LowestAirC), run.Scenario.FrostLimitC, layout.Plants);
    }
}
