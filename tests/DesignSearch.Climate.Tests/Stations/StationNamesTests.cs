using DesignSearch.Climate.Stations;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class StationNamesTests
{
    [Theory]
    [InlineData("redmond", "Redmond Roberts Field, OR")]
    [InlineData("Redmond, OR", "Redmond Roberts Field, OR")]
    [InlineData("Redmond Oregon", "Redmond Roberts Field, OR")]
    [InlineData("portland, maine", "Portland Intl Jetport, ME")]
    [InlineData("PORTLAND ME", "Portland Intl Jetport, ME")]
    [InlineData("sand point", "Sand Point, AK")]
    [InlineData("Greensboro North Carolina", "Greensboro Piedmont Triad Int, NC")]
    [InlineData("Minneapolis-St Paul", "Minneapolis-St Paul Int'l Arp, MN")]
    public void A_town_is_found_by_its_name(string name, string station) => Assert.Equal(station, StationNames.Find(name)[0].Place.Name);

    [Fact]
    public void Every_station_is_found_by_its_own_name() =>
        Assert.Empty(StationTable.All.Where(s => StationNames.Find(s.Place.Name).All(f => f != s)).Select(s => s.Place.Name));

    [Fact]
    public void A_name_of_many_places_finds_them_all()
    {
        var states = StationNames.Find("portland").Select(s => s.Place.Name[^2..]).ToList();
        Assert.Contains("OR", states);
        Assert.Contains("ME", states);
        Assert.All(StationNames.Find("portland or"), s => Assert.EndsWith(", OR", s.Place.Name, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" , ")]
    [InlineData("Oslo")]
    [InlineData("Redmond, Florida")]
    [InlineData("re")]
    [InlineData("me")]
    public void What_is_not_there_is_not_found(string name) => Assert.Empty(StationNames.Find(name));

    [Fact]
    public void A_slip_is_guessed()
    {
        Assert.Equal("Redmond", StationNames.Like("Reddmond, OR"));
        Assert.Equal("Greensboro", StationNames.Like("Grensboro"));
        Assert.Null(StationNames.Like("Oslo"));
        Assert.Null(StationNames.Like(""));
    }
}
