using CsCheck;
using DesignSearch.Reporting.Front;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class ChartScaleTests
{
    private static readonly Gen<ChartScale> Scales = Gen.Double[1e-3, 1e7].Select(Gen.Bool, (largest, stretched) => new ChartScale(largest, stretched));

    [Fact]
    public void Zero_is_at_the_start_and_the_largest_value_inside() =>
        Scales.Sample(s => s.Share(0) == 0 && s.Share(s.Largest) is > 0.9 and < 1);

    [Fact]
    public void More_is_farther_along() =>
        Scales.Select(Gen.Double[0, 1], Gen.Double[0, 1]).Sample((s, a, b) => (a < b) == (s.Share(a * s.Largest) < s.Share(b * s.Largest)));

    [Fact]
    public void Ticks_start_at_zero_rise_and_keep_apart() => Scales.Sample(s =>
    {
        var ticks = s.Ticks();
        return ticks[0] == 0 && ticks.Count is >= 3 and <= 12 && ticks.Zip(ticks.Skip(1)).All(t => s.Share(t.Second) - s.Share(t.First) > 0.05);
    });

    [Fact]
    public void Stretching_gives_small_amounts_more_room()
    {
        Assert.True(new ChartScale(2000, true).Share(20) > 8 * new ChartScale(2000, false).Share(20));
    }
}
