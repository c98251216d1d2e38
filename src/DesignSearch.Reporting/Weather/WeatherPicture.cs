using System.Globalization;
using DesignSearch.Reporting.Front;
using DesignSearch.Reporting.Words;
using ScottPlot;
using SkiaSharp;

namespace DesignSearch.Reporting.Weather;

/// <summary>Draws weather day by day: air between its lowest and highest hour, sun on the flat, frost hours, over one date axis.</summary>
public static class WeatherPicture
{
    /// <summary>Version written into the file.</summary>
    public const string Format = "DesignSearch weather picture, format 1";

    private const int Width = 1100;
    private const int Height = 820;
    private const int Scale = 2;
    private const float LetterSize = 14;
    private const int LeftEdge = 72;
    private const int RightEdge = 24;
    private const int MostMonths = 14;

    private static readonly Color Ink = Color.FromHex("#1D2320");
    private static readonly Color Air = Color.FromHex("#0072B2");
    private static readonly Color Sun = Color.FromHex("#E69F00");
    private static readonly Color Frost = Color.FromHex("#56B4E9");
    private static readonly Color Limit = Color.FromHex("#D55E00");

    /// <summary>The picture as a PNG file; the same weather gives the same bytes.</summary>
    /// <param name="weather">At least one day.</param>
    /// <exception cref="ArgumentException">The lists are of different lengths, or empty.</exception>
    public static byte[] Png(WeatherDays weather)
    {
        var days = weather.MeanC.Count;
        if (days == 0 || new[] { weather.LowestC, weather.HighestC, weather.GhiKwhPerM2, weather.FrostHours }.Any(l => l.Count != days))
            throw new ArgumentException("Weather needs at least one day, and every list one entry a day.", nameof(weather));
        ChartFont.Register();
        var dates = Enumerable.Range(0, days).Select(d => weather.FirstDay.AddDays(d).ToDateTime(TimeOnly.MinValue).ToOADate()).ToArray();
        var figure = new Multiplot();
        figure.AddPlots(3);
        DrawAir(figure.GetPlot(0), weather, dates);
        DrawBars(figure.GetPlot(1), dates, weather.GhiKwhPerM2, Sun, "sun a day [kWh/m²]");
        DrawBars(figure.GetPlot(2), dates, weather.FrostHours, Frost, $"hours below {Say.Plain(weather.FrostLimitC)} °C");
        figure.GetPlot(2).Axes.Left.TickGenerator = new ScottPlot.TickGenerators.NumericFixedInterval(6);
        foreach (var panel in Enumerable.Range(0, 3))
            Finish(figure.GetPlot(panel), dates, isLast: panel == 2);
        figure.GetPlot(0).Title($"{PlainText.Cut(weather.Title, 90)}\n{weather.Finding}", 15);
        figure.GetPlot(0).Axes.Title.Label.Bold = false;
        figure.GetPlot(0).Axes.Title.Label.FontName = ChartFont.Family;
        figure.Layout = new ScottPlot.MultiplotLayouts.Rows();
        using var surface = SKSurface.Create(new SKImageInfo(Width * Scale, Height * Scale));
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale(Scale);
        figure.Render(surface.Canvas, new PixelRect(0, Width, Height, 0));
        using var image = surface.Snapshot();
        using var png = image.Encode(SKEncodedImageFormat.Png, 100);
        return PngNote.Add(png.ToArray(), Format);
    }

