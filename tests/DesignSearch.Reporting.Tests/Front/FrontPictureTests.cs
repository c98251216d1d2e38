using System.Text;
using System.Xml.Linq;
using DesignSearch.Reporting.Front;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class FrontPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void The_same_run_gives_the_same_bytes()
    {
        var chart = FrontChart.Of(InventedRun.Finished(), FrontReading.Frost);
        Assert.Equal(FrontPicture.Svg(chart), FrontPicture.Svg(chart));
        Assert.Equal(FrontPicture.Png(chart), FrontPicture.Png(chart));
    }

    [Fact]
    public void The_svg_scales_and_can_be_read_aloud()
    {
        var chart = FrontChart.Of(InventedRun.Finished(), FrontReading.Frost);
        var root = XDocument.Parse(FrontPicture.Svg(chart)).Root!;
        Assert.Null(root.Attribute("width"));
        Assert.NotNull(root.Attribute("viewBox"));
        Assert.Equal("img", root.Attribute("role")!.Value);
        Assert.Equal(chart.Finding, root.Element(Svg + "title")!.Value);
        Assert.Contains(chart.Note, root.Element(Svg + "desc")!.Value, StringComparison.Ordinal);
        Assert.Equal("pareto-title", root.Attribute("aria-labelledby")!.Value);
        Assert.Equal(FrontPicture.Format, root.Element(Svg + "metadata")!.Value);
    }

    [Fact]
    public void Every_identifier_in_the_svg_is_ours_and_every_reference_finds_one()
    {
        var root = XDocument.Parse(FrontPicture.Svg(FrontChart.Of(InventedRun.Finished(), FrontReading.Frost))).Root!;
        var ids = root.Descendants().Attributes("id").Select(a => a.Value).ToList();
        Assert.Equal(ids.Distinct().Count(), ids.Count);
        Assert.All(ids, id => Assert.StartsWith("pareto-", id, StringComparison.Ordinal));
        Assert.All(root.Descendants().Attributes("clip-path"), a => Assert.Contains(a.Value["url(#".Length..^1], ids));
    }

    [Fact]
    public void Words_are_drawn_and_not_left_out()
    {
        var words = string.Concat(XDocument.Parse(FrontPicture.Svg(FrontChart.Of(InventedRun.Finished(), FrontReading.Frost))).Descendants(Svg + "text").Select(t => t.Value + "|"));
        foreach (var word in new[] { "frost, hours × degrees too cold [K·h]", "two positions a day", "follows the sun", "no collector", "bare house", "First step", "Cheapest that holds" })
            Assert.Contains(word, words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_font_that_comes_along_has_every_sign_we_write()
    {
        ChartFont.Register();
        // Not to be disposed of: every picture of the process is drawn with it.
        var face = ScottPlot.Fonts.GetTypeface(ChartFont.Family, bold: false, italic: false);
        Assert.Equal("DejaVu Sans", face.FamilyName);
        Assert.True(face.ContainsGlyphs("°Δ²€£−·–…\u202F\u00A0\uFFFDäéñøłžЖλ"));
    }

    [Fact]
    public void The_png_says_its_format_and_keeps_its_size()
    {
        var png = FrontPicture.Png(FrontChart.Of(InventedRun.Finished(), FrontReading.Frost));
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], png[..4]);
        Assert.Contains("tEXtComment\0" + FrontPicture.Format, Encoding.Latin1.GetString(png, 0, 200), StringComparison.Ordinal);
        using var picture = SkiaSharp.SKBitmap.Decode(png);
        Assert.Equal((1920, 1280), (picture.Width, picture.Height));
    }

    [Fact]
    public void Hostile_names_leave_the_svg_whole()
    {
        var root = XDocument.Parse(FrontPicture.Svg(FrontChart.Of(HostileRun.Make(), FrontReading.Frost))).Root!;
        Assert.DoesNotContain(root.Descendants(), e => e.Name.LocalName is "script" or "foreignObject");
    }
}
