using ScottPlot;
using SkiaSharp;

namespace DesignSearch.Reporting.Front;

/// <summary>The font that comes with the program, so that a machine without any still draws every word.</summary>
internal sealed class ChartFont : IFontResolver
{
    /// <summary>Family name to use in charts.</summary>
    public const string Family = "DejaVu Sans of DesignSearch";

    private static readonly Lazy<SKTypeface> Face = new(Load);
    private static readonly Lock Gate = new();

    /// <summary>Makes the font known to the chart library, once a process.</summary>
    public static void Register()
    {
        lock (Gate)
        {
            if (!Fonts.FontResolvers.OfType<ChartFont>().Any())
                Fonts.FontResolvers.Insert(0, new ChartFont());
        }
    }

    /// <inheritdoc/>
    public SKTypeface? CreateTypeface(string fontName, bool bold, bool italic) => fontName == Family ? Face.Value : null;

    /// <inheritdoc/>
    public SKTypeface? CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) => fontName == Family ? Face.Value : null;

    private static SKTypeface Load()
    {
        using var stream = typeof(ChartFont).Assembly.GetManifestResourceStream("DejaVuSans.ttf")!;
        using var data = SKData.Create(stream);
        return SKTypeface.FromData(data);
    }
}
