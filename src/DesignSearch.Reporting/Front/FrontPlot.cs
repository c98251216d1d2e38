using DesignSearch.Reporting.Words;
using ScottPlot;

namespace DesignSearch.Reporting.Front;

/// <summary>The one drawing of cost against cold: picture files and page show it in frames of their own.</summary>
internal sealed class FrontPlot : IDisposable
{
    /// <summary>Colour of the stepped line, of the lines to labels and of beaten layouts in the legend.</summary>
    public const string LineHex = "#595959";

    private const float LetterSize = 14;
    private const double BelowZero = 0.04;
    private const double BeforeZero = 0.012;
    private const int CrowdedFront = 25;
    private const double LegendWidth = 270;
    private const double LegendLine = 26;
    private const double TickWidth = 55;
    private const int GlyphSize = 18;
    private const float PaleSize = 7;
    private const float UsualSize = 10;
    private const float PickedSize = 14;
    private const float CrowdedSize = 8;
    private const double PaleShare = 0.28;

    // What does not hold, where that is shown.
    private const string GreyHex = "#8C8C8C";

    private static readonly Color LineColour = Color.FromHex(LineHex);

    private readonly FrontChart chart;
    private readonly FrontFrame frame;
    private readonly Plot plot;

    /// <summary>Prepares the drawing.</summary>
    /// <param name="chart">What to show.</param>
    /// <param name="frame">How large, and whether it stands alone.</param>
    /// <param name="scale">Dots a unit of the frame.</param>
    public FrontPlot(FrontChart chart, FrontFrame frame, int scale = 1)
    {
        ChartFont.Register();
        (this.chart, this.frame) = (chart, frame);
        plot = new() { ScaleFactor = scale };
        plot.Axes.Left.TickGenerator = Ticks(chart.Up, double.PositiveInfinity);
        plot.Axes.Bottom.TickGenerator = Ticks(chart.Across, frame.FieldWidth);
        plot.Axes.Left.Label.Text = chart.UpTitle;
        plot.Axes.Bottom.Label.Text = chart.AcrossTitle;
        if (frame.StandsAlone)
        {
            plot.Axes.Bottom.Label.Text += "\n" + string.Join('\n', Wrap(chart.Note, 118));
            plot.Title(string.Join('\n', Wrap(chart.Finding, 92)), 17);
        }

        else
        {
            // The page's letters may run wider than the library's own.
            plot.Axes.Left.Label.OffsetX = -5;
        }

        AddLines();
        AddPoints();
        AddLabels();
        if (frame.StandsAlone)
            AddLegend();
        plot.Axes.SetLimits(-BeforeZero, 1, -BelowZero, 1);
        plot.Layout.Fixed(new PixelPadding(frame.Left, frame.Right, frame.Bottom, frame.Top));
        plot.Font.Set(ChartFont.Family);
        plot.Axes.Left.Label.FontSize = LetterSize;
        plot.Axes.Bottom.Label.FontSize = LetterSize - 1;
        plot.Axes.Left.Label.Bold = plot.Axes.Bottom.Label.Bold = plot.Axes.Title.Label.Bold = false;
        plot.Axes.Left.TickLabelStyle.FontSize = plot.Axes.Bottom.TickLabelStyle.FontSize = LetterSize - 1;
    }

    /// <summary>The drawing as SVG, as the chart library writes it.</summary>
    public string Svg() => plot.GetSvgXml(frame.Width, frame.Height);

    /// <summary>The drawing as PNG.</summary>
    public byte[] Png() =>
        plot.GetImageBytes((int)(frame.Width * plot.ScaleFactor), (int)(frame.Height * plot.ScaleFactor), ImageFormat.Png);

    /// <summary>Where a point stands in the drawing, in its units from the left and from the top; asked once it was drawn.</summary>
    public (double X, double Y) PlaceOf(FrontPoint point)
    {
        var pixel = plot.GetPixel(Place(point));
        return (pixel.X, pixel.Y);
    }

