using DesignSearch.Reporting.Front;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Page;

/// <summary>A chart of cost against cold on the page: the library's drawing, and a link over each point that stands out.</summary>
internal static class PageChart
{
    // Wider than the largest point, so that a ring around it is seen and a finger finds it.
    private const int Reach = 9;

    /// <summary>The drawing.</summary>
    /// <param name="chart">What to show.</param>
    /// <param name="detailed">Ranks that can be linked to.</param>
    /// <param name="frame">How large.</param>
    /// <param name="name">Start of the identifiers in it.</param>
    public static Markup Of(FrontChart chart, IReadOnlySet<int> detailed, FrontFrame frame, string name)
    {
        using var plot = new FrontPlot(chart, frame);
        var drawing = PageDrawing.Of(plot.Svg());
        return Markup.Of($"""
            <svg class="chart" viewBox="0 0 {frame.Width} {frame.Height}" role="group" aria-labelledby="{name}-title {name}-text">
            <title id="{name}-title">{chart.Finding}</title><desc id="{name}-text">{chart.InWords}</desc>
            {drawing}
            {chart.Points.Where(p => p.Stands).Select(p => Target(p, chart.Reading, detailed.Contains(p.Rank), plot.PlaceOf(p)))}
            </svg>

            """);
    }

    /// <summary>The sign of a way of turning, for the legend.</summary>
    /// <param name="mode">The way; null for the sign of beaten layouts.</param>
    public static Markup Glyph(TurningMode? mode)
    {
        var drawing = PageDrawing.Of(FrontPlot.Glyph(mode));
        return Markup.Of($"""<svg width="18" height="18" viewBox="0 0 18 18" aria-hidden="true">{drawing}</svg>""");
    }

    private static Markup Target(FrontPoint point, FrontReading reading, bool linked, (double X, double Y) place)
    {
        var named = point.Rank == 0 ? "Bare house" : $"Layout {Say.Whole(point.Rank)}: {PlainText.Name(point.Title)}";
        var picked = point.PickName.Length > 0 ? $" ({point.PickName})" : "";
        var figures = reading.ShowsHolding
            ? $"{Say.Whole(point.BuildPrice)} to build, {Say.Celsius(point.LowestAirC)} at the coldest{(point.Holds ? "" : ", does not hold")}"
            : $"{Say.Whole(point.LifeCost)} over the years, {Say.DegreeHours(point.FrostKh)}";
        var spoken = $"{named}{picked}, {figures}";
        var ring = Markup.Of($"""<circle class="ring" cx="{place.X}" cy="{place.Y}" r="{Reach}"/>""");
        return linked
            ? Markup.Of($"""<a href="#layout-{point.Rank}" aria-label="{spoken}"><title>{spoken}</title>{ring}</a>{"\n"}""")
            : Markup.Of($"""<g><title>{spoken}</title>{ring}</g>{"\n"}""");
    }
}
