using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Reporting.Front;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Page;

/// <summary>Draws the chart of life cost against frost as the page's own drawing, each point of the front a link to its layout.</summary>
internal static class PageChart
{
    private const double Left = 70;
    private const double Right = 14;
    private const double Top = 16;
    private const double Bottom = 50;
    private const double LetterSize = 14;
    private const int MostPalePoints = 500;

    /// <summary>The drawing.</summary>
    /// <param name="chart">What to show.</param>
    /// <param name="detailed">Ranks that can be linked to.</param>
    /// <param name="width">Width in units of about a pixel.</param>
    /// <param name="height">Height in the same unit.</param>
    /// <param name="name">Start of the identifiers in it.</param>
    public static Markup Of(FrontChart chart, IReadOnlySet<int> detailed, double width, double height, string name)
    {
        var (fieldWidth, fieldHeight) = (width - Left - Right, height - Top - Bottom);
        var pale = chart.Points.Where(p => !Stands(p)).OrderBy(p => p.Rank).Take(MostPalePoints);
        return Markup.Of($"""
            <svg class="chart" viewBox="0 0 {width} {height}" role="group" aria-labelledby="{name}-title {name}-text">
            <title id="{name}-title">{chart.Finding}</title><desc id="{name}-text">{Say.Capital(chart.UpTitle)} against {chart.AcrossTitle}. {chart.Note}</desc>
            {Axes()}
            {pale.Select(p => Markup.Of($"""<path class="pale" transform="translate({X(p)} {Y(p)}) scale(.6)" d="{p.Turning.Path}"/>"""))}
            <path class="step" d="{Steps()}"/>
            {Labels()}
            {chart.Points.Where(Stands).Select(Point)}
            </svg>

            """);

        double X(FrontPoint point) => Left + (chart.Across.Share(point.LifeCost) * fieldWidth);
        double Y(FrontPoint point) => Top + ((1 - chart.Up.Share(point.FrostKh)) * fieldHeight);

        Markup Axes()
        {
            var up = chart.Up.Ticks().Select(v => (Value: v, At: Top + ((1 - chart.Up.Share(v)) * fieldHeight)));
            var across = Thinned(chart.Across.Ticks(), fieldWidth).Select(v => (Value: v, At: Left + (chart.Across.Share(v) * fieldWidth)));
            return Markup.Of($"""
                <g class="axis" aria-hidden="true">{up.Select(t => Markup.Of($"""<path d="M{Left} {t.At}H{width - Right}"/><text x="{Left - 6}" y="{t.At + 4}" text-anchor="end">{Say.Plain(t.Value)}</text>"""))}
                {across.Select(t => Markup.Of($"""<path d="M{t.At} {height - Bottom}v5"/><text x="{t.At}" y="{height - Bottom + 19}" text-anchor="middle">{Say.Plain(t.Value)}</text>"""))}
                <text x="{Left + (fieldWidth / 2)}" y="{height - 8}" text-anchor="middle">{chart.AcrossTitle}</text><text transform="translate(13 {Top + (fieldHeight / 2)}) rotate(-90)" text-anchor="middle">{chart.UpTitle}</text></g>
                """);
        }

        string Steps()
        {
            var path = new System.Text.StringBuilder();
            foreach (var point in chart.Front)
                path.Append(System.Globalization.CultureInfo.InvariantCulture, $"{(path.Length == 0 ? $"M{X(point):0.##} {Y(point):0.##}" : $"H{X(point):0.##}V{Y(point):0.##}")}");
            return path.ToString();
        }

        Markup Labels()
        {
            var places = new LabelPlaces(fieldWidth, fieldHeight, LetterSize);
            foreach (var point in chart.Points.Where(Stands))
                places.Avoid(X(point) - Left - 7, Y(point) - Top - 7, X(point) - Left + 7, Y(point) - Top + 7);
            foreach (var (from, to) in chart.Front.Zip(chart.Front.Skip(1)))
            {
                places.Avoid(X(from) - Left, Y(from) - Top - 1, X(to) - Left, Y(from) - Top + 1);
                places.Avoid(X(to) - Left - 1, Y(from) - Top, X(to) - Left + 1, Y(to) - Top);
            }

            return Markup.All(chart.Points.Where(p => p.PickName.Length > 0 || p.Rank == 0).OrderByDescending(p => p.LifeCost).Select(p =>
            {
                var lines = places.Lines(p.Rank == 0 ? "bare house" : p.PickName);
                var (left, middle, leadX) = places.Place(X(p) - Left, Y(p) - Top, lines);
                var first = Top + middle + 4 - (7.5 * (lines.Length - 1));
                var spans = lines.Select((l, i) => Markup.Of($"""<tspan x="{Left + left}" y="{first + (15 * i)}">{l}</tspan>"""));
                return Markup.Of($"""<path class="lead" d="M{X(p)} {Y(p)}L{Left + leadX} {first + 3 + (15 * (lines.Length - 1))}"/><text class="label">{spans}</text>""");
            }));
        }

        Markup Point(FrontPoint point)
        {
            var spoken = $"{(point.Rank == 0 ? "Bare house" : $"Layout {Say.Whole(point.Rank)}: {PlainText.Name(point.Title)}")}{(point.PickName.Length > 0 ? $" ({point.PickName})" : "")}, life cost {Say.Whole(point.LifeCost)}, {Say.DegreeHours(point.FrostKh)}";
            var shape = Markup.Of($"""<path class="m{point.Turning.Order}" transform="translate({X(point)} {Y(point)}){(point.PickName.Length > 0 ? " scale(1.3)" : "")}" d="{point.Turning.Path}"/>""");
            return detailed.Contains(point.Rank)
                ? Markup.Of($"""<a href="#layout-{point.Rank}" aria-label="{spoken}"><title>{spoken}</title>{shape}</a>{"\n"}""")
                : Markup.Of($"""<g><title>{spoken}</title>{shape}</g>{"\n"}""");
        }
    }

    private static bool Stands(FrontPoint point) => point.OnFront || point.PickName.Length > 0 || point.Rank == 0;

    // At 55 units a label, figures of five digits do not touch.
    private static IEnumerable<double> Thinned(IReadOnlyList<double> ticks, double width)
    {
        var every = (int)Math.Ceiling(ticks.Count * 55 / width);
        return ticks.Where((_, i) => i % every == 0);
    }
}
