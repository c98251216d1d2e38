namespace DesignSearch.Reporting.Front;

/// <summary>The chart of cost against frost as files to share: <c>pareto.png</c> and <c>pareto.svg</c>.</summary>
internal static class FrontPicture
{
    /// <summary>Version written into both files.</summary>
    public const string Format = "DesignSearch pareto chart, format 1";

    /// <summary>The chart as a PNG file, two pixels a point, the same bytes for the same run.</summary>
    public static byte[] Png(FrontChart chart)
    {
        using var plot = new FrontPlot(chart, FrontFrame.File, scale: 2);
        return PngNote.Add(plot.Png(), Format);
    }

    /// <summary>The chart as an SVG file, the same bytes for the same run.</summary>
    public static string Svg(FrontChart chart)
    {
        using var plot = new FrontPlot(chart, FrontFrame.File);
        return SvgFile.Clean(plot.Svg(), "pareto", chart.Finding, chart.InWords, Format);
    }
}
