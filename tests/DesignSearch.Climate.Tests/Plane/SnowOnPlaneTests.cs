using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Snow comes by the weather, covers a plane, slides by the published rule, melts and is brushed off.</summary>
public sealed class SnowOnPlaneTests
{
    private const int Day = 24;
    private static readonly Winter Clear = ClearWinter.At(47);

    // Snow on the second day; five hours after it has ended, 400 W/m² on the plane: it slides above −5 °C, 0.197 sin 45° of the slope in an hour.
    [Fact]
    public void It_slides_as_was_measured_on_panels()
    {
        var covered = SnowOnPlane.Covered(At(-4.9), 45, Light(400));
        Validation.Equal(
            "snow on a slope of 45° in 400 W/m² at −4.9 °C", "share covered in the fifth hour after", 1 - (5 * 0.197 * Math.Sqrt(0.5)), covered[(2 * Day) + 4], 1e-9,
            "Marion et al. 2013, Solar Energy 97:112: 0.197 sin(tilt) of the slope in each hour in which air is above G/(-80)", "SnowOnPlane.Covered");
        Assert.All(covered[..Day], share => Assert.Equal(0, share));
        Assert.All(covered[Day..(2 * Day)], share => Assert.Equal(1, share));
        // The eighth hour takes the last of it: 8 × 0.1393 is more than all.
        Assert.True(covered[(2 * Day) + 6] > 0);
        Assert.All(covered[((2 * Day) + 7)..], share => Assert.Equal(0, share));
        Assert.All(SnowOnPlane.Covered(At(-5.1), 45, Light(400))[Day..], share => Assert.Equal(1, share));
        // In the dark it moves above 0 °C only, and faster where it is steeper: 1/(0.197 sin 60°) = 5.9 hours.
        Assert.Equal(1, SnowOnPlane.Covered(At(-0.1), 60, Light(0))[^1]);
        Assert.Equal(5, SnowOnPlane.Covered(At(0.1), 60, Light(0)).Skip(2 * Day).Count(share => share > 0));
        Assert.All(SnowOnPlane.Covered(At(-20), 90, Light(0)), share => Assert.Equal(0, share));
    }

    // 5 mm go at 4 mm for each degree-day: at 2.1 °C in 14.3 hours, after two days of snow in 28.6.
    [Theory]
    [InlineData(1, 14)]
    [InlineData(2, 28)]
    public void On_a_hoop_it_lies_until_it_melts(int days, int hours) =>
        Assert.Equal(hours, SnowOnPlane.Covered(At(2.1, days), 45, Light(400), slides: false).Skip((1 + days) * Day).Count(share => share > 0));

    [Fact]
    public void It_is_brushed_off_at_nine_the_next_morning()
    {
        var left = SnowOnPlane.Covered(At(-10), 30, Light(0));
        var brushed = SnowOnPlane.Covered(At(-10) with { Snow = At(-10).Snow! with { IsBrushed = true } }, 30, Light(0));
        Assert.All(left[Day..], share => Assert.Equal(1, share));
        Assert.Equal(Enumerable.Repeat(1.0, Day + 9), brushed[Day..((2 * Day) + 9)]);
        Assert.All(brushed[((2 * Day) + 9)..], share => Assert.Equal(0, share));
    }

    [Fact]
    public void Nothing_reaches_a_plane_under_it_and_without_it_nothing_changes()
    {
        var snowy = At(-4);
        var (cache, mount) = (new PlaneCache(10_000_000), Mount.FixedAt(50, 170));
        var (bare, under) = (cache.Get(snowy with { Snow = null }, mount), cache.Get(snowy, mount));
        var covered = SnowOnPlane.Covered(snowy, 50, bare);
        Assert.Contains(covered, share => share is > 0 and < 1);
        for (var h = 0; h < snowy.Hours; h++)
        {
            Assert.Equal(bare.BeamWPerM2[h] * (1 - covered[h]), under.BeamWPerM2[h]);
            Assert.Equal(bare.SkyWPerM2[h] * (1 - covered[h]), under.SkyWPerM2[h]);
            Assert.Equal(bare.GroundWPerM2[h] * (1 - covered[h]), under.GroundWPerM2[h]);
        }

        Assert.True(under.KwhPerM2(0) < bare.KwhPerM2(0));
        Assert.Equal(bare.CosIncidence, under.CosIncidence);
    }

    // Clear days have 0.68 of the light above the air; 0.6 of that are 0.41, 0.7 of it 0.48.
    [Theory]
    [InlineData(1, 1, 6, 0.6, true)]
    [InlineData(-8, 1, 5.9, 0.6, true)]
    [InlineData(1.1, 1, 3, 0.6, false)]
    [InlineData(1.1, 1.2, 3, 0.6, true)]
    [InlineData(0, 1, 6.1, 0.6, false)]
    [InlineData(0, 1, 3, 0.7, false)]
    public void A_day_brings_it_that_is_cold_damp_and_dull(double airC, double belowC, double dampK, double light, bool falls)
    {
        var winter = Weather(airC) with
        {
            DewPointC = [.. Enumerable.Repeat(airC - dampK, Clear.Hours)],
            GlobalWPerM2 = [.. Clear.GlobalWPerM2.Select(g => light * g)],
        };
        var snow = LyingSnow.On(winter, isBrushed: false, belowC);
        Assert.Equal(falls ? (Clear.Hours - Clear.WarmUpHours) / Day : 0, snow.Days(winter));
        Assert.Equal(Clear.Hours / Day, snow.FallsOnDay.Length);
    }

    private static Winter Weather(double airC) => Clear with { AirC = [.. Enumerable.Repeat(airC, Clear.Hours)] };

    private static Winter At(double airC, int days = 1) =>
        Weather(airC) with { Snow = new([.. Enumerable.Range(0, Clear.Hours / Day).Select(d => d >= 1 && d <= days)], IsBrushed: false) };

    private static PlaneIrradiance Light(double wPerM2)
    {
        double[] Flat(double value) => [.. Enumerable.Repeat(value, Clear.Hours)];
        return new() { BeamWPerM2 = Flat(0.5 * wPerM2), SkyWPerM2 = Flat(0.3 * wPerM2), GroundWPerM2 = Flat(0.2 * wPerM2), CosIncidence = Flat(1), Moves = 0, TravelDeg = 0 };
    }
}