    /// <inheritdoc/>
    public void Dispose() => plot.Dispose();

    /// <summary>The sign of a way of turning alone, 18 units square, as SVG as the chart library writes it.</summary>
    /// <param name="mode">The way; null for the sign of beaten layouts.</param>
    public static string Glyph(TurningMode? mode)
    {
        using var plot = new Plot();
        plot.HideGrid();
        plot.Layout.Frameless();
        plot.Axes.SetLimits(-1, 1, -1, 1);
        _ = mode is null
            ? plot.Add.Marker(0, 0, MarkerShape.FilledCircle, PaleSize, LineColour.WithAlpha(PaleShare))
            : plot.Add.Marker(0, 0, mode.Shape, UsualSize, Color.FromHex(mode.Colour));
        return plot.GetSvgXml(GlyphSize, GlyphSize);
    }

    private void AddLines()
    {
        if (chart.LevelLine is { } level)
            AddLine(new(-BeforeZero, chart.Up.Share(level.At)), new(1, chart.Up.Share(level.At)), level.Words, Alignment.LowerLeft);
        if (chart.UprightLine is { } upright)
            AddLine(new(chart.Across.Share(upright.At), -BelowZero), new(chart.Across.Share(upright.At), 1), upright.Words, Alignment.LowerRight);
    }

    private void AddLine(Coordinates from, Coordinates to, string words, Alignment alignment)
    {
        var line = plot.Add.Line(from, to);
        line.LineColor = LineColour;
        line.LinePattern = LinePattern.Dashed;
        var label = plot.Add.Text(words, from);
        label.LabelFontName = ChartFont.Family;
        label.LabelFontSize = LetterSize - 1;
        label.LabelAlignment = alignment;
    }

    private string ColourOf(FrontPoint point) => chart.Reading.ShowsHolding && !point.Holds ? GreyHex : point.Turning.Colour;

    private void AddPoints()
    {
        foreach (var point in Pale())
            plot.Add.Marker(Place(point), point.Turning.Shape, PaleSize, Color.FromHex(ColourOf(point)).WithAlpha(PaleShare));
        if (chart.Front.Count > 0)
            AddFrontLine();
        var standing = chart.Points.Where(p => p.Stands).ToList();
        foreach (var point in standing)
        {
            var size = point.PickName.Length > 0 ? PickedSize : standing.Count > CrowdedFront ? CrowdedSize : UsualSize;
            var marker = plot.Add.Marker(Place(point), point.Turning.Shape, size, Color.FromHex(ColourOf(point)));
            marker.MarkerStyle.OutlineColor = Colors.White;
            marker.MarkerStyle.OutlineWidth = 1;
        }
    }

    private void AddFrontLine()
    {
        var line = plot.Add.ScatterLine(chart.Front.Select(Place).ToArray(), LineColour);
        line.ConnectStyle = ConnectStyle.StepHorizontal;
        line.LineWidth = 1.5f;
    }

    private IEnumerable<FrontPoint> Pale()
    {
        var beaten = chart.Points.Where(p => !p.Stands);
        return chart.Points.Count <= frame.MostPale ? beaten : beaten.OrderBy(p => p.Rank).Take(frame.MostPale);
    }

    private void AddLabels()
    {
        var places = new LabelPlaces(frame.FieldWidth, frame.FieldHeight, LetterSize);
        if (frame.StandsAlone)
            places.Avoid(frame.FieldWidth - LegendWidth, 0, frame.FieldWidth, (chart.Modes.Count + 1) * LegendLine);
        foreach (var (x, y) in chart.Points.Where(p => p.Stands).Select(InField))
            places.Avoid(x - 7, y - 7, x + 7, y + 7);
        foreach (var (from, to) in chart.Front.Zip(chart.Front.Skip(1)).Select(step => (InField(step.First), InField(step.Second))))
        {
            places.Avoid(from.X, from.Y - 1, to.X, from.Y + 1);
            places.Avoid(to.X - 1, from.Y, to.X + 1, to.Y);
        }

        foreach (var point in chart.Points.Where(p => p.PickName.Length > 0 || p.Rank == 0).OrderByDescending(chart.Reading.Across))
            AddLabel(places, point);
    }

