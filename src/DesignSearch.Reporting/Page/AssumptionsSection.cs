using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>Every figure that the model assumes.</summary>
internal static class AssumptionsSection
{
    /// <summary>The section.</summary>
    public static Markup Of(ScenarioRecord scenario)
    {
        var columns = new Column[] { new("assumption"), new("value", IsFigure: true), new("unit"), new("whose figure"), new("where it comes from") };
        var rows = scenario.Assumptions.Select(a => new Cell[]
        {
            PlainText.Name(a.Key), Cell.Figure(Say.Plain(a.Value), a.Value), PlainText.Name(a.Unit), a.IsDefault ? "assumed" : "yours", a.Source,
        });
        return Markup.When(scenario.Assumptions.Count > 0, () => Markup.Of($"""
            <section aria-labelledby="assumptions"><h2 id="assumptions">What was assumed</h2>
            <p>{LeftOf(scenario)}</p>
            {PageTable.Of("Assumptions", columns, rows, sortable: true)}</section>

            """));
    }

    /// <summary>How many were left as assumed, and what to do about it.</summary>
    public static Markup LeftOf(ScenarioRecord scenario)
    {
        var left = scenario.Assumptions.Count(a => a.IsDefault);
        return Markup.Of(
            $"{Say.Whole(left)} of {Say.Whole(scenario.Assumptions.Count)} figures of the model were left as assumed. Whatever you can measure on your own "
                + $"house makes the answer surer: write it under [assumptions] in scenario.toml and search again.");
    }
}
