using DesignSearch.Climate.Winters;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class WinterTests
{
    private static readonly Winter Typical = WinterMaker.Synthetic(ReferenceSites.Redmond, new(11, 1, 3, 31), WinterKind.Typical, 4, new());

    [Fact]
    public void A_copy_with_another_sky_shares_all_the_rest_and_is_another_winter()
    {
        var colder = Typical with { SkyC = [.. Typical.SkyC.Select(s => s - 5)] };
        var other = typeof(Winter).GetProperties().Where(p => !Equals(p.GetValue(Typical), p.GetValue(colder))).Select(p => p.Name);
        Assert.Equal(["SkyC"], other);
        Assert.NotEqual(Typical, colder);
        Assert.Equal(Typical, colder with { SkyC = Typical.SkyC });
    }
}
