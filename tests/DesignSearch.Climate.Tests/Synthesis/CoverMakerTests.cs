using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Winters;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Made cover against the nights of seven open typical years, by how clear the days about them are.</summary>
public sealed class CoverMakerTests
{
    private const string Source =
        "opaque cover by night, October to April, of seven TMY3 files (Sand Point, Greensboro, Albuquerque, Sacramento, Medford, Minneapolis, Redmond), hours sorted by clearness from noon to noon";

    // Clearness, mean cover, share of hours that are clear (to half a tenth), share that is covered, of 2265 to 3898 hours each.
    [Theory]
    [InlineData(0.260, 0.880, 0.024, 0.696)]
    [InlineData(0.348, 0.750, 0.085, 0.518)]
    [InlineData(0.452, 0.589, 0.175, 0.318)]
    [InlineData(0.550, 0.387, 0.360, 0.195)]
    [InlineData(0.647, 0.184, 0.622, 0.069)]
    public void Hours_are_as_often_clear_and_covered_as_real_ones(double clearness, double mean, double clear, double covered)
    {
        var days = new SyntheticDays(new Place("Somewhere", 45, 0, 100, 0), new DateTime(2001, 1, 1), 2000);
        Array.Fill(days.Clearness, clearness);
        var cover = CoverMaker.Make(days, 1);
        var id = FormattableString.Invariant($"made cover at clearness {clearness:0.000}");
        Validation.Within(id, "mean cover", mean - 0.04, mean + 0.04, cover.Average(), Source, "CoverMaker");
        Validation.Within(id + " clear", "share of hours", clear - 0.06, clear + 0.06, cover.Count(c => c <= 0.05) / (double)cover.Length, Source, "CoverMaker");
        Validation.Within(id + " covered", "share of hours", covered - 0.07, covered + 0.07, cover.Count(c => c >= 0.95) / (double)cover.Length, Source, "CoverMaker");
    }

    // The line that stands where nothing is drawn: the same nights in the mean.
    [Theory]
    [InlineData(0.260, 0.880)]
    [InlineData(0.452, 0.589)]
    [InlineData(0.647, 0.184)]
    public void A_cover_that_is_not_drawn_has_the_mean_of_real_ones(double clearness, double mean) => Validation.Within(
        FormattableString.Invariant($"cover by the line at clearness {clearness:0.000}"), "mean cover", mean - 0.05, mean + 0.05, SkyTemperature.CoverAt([clearness], 12), Source, "SkyTemperature.CoverAt");

    [Fact]
    public void Clearness_runs_straight_from_noon_to_noon()
    {
        double[] days = [0.2, 0.6, 0.4];
        Assert.Equal(SkyTemperature.CoverAt([0.2], 0), SkyTemperature.CoverAt(days, 3), 1e-12);
        Assert.Equal(SkyTemperature.CoverAt([0.4], 0), SkyTemperature.CoverAt(days, 24), 1e-12);
        Assert.Equal(SkyTemperature.CoverAt([0.5], 0), SkyTemperature.CoverAt(days, 48), 1e-12);
        Assert.Equal(SkyTemperature.CoverAt([0.4], 0), SkyTemperature.CoverAt(days, 71), 1e-12);
    }
}
