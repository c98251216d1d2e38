using DesignSearch.Season.Glass;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class GlazingTests
{
    [Theory]
    [InlineData(1, 1.526, 0, 0.9169)]
    [InlineData(2, 1.526, 0, 0.8465)]
    [InlineData(3, 1.526, 0, 0.7862)]
    [InlineData(1, 1.526, 60, 0.8421)]
    [InlineData(2, 1.526, 60, 0.7588)]
    [InlineData(3, 1.526, 60, 0.7070)]
    [InlineData(1, 1.526, 75, 0.6139)]
    [InlineData(2, 1.586, 0, 0.8220)]
    [InlineData(2, 1.586, 60, 0.7444)]
    [InlineData(1, 1.526, 45, 0.9011)]
    [InlineData(2, 1.526, 45, 0.8296)]
    [InlineData(3, 1.526, 45, 0.7749)]
    [InlineData(2, 1.526, 75, 0.4722)]
    [InlineData(3, 1.526, 75, 0.3898)]
    [InlineData(2, 1.586, 45, 0.8078)]
    [InlineData(2, 1.586, 70, 0.5981)]
    [InlineData(2, 1.51, 0, 0.8531)]
    [InlineData(2, 1.51, 45, 0.8356)]
    [InlineData(2, 1.51, 60, 0.7629)]
    [InlineData(2, 1.51, 70, 0.6075)]
    public void Sheets_without_absorption(int layers, double index, double angle, double expected) =>
        Validation.Equal($"glazing B7 N {layers} n {index} at {angle}", "1", expected, Glazing.Fresnel(layers, index, Math.Cos(angle * Math.PI / 180)), 0.0005, "Snell and Fresnel, as Duffie and Beckman ch. 5, recomputed", "Glazing.Fresnel");

    [Fact]
    public void Is_scaled_to_the_stated_normal_value()
    {
        var glazing = new Glazing(2, 0.8);
        Assert.Equal(0.8, glazing.Transmittance(1), 12);
        Assert.Equal(0, glazing.Transmittance(-0.2));
        Assert.True(glazing.Transmittance(0.3) < glazing.Transmittance(0.6));
    }
}
