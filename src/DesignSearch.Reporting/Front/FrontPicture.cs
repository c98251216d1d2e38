using DesignSearch.Climate;
using DesignSearch.Reporting.Words;
using ScottPlot;

namespace DesignSearch.Reporting.Front;

/// <summary>Draws the chart of life cost against frost as files to share: <c>pareto.png</c> and <c>pareto.svg</c>.</summary>
internal static class FrontPicture
{
    /// <summary>Version written into both files.</summary>
    public const string Format = "DesignSearch pareto chart, format 1";

    private const int Width = 960;
    private const int Height = 640;
    private const int LeftEdge = 84;
    private const int RightEdge = 24;
    private const int TopEdge = 70;
    private const int BottomEdge = 92;
    private const float LetterSize = 14;
    private const double BelowZero = 0.04;
    private const double BeforeZero = 0.012;
    private const int CrowdedFront = 25;
    private const double LegendWidth = 270;
    private const double LegendLine = 26;

    private static double FieldWidth => Width - LeftEdge - RightEdge;

    private static double FieldHeight => Height - TopEdge - BottomEdge;

    /// <summary>The chart as a PNG file, two pixels a point, the same bytes for the same run.</summary>
    public static byte[] Png(FrontChart chart)
    {
        using var plot = Draw(chart, scale: 2);
        return PngNote.Add(plot.GetImageBytes(Width * 2, Height * 2, ImageFormat.Png), Format);
    }

    /// <summary>The chart as an SVG file, the same bytes for the same run.</summary>
    public static string Svg(FrontChart chart)
    {
        using var plot = Draw(chart, scale: 1);
        return SvgFile.Clean(plot.GetSvgXml(Width, Height), "pareto", chart.Finding, $"{Say.Capital(chart.UpTitle)} against {chart.AcrossTitle}. {chart.Note}", Format);
    }

    private static Plot Draw(FrontChart chart, int scale)
    {
        ChartFont.Register();
        var plot = new Plot { ScaleFactor = scale };
        plot.Axes.Left.TickGenerator = Ticks(chart.Up);
        plot.Axes.Bottom.TickGenerator = Ticks(chart.Across);
        plot.Axes.Left.Label.Text = chart.UpTitle;
        plot.Axes.Bottom.Label.Text = chart.AcrossTitle + "\n" + string.Join('\n', Wrap(chart.Note, 118));
        plot.Title(string.Join('\n', Wrap(chart.Finding, 92)), 17);
        AddPoints(plot, chart);
        AddLabels(plot, chart);
        AddLegend(plot, chart);
        plot.Axes.SetLimits(-BeforeZero, 1, -BelowZero, 1);
        plot.Layout.Fixed(new PixelPadding(LeftEdge, RightEdge, BottomEdge, TopEdge));
        plot.Font.Set(ChartFont.Family);
        plot.Axes.Left.Label.FontSize = LetterSize;
        plot.Axes.Bottom.Label.FontSize = LetterSize - 1;
        plot.Axes.Left.Label.Bold = plot.Axes.Bottom.Label.Bold = plot.Axes.Title.Label.Bold = false;
        plot.Axes.Left.TickLabelStyle.FontSize = plot.Axes.Bottom.TickLabelStyle.FontSize = LetterSize - 1;
        return plot;
    }

    private static void AddPoints(Plot plot, FrontChart chart)
    {
        foreach (var point in chart.Points.Where(p => !p.OnFront && p.PickName.Length == 0))
            plot.Add.Marker(Place(chart, point), point.Turning.Shape, 7, Color.FromHex(point.Turning.Colour).WithAlpha(0.28));
        var line = plot.Add.ScatterLine(chart.Front.Select(p => Place(chart, p)).ToArray(), Color.FromHex("#595959"));
        line.ConnectStyle = ConnectStyle.StepHorizontal;
        line.LineWidth = 1.5f;
        foreach (var point in chart.Points.Where(p => p.OnFront || p.PickName.Length > 0))
        {
            var marker = plot.Add.Marker(Place(chart, point), point.Turning.Shape, point.PickName.Length > 0 ? 14 : chart.Front.Count > CrowdedFront ? 8 : 10, Color.FromHex(point.Turning.Colour));
            marker.MarkerStyle.OutlineColor = Colors.White;
            marker.MarkerStyle.OutlineWidth = 1;
        }
    }

