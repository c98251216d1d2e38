using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Kernel;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class AirHeatTests
{
    [Theory]
    [InlineData(0, 0.361)]
    [InlineData(10, 0.348)]
    [InlineData(20, 0.336)]
    public void Heat_of_an_air_change(double airC, double expected) =>
        Validation.Equal(FormattableString.Invariant($"house F1 heat of air at {airC} C"), "W·h/(m³K) at sea level", expected, SeasonAssumptions.Default.AirVolumetricCapacityJPerM3K * WinterForcing.Density(airC, 0) / 3600, 0.001, "density times heat capacity, recomputed", "WinterForcing.Density");
}
