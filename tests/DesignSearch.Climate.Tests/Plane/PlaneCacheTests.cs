using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Light on planes is kept as long as there is room, and the one that was not asked for the longest goes first.</summary>
public sealed class PlaneCacheTests
{
    private static readonly Winter Some = WinterMaker.Synthetic(ReferenceSites.Redmond, new(1, 5, 1, 18), WinterKind.Typical, 4, new());

    [Fact]
    public void What_has_room_stays_and_the_oldest_goes()
    {
        // Four columns of eight bytes an hour: room for two planes and a half.
        var cache = new PlaneCache((long)(2.5 * 4 * 8 * Some.Hours));
        PlaneIrradiance Get(double tilt) => cache.Get(Some, Mount.FixedAt(tilt, 180));
        var (a, b) = (Get(30), Get(50));
        Assert.Same(a, Get(30));
        Assert.Same(b, Get(50));
        Assert.Same(a, Get(30));
        var c = Get(70);
        Assert.Same(a, Get(30));
        Assert.Same(c, Get(70));
        Assert.NotSame(b, Get(50));
    }

    [Fact]
    public void One_is_kept_however_little_room_there_is()
    {
        var cache = new PlaneCache(1);
        var a = cache.Get(Some, Mount.FixedAt(30, 180));
        Assert.Same(a, cache.Get(Some, Mount.FixedAt(30, 180)));
        cache.Get(Some, Mount.FixedAt(40, 180));
        Assert.NotSame(a, cache.Get(Some, Mount.FixedAt(30, 180)));
    }
}
