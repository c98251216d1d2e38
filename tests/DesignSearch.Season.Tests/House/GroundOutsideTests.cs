using DesignSearch.Season.Assumptions;
using DesignSearch.Season.House;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class GroundOutsideTests
{
    // Air 0 °C under a sky of −23.5 °C; h = 4 + 4 v is met by the wind.
    [Theory]
    [InlineData(4, 20, 8.8)]
    [InlineData(4, 40, 6.3)]
    [InlineData(6, 20, 7.0)]
    [InlineData(6, 40, 5.1)]
    [InlineData(10, 20, 5.1)]
    [InlineData(10, 40, 3.6)]
    [InlineData(20, 20, 3.0)]
    public void Grass_lies_below_the_air_as_its_balance_says(double film, double soil, double expected) => Validation.Equal(
        $"ground outside on a clear night, film {film}, soil {soil}", "K below the air", expected,
        GroundOutside.BelowAirK(0, -23.5, (film - 4) / 4, SeasonAssumptions.Default.With(HouseAssumptions.GroundOutsideWPerM2, soil)), 0.06,
        "ε σ (Ts⁴ − T⁴) + h (Ta − T) + G = 0 solved apart", "GroundOutside.BelowAirK");

    [Fact]
    public void On_a_clear_calm_night_it_is_as_much_colder_as_is_measured() => Validation.Within(
        "ground outside on a clear calm night", "K below the air", 3, 10,
        GroundOutside.BelowAirK(0, -23.5, 0.5, SeasonAssumptions.Default), "grass against screen minimum: 4 to 5 K usual, up to 10 over snow (Brugge 2011, Weather 66)", "GroundOutside.BelowAirK");

    [Fact]
    public void Under_cloud_it_is_as_warm_as_the_air() => Assert.Equal(0, GroundOutside.BelowAirK(4, 2, 2, SeasonAssumptions.Default));
}
