using DesignSearch.Season.Solar;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class PipeLossTests
{
    [Theory]
    [InlineData("22 mm insulated", 0.038, 0.022, 0.062, 10, 50, 10.303)]
    [InlineData("25 mm insulated", 0.040, 0.025, 0.075, 10, 45, 9.384)]
    [InlineData("25 mm in wind", 0.040, 0.025, 0.075, 25, 45, 9.910)]
    [InlineData("22 mm bare", 0.040, 0.022, 0.022, 10, 50, 34.56)]
    [InlineData("106 mm foam", 0.033, 0.106, 0.206, 10, 135, 40.175)]
    public void Loses_what_iso_12241_says(string name, double conductivity, double inner, double outer, double film, double difference, double expected) =>
        Validation.Equal($"pipe D1 {name}", "W/m", expected, difference * PipeLoss.PerMetreK(conductivity, inner, outer, film), 0.001 * expected, "ISO 12241 linear resistance form, recomputed (the 106 mm case is a published course problem, 40.2)", "PipeLoss.PerMetreK");
}
