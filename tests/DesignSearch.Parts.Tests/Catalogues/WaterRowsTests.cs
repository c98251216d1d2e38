using DesignSearch.Files;
using Xunit;

namespace DesignSearch.Parts.Tests;

/// <summary>Rules between the cells of what goes into a loop.</summary>
public sealed class WaterRowsTests
{
    private const string Fluid = "id,name,unit,price,price_low,price_high,price_second_hand,life_years,labour_hours,glycol_percent,freezes_c,max_temperature_c,note\n";

    [Theory]
    [InlineData(30, -12.8, false)]
    [InlineData(30, -13.7, false)]
    [InlineData(30, -14, true)]
    [InlineData(30, -21, true)]
    [InlineData(40, -20.6, false)]
    [InlineData(40, -25, true)]
    public void No_antifreeze_promises_more_than_its_share_of_glycol(double percent, double freezesC, bool isFault)
    {
        IReadOnlyList<InputFault> faults = Sample.FaultsOf("antifreezes.csv", Fluid + FormattableString.Invariant($"mix,A mix,l,4.50,3.00,6.50,,4,0.02,{percent},{freezesC},150,For tests.\n"));
        Assert.Equal(isFault, faults.Any(f => f.ToString().Contains("Melinder", StringComparison.Ordinal)));
        Assert.Equal(isFault ? 1 : 0, faults.Count);
    }
}
