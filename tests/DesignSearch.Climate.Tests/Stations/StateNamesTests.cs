using DesignSearch.Climate.Stations;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class StateNamesTests
{
    [Fact]
    public void Every_station_of_the_table_lies_in_a_state_with_a_name()
    {
        var letters = StationTable.All.Select(s => s.Place.Name[(s.Place.Name.LastIndexOf(", ", StringComparison.Ordinal) + 2)..]).Where(l => l.Length == 2).Distinct().ToList();
        Assert.Equal(50, letters.Count);
        Assert.DoesNotContain(letters, l => StateNames.Whole(l) == l);
        Assert.Equal(letters.Count, letters.Select(StateNames.Whole).Distinct().Count());
        Assert.All(letters, l => Assert.Equal(char.ToUpperInvariant(l[0]), StateNames.Whole(l)[0]));
    }
}
