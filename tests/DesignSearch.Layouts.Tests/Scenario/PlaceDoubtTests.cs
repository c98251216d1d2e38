using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>What passes every rule and cannot be meant is doubted, and nothing that can be meant is.</summary>
public sealed class PlaceDoubtTests
{
    private const string Sun = "sun_kwh_per_m2_day = [1.75, 2.70, 3.90, 4.70, 5.60, 6.10, 6.30, 5.50, 4.20, 2.80, 1.80, 1.45]";
    private const string Wind = "wind_m_per_s = [1.4, 1.6, 1.9, 2.1, 1.9, 1.8, 1.7, 1.6, 1.5, 1.4, 1.5, 1.4]";
    private const string Latitude = "latitude_deg = 46.3 ";
    private const string Longitude = "longitude_deg = 13.9 ";

    [Fact]
    public void Wind_in_kilometres_an_hour_is_doubted_where_nobody_lives_with_it()
    {
        using var strong = new SmallScenario((Wind, "wind_m_per_s = [19, 18, 17, 15, 14, 13, 13, 14, 15, 17, 18, 19]"));
        Assert.Contains("Was it in km/h? Then divide by 3.6: 4.4 m/s.", Assert.Single(strong.Read().Doubts), StringComparison.Ordinal);
        using var coast = new SmallScenario((Wind, "wind_m_per_s = [9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9]"));
        Assert.Empty(coast.Read().Doubts);
    }

    [Fact]
    public void Latitude_and_longitude_exchanged_are_doubted_by_cold_so_near_the_equator()
    {
        using var small = new SmallScenario((Latitude, "latitude_deg = 13.9 "), (Longitude, "longitude_deg = 46.3 "));
        var doubt = Assert.Single(small.Read().Doubts);
        Assert.StartsWith("The coldest month averages -2.8 °C at 13.9° north and 640 m", doubt, StringComparison.Ordinal);
        Assert.EndsWith("exchanged? With latitude_deg = 46.3 and longitude_deg = 13.9 it fits.", doubt, StringComparison.Ordinal);
    }

    [Fact]
    public void Latitude_and_longitude_exchanged_are_doubted_by_the_sun_of_the_north()
    {
        using var small = new SmallScenario(
            (Latitude, "latitude_deg = 9.9 "), (Longitude, "longitude_deg = 57.1 "),
            (Sun, "sun_kwh_per_m2_day = [0.35, 0.90, 2.10, 3.60, 5.10, 5.60, 5.20, 4.10, 2.70, 1.30, 0.50, 0.22]"));
        var doubt = Assert.Single(small.Read().Doubts);
        Assert.StartsWith("January has 0.35 kWh/m² of sun a day where", doubt, StringComparison.Ordinal);
        Assert.EndsWith("With latitude_deg = 57.1 and longitude_deg = 9.9 it fits.", doubt, StringComparison.Ordinal);
    }

    [Fact]
    public void More_sun_than_falls_above_the_air_is_doubted()
    {
        using var small = new SmallScenario((Sun, "sun_kwh_per_m2_day = [6.30, 6.70, 6.90, 6.70, 6.60, 6.30, 6.30, 6.50, 6.20, 6.80, 6.80, 6.45]"));
        Assert.StartsWith("January has 6.3 kWh/m² of sun a day, but only 3.", Assert.Single(small.Read().Doubts), StringComparison.Ordinal);
    }

    // The season follows from the latitude, so that it leaves out the winter follows from the same slip.
    [Fact]
    public void Means_of_the_other_half_of_the_world_are_one_doubt()
    {
        using var small = new SmallScenario((Latitude, "latitude_deg = -46.3 "), ("start = \"11-01\"\nend = \"03-31\"\n", ""));
        Assert.StartsWith("The twelve means are warm when the south of the world has winter.", Assert.Single(small.Read().Doubts), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("heater_set_c = 1", "heater_set_c is 1 °C at most, below frost_limit_c of 2 °C")]
    [InlineData("heater_set_c = 12", "heater_set_c is 12 °C at least, 10 K above frost_limit_c")]
    [InlineData("heater_set_c = [1, 4]", null)]
    [InlineData("heater_set_c = 10", null)]
    public void A_thermostat_that_does_not_go_with_the_limit_is_doubted(string written, string? told)
    {
        using var small = new SmallScenario(("heater_set_c = 4", written));
        Assert.Equal(told is null ? 0 : 1, small.Read().Doubts.Count());
        Assert.All(small.Read().Doubts, d => Assert.StartsWith(told!, d, StringComparison.Ordinal));
    }

    [Fact]
    public void A_thermostat_of_what_is_forbidden_is_not_doubted()
    {
        using var small = new SmallScenario(("heater_set_c = 4", "heater_set_c = 1"), ("heater = [\"none\", \"fan-heater-1kw\", \"fan-heater-2kw\"]", "heater = \"none\""));
        Assert.Empty(small.Read().Doubts);
    }
}
