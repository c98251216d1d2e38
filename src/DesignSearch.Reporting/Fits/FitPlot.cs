using System.Globalization;
using System.Text;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Fits;

/// <summary>A field with two axes that lines, bands, bars and dots are put on, in the page's own colours.</summary>
internal sealed class FitPlot
{
    private const double Left = 52, Right = 14, Head = 26, Foot = 34;
    private static readonly double[] Steps = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000];

    private readonly double width, height, fromX, toX, fromY, toY;
    private readonly StringBuilder body = new();

    /// <summary>An empty field.</summary>
    public FitPlot(double width, double height, (double From, double To) x, (double From, double To) y, string titleY)
    {
        (this.width, this.height, fromX, toX, fromY, toY) = (width, height, x.From, Math.Max(x.To, x.From + 1e-6), y.From, Math.Max(y.To, y.From + 1e-6));
        var step = Steps.FirstOrDefault(s => (toY - fromY) / s <= 8, Steps[^1]);
        for (var v = step * Math.Ceiling(fromY / step); v <= toY + 1e-9 && titleY.Length > 0; v += step)
        {
            Add(Markup.Of($"""<path class="grid" d="M{Left} {Y(v)}H{width - Right}"/>"""));
            Add(Markup.Of($"""<text x="{Left - 6}" y="{Y(v) + 4}" text-anchor="end">{Say.Plain(Math.Round(v, 6))}</text>"""));
        }

        Add(Markup.Of($"""<text class="name" x="{Left}" y="14">{titleY}</text>"""));
    }

    /// <summary>Ends of an axis that holds all figures, with a margin.</summary>
    public static (double From, double To) Around(IEnumerable<double> values, double margin)
    {
        double[] known = [.. values.Where(double.IsFinite)];
        return known.Length == 0 ? (0, 1) : (known.Min() - margin, known.Max() + margin);
    }

    /// <summary>Words along the lower axis.</summary>
    public void TickX(double x, string words) =>
        Add(Markup.Of($"""<path class="day" d="M{X(x)} {Head}V{height - Foot}"/><text x="{X(x)}" y="{height - Foot + 15}" text-anchor="middle">{words}</text>"""));

    /// <summary>What the lower axis is.</summary>
    public void NameX(string words) => Add(Markup.Of($"""<text x="{(Left + width - Right) / 2}" y="{height - 4}" text-anchor="middle">{words}</text>"""));

    /// <summary>Round figures along the lower axis.</summary>
    public void Figures()
    {
        var step = Steps.FirstOrDefault(s => (toX - fromX) / s <= 10, Steps[^1]);
        for (var v = step * Math.Ceiling(fromX / step); v <= toX + 1e-9; v += step)
            TickX(v, Say.Plain(Math.Round(v, 6)));
    }

    /// <summary>A line; it breaks where a figure is not known.</summary>
    public void Line(string kind, IEnumerable<(double X, double Y)> points)
    {
        var path = new StringBuilder();
        var broken = true;
        foreach (var (x, y) in points)
        {
            if (double.IsFinite(y))
                path.Append(CultureInfo.InvariantCulture, $"{(broken ? 'M' : 'L')}{X(x):0.#} {Y(y):0.#}");
            broken = !double.IsFinite(y);
        }

        Add(Markup.Of($"""<path class="{kind}" d="{new Markup(path.ToString())}"/>"""));
    }

    /// <summary>A filled band between two lines.</summary>
    public void Band(IReadOnlyList<(double X, double Low, double High)> points)
    {
        var path = string.Join('L', points.Select(p => FormattableString.Invariant($"{X(p.X):0.#} {Y(p.High):0.#}"))
            .Concat(points.Reverse().Select(p => FormattableString.Invariant($"{X(p.X):0.#} {Y(p.Low):0.#}"))));
        Add(Markup.Of($"""<path class="sun" d="M{new Markup(path)}Z"/>"""));
    }

    /// <summary>A dot; an open one for what was left out.</summary>
    public void Dot(double x, double y, bool isOpen, string spoken)
    {
        var kind = isOpen ? "m0" : "m2";
        Add(Markup.Of($"""<circle class="{kind}" cx="{X(x)}" cy="{Y(y)}" r="{(isOpen ? 3.5 : 5)}"><title>{spoken}</title></circle>"""));
    }

    /// <summary>A bar along the lower axis with a dot in it.</summary>
    public void Bar(double low, double middle, double high, double y, bool isPrior)
    {
        Line(isPrior ? "bare" : "inside", [(low, y), (high, y)]);
        Dot(middle, y, isPrior, "");
    }

    /// <summary>Words in the field.</summary>
    public void Words(string text, double x, double y, bool atEnd = false) =>
        Add(Markup.Of($"""<text x="{X(x)}" y="{Y(y) + 4}" text-anchor="{(atEnd ? "end" : "start")}">{text}</text>"""));

    /// <summary>A sample of each line with its word, from the right.</summary>
    public void Key(params (string Kind, string Word)[] entries)
    {
        var right = width - Right;
        foreach (var (kind, word) in entries.Reverse())
        {
            var wide = 6.6 * word.Length;
            Add(Markup.Of($"""<path class="{kind}" d="M{right - wide - 26} 10h20"/><text x="{right - wide}" y="14">{word}</text>"""));
            right -= wide + 40;
        }
    }

    /// <summary>The drawing.</summary>
    /// <param name="name">Start of the identifiers in it.</param>
    /// <param name="finding">What it shows.</param>
    public Markup Finish(string name, string finding) => Markup.Of($"""
        <svg class="week" viewBox="0 0 {width} {height}" role="img" aria-labelledby="{name}-title">
        <title id="{name}-title">{finding}</title>
        {new Markup(body.ToString())}</svg>

        """);

    private double X(double x) => Left + ((x - fromX) / (toX - fromX) * (width - Left - Right));

    private double Y(double y) => height - Foot - ((y - fromY) / (toY - fromY) * (height - Head - Foot));

    private void Add(Markup markup) => body.Append(markup.Text).Append('\n');
}