    private void AddLabel(LabelPlaces places, FrontPoint point)
    {
        var text = point.Rank == 0 ? "bare house" : point.PickName;
        var lines = frame.StandsAlone ? [text] : places.Lines(text);
        var (x, y) = InField(point);
        var (left, middle, leadX) = places.Place(x, y, lines);
        var below = (0.55 + (0.6 * (lines.Length - 1))) * LetterSize;
        var lead = plot.Add.Line(Place(point), At(leadX, middle + below));
        lead.LineColor = LineColour;
        lead.LineWidth = 0.8f;
        var label = plot.Add.Text(string.Join('\n', lines), At(left, middle));
        label.LabelFontName = ChartFont.Family;
        label.LabelFontSize = LetterSize;
        label.LabelAlignment = Alignment.MiddleLeft;
        label.LabelBackgroundColor = Colors.White.WithAlpha(0.8);
    }

    private void AddLegend()
    {
        foreach (var mode in chart.Modes)
            AddLegendItem(mode.Words, mode.Shape, UsualSize, Color.FromHex(mode.Colour));
        AddLegendItem("pale: beaten by another layout", MarkerShape.FilledCircle, PaleSize, LineColour.WithAlpha(PaleShare));
        plot.Legend.FontName = ChartFont.Family;
        plot.Legend.FontSize = LetterSize - 1;
        plot.Legend.ShadowColor = Colors.Transparent;
        plot.Legend.OutlineColor = Color.FromHex("#BFBFBF");
        plot.ShowLegend(Alignment.UpperRight);
    }

    private void AddLegendItem(string words, MarkerShape shape, float size, Color colour) =>
        plot.Legend.ManualItems.Add(new() { LabelText = words, MarkerShape = shape, MarkerSize = size, MarkerColor = colour });

    private Coordinates Place(FrontPoint point) => new(chart.Across.Share(chart.Reading.Across(point)), chart.Up.Share(chart.Reading.Up(point)));

    private (double X, double Y) InField(FrontPoint point) => (
        (chart.Across.Share(chart.Reading.Across(point)) + BeforeZero) / (1 + BeforeZero) * frame.FieldWidth,
        (1 - chart.Up.Share(chart.Reading.Up(point))) / (1 + BelowZero) * frame.FieldHeight);

    private Coordinates At(double x, double y) =>
        new((x / frame.FieldWidth * (1 + BeforeZero)) - BeforeZero, 1 - (y / frame.FieldHeight * (1 + BelowZero)));

    // With room for each label, figures of five digits do not touch.
    private static ScottPlot.TickGenerators.NumericManual Ticks(ChartScale scale, double room)
    {
        var values = scale.Ticks();
        var every = Math.Max(1, (int)Math.Ceiling(values.Count * TickWidth / room));
        var written = values.Where((_, i) => i % every == 0).ToList();
        return new([.. written.Select(scale.Share)], [.. written.Select(Say.Plain)]);
    }

    // Lines of about the same length, so that no word is left over alone.
    private static IEnumerable<string> Wrap(string text, int letters)
    {
        var lines = (int)Math.Ceiling(text.Length / (double)letters);
        var room = Math.Max(1, text.Length / lines);
        var line = "";
        foreach (var word in text.Split(' '))
        {
            if (line.Length + (word.Length / 2) > room && line.Length > 0)
            {
                yield return line;
                line = "";
            }

            line += line.Length == 0 ? word : " " + word;
        }

        yield return line;
    }
}