    private static void AddLabels(Plot plot, FrontChart chart)
    {
        var places = new LabelPlaces(FieldWidth, FieldHeight, LetterSize);
        places.Avoid(FieldWidth - LegendWidth, 0, FieldWidth, (chart.Modes.Count + 1) * LegendLine);
        foreach (var point in chart.Points.Where(p => p.OnFront || p.PickName.Length > 0))
            places.Avoid(PixelX(chart, point) - 7, PixelY(chart, point) - 7, PixelX(chart, point) + 7, PixelY(chart, point) + 7);
        foreach (var (from, to) in chart.Front.Zip(chart.Front.Skip(1)))
        {
            places.Avoid(PixelX(chart, from), PixelY(chart, from) - 1, PixelX(chart, to), PixelY(chart, from) + 1);
            places.Avoid(PixelX(chart, to) - 1, PixelY(chart, from), PixelX(chart, to) + 1, PixelY(chart, to));
        }

        foreach (var point in chart.Points.Where(p => p.PickName.Length > 0 || p.Rank == 0).OrderByDescending(p => p.LifeCost))
        {
            var text = point.Rank == 0 ? "bare house" : point.PickName;
            var (left, middle, leadX) = places.Place(PixelX(chart, point), PixelY(chart, point), text);
            var anchor = At(left, middle);
            var lead = plot.Add.Line(Place(chart, point), At(leadX, middle + (0.55 * LetterSize)));
            lead.LineColor = Color.FromHex("#595959");
            lead.LineWidth = 0.8f;
            var label = plot.Add.Text(text, anchor);
            label.LabelFontName = ChartFont.Family;
            label.LabelFontSize = LetterSize;
            label.LabelAlignment = Alignment.MiddleLeft;
            label.LabelBackgroundColor = Colors.White.WithAlpha(0.8);
        }
    }

    private static void AddLegend(Plot plot, FrontChart chart)
    {
        foreach (var mode in chart.Modes)
            plot.Legend.ManualItems.Add(new() { LabelText = mode.Words, MarkerShape = mode.Shape, MarkerSize = 10, MarkerColor = Color.FromHex(mode.Colour) });
        plot.Legend.ManualItems.Add(new() { LabelText = "pale: beaten by another layout", MarkerShape = MarkerShape.FilledCircle, MarkerSize = 7, MarkerColor = Color.FromHex("#595959").WithAlpha(0.28) });
        plot.Legend.FontName = ChartFont.Family;
        plot.Legend.FontSize = LetterSize - 1;
        plot.Legend.ShadowColor = Colors.Transparent;
        plot.Legend.OutlineColor = Color.FromHex("#BFBFBF");
        plot.ShowLegend(Alignment.UpperRight);
    }

    private static Coordinates Place(FrontChart chart, FrontPoint point) => new(chart.Across.Share(point.LifeCost), chart.Up.Share(point.FrostKh));

    private static double PixelX(FrontChart chart, FrontPoint point) => (chart.Across.Share(point.LifeCost) + BeforeZero) / (1 + BeforeZero) * FieldWidth;

    private static double PixelY(FrontChart chart, FrontPoint point) => (1 - chart.Up.Share(point.FrostKh)) / (1 + BelowZero) * FieldHeight;

    private static Coordinates At(double x, double y) => new((x / FieldWidth * (1 + BeforeZero)) - BeforeZero, 1 - (y / FieldHeight * (1 + BelowZero)));

    private static ScottPlot.TickGenerators.NumericManual Ticks(ChartScale scale)
    {
        var values = scale.Ticks();
        return new([.. values.Select(scale.Share)], [.. values.Select(Say.Plain)]);
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
