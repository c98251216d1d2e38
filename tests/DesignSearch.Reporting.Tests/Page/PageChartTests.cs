using System.Globalization;
using System.Xml.Linq;
using DesignSearch.Reporting.Front;
using DesignSearch.Reporting.Page;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class PageChartTests
{
    private static readonly FrontChart Invented = FrontChart.Of(InventedRun.Finished(), FrontReading.Frost);

    public static TheoryData<bool> Frames => [true, false];

    [Theory]
    [MemberData(nameof(Frames))]
    public void A_link_lies_on_each_point_that_the_library_drew(bool narrow)
    {
        var svg = Drawn(Invented, narrow);
        var shapes = svg.Element("g")!.Elements()
            .Where(e => e.Attribute("class")?.Value is ['m', _] && e.Attribute("fill-opacity") is null).Select(Middle).ToList();
        var rings = svg.Descendants("circle").Select(c => (X: Number(c, "cx"), Y: Number(c, "cy"))).ToList();
        Assert.Equal(Invented.Points.Count(p => p.Stands), rings.Count);
        Assert.True(rings.Count > 5);
        Assert.Equal(rings.Count, shapes.Count);
        Assert.All(rings.Zip(shapes), pair =>
        {
            Assert.Equal(pair.First.X, pair.Second.X, 0.1);
            // A triangle's middle is not the middle of its height.
            Assert.Equal(pair.First.Y, pair.Second.Y, 2.5);
        });
    }

    [Theory]
    [MemberData(nameof(Frames))]
    public void No_colour_of_the_library_is_left_for_a_dark_page(bool narrow)
    {
        var svg = Drawn(Invented, narrow);
        var colours = svg.Descendants().Attributes().Where(a => a.Name.LocalName is "fill" or "stroke");
        Assert.All(colours, c => Assert.Equal("none", c.Value));
        Assert.All(Invented.Modes, m => Assert.Contains($"m{m.Order}", PageChart.Glyph(m).ToString(), StringComparison.Ordinal));
        Assert.Contains("fill-opacity", PageChart.Glyph(null).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Frames))]
    public void Hostile_names_stay_text(bool narrow)
    {
        var names = Drawn(FrontChart.Of(HostileRun.Make(), FrontReading.Frost), narrow).Descendants().Select(e => e.Name.LocalName).Distinct();
        Assert.Empty(names.Except(["a", "circle", "desc", "ellipse", "g", "path", "rect", "svg", "text", "title"]));
    }

    [Fact]
    public void On_a_phone_the_figures_below_stand_apart()
    {
        var svg = Drawn(Invented, narrow: true);
        var places = svg.Descendants("text").Where(t => t.Attribute("class") is null && t.Value.All(c => !char.IsLetter(c)))
            .Select(t => t.Attribute("transform")!.Value["translate(".Length..^1].Split(' ')).GroupBy(p => p[1]).MaxBy(g => g.Count())!
            .Select(p => Number(p[0])).Order().ToList();
        Assert.True(places.Count >= 3);
        Assert.All(places.Zip(places.Skip(1)), pair => Assert.True(pair.Second - pair.First >= 45));
    }

    private static XElement Drawn(FrontChart chart, bool narrow)
    {
        var frame = narrow ? FrontFrame.Narrow : FrontFrame.Wide;
        return XElement.Parse(PageChart.Of(chart, chart.Points.Select(p => p.Rank).ToHashSet(), frame, "x").ToString());
    }

    private static (double X, double Y) Middle(XElement shape)
    {
        switch (shape.Name.LocalName)
        {
            case "ellipse":
                return (Number(shape, "cx"), Number(shape, "cy"));
            case "rect":
                return (Number(shape, "x") + (Number(shape, "width") / 2), Number(shape, "y") + (Number(shape, "height") / 2));
            default:
                var corners = shape.Attribute("d")!.Value.Split('M', 'L', 'Z').Where(c => c.Length > 0).Select(c => c.Split(' ')).ToList();
                var (x, y) = (corners.Select(c => Number(c[0])).ToList(), corners.Select(c => Number(c[1])).ToList());
                return ((x.Max() + x.Min()) / 2, (y.Max() + y.Min()) / 2);
        }
    }

    private static double Number(XElement element, string attribute) => Number(element.Attribute(attribute)!.Value);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
