using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>Builds <c>figures.html</c>: what an engineer wants to check, and a builder need not read.</summary>
internal static class FiguresPage
{
    /// <summary>Its name in the run's folder.</summary>
    public const string Name = "figures.html";

    /// <summary>The page.</summary>
    /// <param name="run">The run.</param>
    public static string Of(StoredRun run) => PageShell.Of(
        $"{PlainText.Name(run.Scenario.Name)}: the figures behind the answer", "Skip to the tables", run.ProgramVersion, Markup.Of($"""
            <header><p class="place">{PlainText.Name(run.Scenario.Name)} · {PlainText.Name(run.Scenario.PlaceName)}</p>
            <h1>The figures behind the answer</h1>
            <p>What was assumed, how it was searched, and every layout that none of the others beats. The answer itself is
            <a href="report.html">the report</a>.</p></header>
            <main id="content" tabindex="-1">
            {AssumptionsSection.Of(run.Scenario)}{FrontTable.Of(run)}{MethodSection.Tables(run)}</main>
            """));
}
