using DesignSearch.Season.Assumptions;
using DesignSearch.Season.House;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class HouseFormulaTests
{
    [Theory]
    [InlineData(4.0, 4547.0)]
    [InlineData(3.5, 4015.7)]
    public void Steady_loss(double u, double expected)
    {
        var house = MadeLayout.House with
        {
            CoverAreaM2 = 70.833,
            CoverResistanceM2KPerW = SheetResistance.FromUValue(u),
            VolumeM3 = 60,
            AirChangesPerHour = 1,
            EdgeLossWPerMK = 0,
        };
        var air = SeasonAssumptions.Default.With(HouseAssumptions.AirVolumetricCapacityJPerM3K, 0.33 * 3600);
        var ours = 15 * HouseLoss.CoefficientWPerK(house, 0, air);
        Validation.Equal($"house F1 loss U {u}", "W", expected, ours, 0.001 * expected, "worked example 6 x 4 m gable house, U A + c N V, recomputed", "HouseLoss.CoefficientWPerK");
    }

    [Theory]
    [InlineData(0, 2.8)]
    [InlineData(2, 8.8)]
    [InlineData(5, 17.8)]
    public void Wind(double wind, double expected)
    {
        var c = HouseTerms.From(MadeLayout.Bare, SeasonAssumptions.Default);
        var ours = (c.OuterStill + c.OuterPerWind * wind) / MadeLayout.House.CoverAreaM2;
        Validation.Equal($"house F6 Watmuff {wind}", "W/(m²K)", expected, ours, 1e-9, "Watmuff et al. 1977", "HouseTerms.From");
    }

    [Fact]
    public void A_single_pane_keeps_only_its_glass() =>
        Validation.Equal("house F2 single pane", "m²K/W", 0.004, SheetResistance.FromUValue(1 / (1 / 25.0 + 0.004 + 1 / 7.69)), 1e-9, "EN 673 form, 4 mm glass of 1 W/(m·K)", "SheetResistance.FromUValue");
}