    private static void DrawAir(Plot plot, WeatherDays weather, double[] dates)
    {
        var known = Enumerable.Range(0, dates.Length).Where(d => double.IsFinite(weather.LowestC[d]) && double.IsFinite(weather.HighestC[d])).ToList();
        if (known.Count > 0)
        {
            var band = plot.Add.FillY([.. known.Select(d => dates[d])], [.. known.Select(d => weather.LowestC[d])], [.. known.Select(d => weather.HighestC[d])]);
            band.FillColor = Air.WithAlpha(0.25);
            band.LineWidth = 0;
            band.MarkerSize = 0;
            band.LegendText = "lowest to highest hour";
        }

        var mean = plot.Add.ScatterLine(dates, weather.MeanC.ToArray(), Air);
        mean.LineWidth = 1.5f;
        mean.LegendText = "mean of the day";
        var limit = plot.Add.HorizontalLine(weather.FrostLimitC, 1.5f, Limit, LinePattern.Dashed);
        limit.LegendText = $"frost limit, {Say.Plain(weather.FrostLimitC)} °C";
        if (weather.ColdestDay is { } coldest)
        {
            plot.Add.Marker(dates[coldest], weather.LowestC[coldest], MarkerShape.OpenCircle, 9, Ink);
            var label = plot.Add.Text(Say.Plain(Math.Round(weather.LowestC[coldest], 1)) + " °C", dates[coldest], weather.LowestC[coldest]);
            (label.LabelFontName, label.LabelFontSize, label.LabelFontColor) = (ChartFont.Family, LetterSize - 1, Ink);
            label.LabelAlignment = coldest < dates.Length * 0.85 ? Alignment.MiddleLeft : Alignment.MiddleRight;
            label.OffsetX = coldest < dates.Length * 0.85 ? 8 : -8;
        }

        plot.Axes.Left.Label.Text = "outdoor air [°C]";
        plot.Legend.FontName = ChartFont.Family;
        plot.Legend.FontSize = LetterSize - 2;
        plot.Legend.TightHorizontalWrapping = true;
        plot.Legend.Orientation = Orientation.Horizontal;
        plot.Legend.ShadowColor = Colors.Transparent;
        plot.ShowLegend(Alignment.UpperRight);
        var figures = weather.LowestC.Concat(weather.HighestC).Append(weather.FrostLimitC).Where(double.IsFinite).ToList();
        var span = Math.Max(1, figures.Max() - figures.Min());
        plot.Axes.SetLimitsY(figures.Min() - (0.05 * span), figures.Max() + (0.22 * span));
    }

    private static void DrawBars(Plot plot, double[] dates, IReadOnlyList<double> values, Color colour, string title)
    {
        var known = Enumerable.Range(0, dates.Length).Where(d => double.IsFinite(values[d]));
        plot.Add.Bars(known.Select(d => new Bar { Position = dates[d], Value = values[d], Size = 0.9, FillColor = colour, LineWidth = 0 }).ToArray());
        plot.Axes.Left.Label.Text = title;
        plot.Axes.SetLimitsY(0, Math.Max(1, values.Where(double.IsFinite).DefaultIfEmpty(1).Max()) * 1.08);
    }

    private static void Finish(Plot plot, double[] dates, bool isLast)
    {
        plot.Axes.Bottom.TickGenerator = MonthStarts(DateTime.FromOADate(dates[0]), DateTime.FromOADate(dates[^1]), isLast);
        plot.Axes.SetLimitsX(dates[0] - 0.7, dates[^1] + 0.7);
        plot.Layout.Fixed(new PixelPadding(LeftEdge, RightEdge, isLast ? 34 : 12, plot.Axes.Left.Label.Text.StartsWith("outdoor", StringComparison.Ordinal) ? 56 : 8));
        plot.Font.Set(ChartFont.Family);
        plot.Axes.Left.Label.FontSize = LetterSize;
        plot.Axes.Left.Label.Bold = false;
        plot.Axes.Left.Label.ForeColor = Ink;
        plot.Axes.Left.TickLabelStyle.FontSize = plot.Axes.Bottom.TickLabelStyle.FontSize = LetterSize - 1;
    }

    private static ScottPlot.TickGenerators.NumericManual MonthStarts(DateTime first, DateTime last, bool labelled)
    {
        var ticks = new ScottPlot.TickGenerators.NumericManual();
        var months = ((last.Year - first.Year) * 12) + last.Month - first.Month + 1;
        var every = (months + MostMonths - 1) / MostMonths;
        for (var month = new DateTime(first.Year, first.Month, 1); month <= last; month = month.AddMonths(every))
        {
            if (month >= first)
                ticks.AddMajor(month.ToOADate(), labelled ? month.ToString("d MMM", CultureInfo.InvariantCulture) : "");
        }

        return ticks;
    }
}
