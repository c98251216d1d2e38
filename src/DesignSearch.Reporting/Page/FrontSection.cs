using DesignSearch.Reporting.Front;
using DesignSearch.Reporting.Html;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>Cost against cold in two readings: charts to click and to walk by keyboard.</summary>
internal static class FrontSection
{
    private static readonly Markup Spreadsheets = Markup.Of(
        $"Every ranked layout with full figures, for a spreadsheet: <a href=\"ranking.csv\">ranking.csv</a>, "
            + $"those that no other beats on both: <a href=\"front.csv\">front.csv</a>, and as a table "
            + $"<a href=\"{FiguresPage.Name}#front\">{FiguresPage.Name}</a>.");

    private static readonly Markup Pictures = Markup.Of(
        $"The chart as a picture: <a href=\"pareto.png\">pareto.png</a>, <a href=\"pareto.svg\">pareto.svg</a>.");

    /// <summary>The section.</summary>
    /// <param name="run">The run.</param>
    /// <param name="detailed">Ranks of the layouts that stand on the page in full.</param>
    public static Markup Of(StoredRun run, IReadOnlySet<int> detailed)
    {
        var (coldest, frost) = (One(run, FrontReading.ColdestHour, detailed, "cold"), One(run, FrontReading.Frost, detailed, "frost"));
        return Markup.Of($"""
            <section aria-labelledby="front"><h2 id="front">Cost against frost</h2>
            <div class="readings">
            <input type="radio" name="reading" id="read-cold" checked><label for="read-cold">{FrontReading.ColdestHour.Words}</label>
            <input type="radio" name="reading" id="read-frost"><label for="read-frost">{FrontReading.Frost.Words}</label>
            {coldest}{frost}</div>
            <p class="screen">{Spreadsheets} {Pictures}</p>
            </section>

            """);
    }

    private static Markup One(StoredRun run, FrontReading reading, IReadOnlySet<int> detailed, string name)
    {
        var chart = FrontChart.Of(run, reading);
        Markup Drawn(FrontFrame frame, string place) =>
            Markup.Of($"""<div class="{place}">{PageChart.Of(chart, detailed, frame, $"{name}-{place}")}</div>""");
        Markup[] drawn = [Drawn(FrontFrame.Wide, "wide"), Drawn(FrontFrame.Narrow, "narrow")];
        return Markup.Of($"""
            <figure class="reading {name}"><figcaption>{chart.Finding} {chart.Note}
            <span class="screen">Choose a point to read about its layout; the arrow keys walk from point to point.</span></figcaption>
            {Legend(chart)}{drawn}<p class="readout" aria-hidden="true"></p></figure>

            """);
    }

    private static Markup Legend(FrontChart chart) => Markup.Of($"""
        <ul class="legend">{chart.Modes.Select(m => Entry(m, m.Words))}{Entry(null, "pale: beaten by another layout")}</ul>

        """);

    private static Markup Entry(TurningMode? mode, string words) => Markup.Of($"<li>{PageChart.Glyph(mode)}{words}</li>");
}
