using Xunit;

namespace DesignSearch.Parts.Tests;

public sealed class DayStoreRowTests
{
    private const string Shared = "id,name,unit,price,price_low,price_high,price_second_hand,life_years,labour_hours,";
    private const string Pipe = Shared + "bore_mm,outer_mm,wall_w_per_mk,friction_factor,film_factor,note\nearth-a,Pipe "
        + "A,m,2.00,1.00,3.00,,30,0.4,";
    private const string Fan = Shared + "flow_at_no_head_m3_per_h,head_at_no_flow_pa,watts,volts,note\nfan-a,Fan "
        + "A,piece,80.00,50.00,90.00,,7,2,";

    [Theory]
    [InlineData("earth-pipes.csv", Pipe + "91,100,0.4,3,1.3,For tests.\n", "")]
    [InlineData("earth-pipes.csv", Pipe + "100,100,0.4,3,1.3,For tests.\n", "less than outer_mm")]
    [InlineData("earth-pipes.csv", Pipe + "91,100,0.4,1,1.3,For tests.\n", "film_factor")]
    [InlineData("store-fans.csv", Fan + "340,110,30,24,For tests.\n", "")]
    [InlineData("store-fans.csv", Fan + "3400,110,30,24,For tests.\n", "no fan turns more")]
    [InlineData("earth-headers.csv", Shared + "pipes_most,note\nhead-a,Head A,set,80.00,50.00,90.00,,20,5,10,For tests.\n", "")]
    [InlineData("earth-headers.csv", Shared + "pipes_most,note\nhead-a,Head A,set,80.00,50.00,90.00,,20,5,0,For tests.\n", "pipes_most")]
    public void Rows_that_cannot_be_are_told(string file, string text, string expected)
    {
        var faults = Sample.FaultsOf(file, text);
        if (expected.Length == 0)
            Assert.Empty(faults);
        else
            Assert.Contains(expected, Assert.Single(faults).Expected, StringComparison.Ordinal);
    }
}
