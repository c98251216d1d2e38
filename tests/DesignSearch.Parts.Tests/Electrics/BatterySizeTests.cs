using DesignSearch.Parts.OffGrid;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Parts.Tests;

public sealed class BatterySizeTests
{
    private const string Sheet = "worked example of a published sizing sheet (batteries-solar.blogspot.com), recomputed";

    // 1000 W·h a day for 2.5 days, half of the charge, 4.4 °C (40 °F), 12 V.
    [Fact]
    public void The_published_bank_comes_out() => Validation.Within(
        "battery bank, worked example",
        "charge [A h]",
        541.6,
        541.8,
        BatterySize.AmpHours(2.5 * 1000, 0.5, 1, BatterySize.ColdFactor(BatteryChemistry.SealedLead, 4.4), 12),
        Sheet,
        "src/DesignSearch.Parts/OffGrid/BatterySize.cs");

    [Theory]
    [InlineData(26.7, 1.00)]
    [InlineData(21.2, 1.04)]
    [InlineData(15.6, 1.11)]
    [InlineData(10, 1.19)]
    [InlineData(4.4, 1.30)]
    [InlineData(-1.1, 1.40)]
    [InlineData(-6.7, 1.59)]
    [InlineData(40, 1.00)]
    public void Cold_lead_wants_more(double celsius, double times) =>
        Assert.Equal(times, BatterySize.ColdFactor(BatteryChemistry.OpenLead, celsius), 9);

    [Fact]
    public void Colder_than_the_table_it_goes_on_rising()
    {
        foreach (var chemistry in Enum.GetValues<BatteryChemistry>())
        {
            var factors = Enumerable.Range(-45, 90).Select(c => BatterySize.ColdFactor(chemistry, c)).ToList();
            Assert.True(factors.SequenceEqual(factors.OrderDescending()), chemistry.ToString());
            Assert.True(factors[0] > factors[20], chemistry.ToString());
            Assert.Equal(1, factors[^1], 9);
        }
    }

    // Published table: 40 % charged about -9 °C, full -65 to -69 °C, flat just below 0 °C.
    [Theory]
    [InlineData(5, 0)]
    [InlineData(0, 0)]
    [InlineData(-9, 0.4)]
    [InlineData(-65, 1)]
    [InlineData(-80, 1)]
    public void Acid_is_kept_from_freezing_by_charge(double celsius, double share)
    {
        Assert.Equal(share, BatterySize.ChargeAgainstFrost(BatteryChemistry.OpenLead, celsius), 9);
        Assert.Equal(0, BatterySize.ChargeAgainstFrost(BatteryChemistry.Lithium, celsius));
    }

    // 22.6 V, 0.31 % a kelvin, 45 K colder than the plate says: by hand 22.6 + 22.6 x 0.1395.
    [Fact]
    public void A_cold_panel_has_more_voltage()
    {
        Assert.Equal(25.7527, BatterySize.OpenV(22.6, 0.0031, -20), 9);
        Assert.Equal(22.6, BatterySize.OpenV(22.6, 0.0031, 25), 9);
    }
}
