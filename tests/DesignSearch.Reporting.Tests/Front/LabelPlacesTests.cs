using CsCheck;
using DesignSearch.Reporting.Front;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class LabelPlacesTests
{
    private const double Wide = 850;
    private const double High = 480;
    private const double Letters = 14;

    [Theory]
    [InlineData(20)]
    [InlineData(60)]
    [InlineData(110)]
    public void Lines_of_two_close_picks_do_not_cross(double apart)
    {
        var places = new LabelPlaces(Wide, High, Letters);
        const double x = 660;
        const double y = 455;
        var right = places.Place(x + apart, y, "Most protection");
        var left = places.Place(x, y, "Cheapest that holds");
        Assert.True(left.LeadX <= right.LeadX, $"{left} {right}");
        Assert.True(Math.Abs(left.Middle - right.Middle) > Letters || left.Left < right.Left, $"{left} {right}");
    }

    [Fact]
    public void A_line_goes_round_an_earlier_one_whatever_the_order() => Gen.Select(Gen.Double[200, 600], Gen.Double[5, 60]).Sample((x, apart) =>
    {
        var places = new LabelPlaces(Wide, High, Letters);
        (double X, double Y) first = (x, 455);
        (double X, double Y) second = (x + apart, 455);
        var one = places.Place(first.X, first.Y, "Cheapest that holds");
        var two = places.Place(second.X, second.Y, "Most protection");
        Assert.False(Crossed(first, (one.LeadX, one.Middle + (0.55 * Letters)), second, (two.LeadX, two.Middle + (0.55 * Letters))));
    });

    private static bool Crossed((double X, double Y) a, (double X, double Y) b, (double X, double Y) c, (double X, double Y) d)
    {
        var determinant = ((b.X - a.X) * (d.Y - c.Y)) - ((b.Y - a.Y) * (d.X - c.X));
        var s = (((c.X - a.X) * (d.Y - c.Y)) - ((c.Y - a.Y) * (d.X - c.X))) / determinant;
        var t = (((c.X - a.X) * (b.Y - a.Y)) - ((c.Y - a.Y) * (b.X - a.X))) / determinant;
        return s is > 0 and < 1 && t is > 0 and < 1;
    }
}
