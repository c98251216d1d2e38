using DesignSearch.Runs;

namespace DesignSearch.Reporting;

/// <summary>How sure the answer is: what is not known, and every figure that was assumed.</summary>
internal static class DoubtsSection
{
    /// <summary>The section.</summary>
    public static Markup Of(StoredRun run) => Markup.Of($"""
        <section aria-labelledby="doubts"><h2 id="doubts">How sure is this?</h2>
        {Markup.When(run.Judgement.Doubts.Count > 0, () => Markup.Of($"<ul>{run.Judgement.Doubts.Select(d => Markup.Of($"<li>{d}</li>"))}</ul>\n"))}{Assumptions(run.Scenario)}</section>

        """);

    private static Markup Assumptions(ScenarioRecord scenario)
    {
        var left = scenario.Assumptions.Count(a => a.IsDefault);
        var columns = new Column[] { new("assumption"), new("value", IsFigure: true), new("unit"), new("whose figure"), new("where it comes from") };
        var rows = scenario.Assumptions.Select(a => new Cell[]
        {
            PlainText.Name(a.Key), Cell.Figure(Say.Plain(a.Value), a.Value), PlainText.Cut(a.Unit, 24), a.IsDefault ? "assumed" : "yours", a.Source,
        });
        return Markup.When(scenario.Assumptions.Count > 0, () => Markup.Of($"""
            <p>{Say.Whole(left)} of {Say.Whole(scenario.Assumptions.Count)} figures below were left as assumed. Whatever you can measure on your own house makes the answer surer: write it under [assumptions] in scenario.toml and search again.</p>
            {PageTable.Of("Assumptions", columns, rows, sortable: true)}
            """));
    }
}
