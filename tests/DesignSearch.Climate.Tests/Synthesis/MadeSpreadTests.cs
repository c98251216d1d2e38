using DesignSearch.Climate.Stations;
using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Winters;
using DesignSearch.Testing;
using MathNet.Numerics.Statistics;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Made days are as often dark, and their nights stray as far, as at stations all over the table, not at the few that have a file of hours.</summary>
public sealed class MadeSpreadTests
{
    private const string Source = "monthly statistics of the public typical-year set TMY3 (NSRDB 1991-2005), every 24th of 578 sites, worked out for this project";
    private const int Seeds = 6;

    // Latitude, longitude, share of the days from November to March with a clearness under 0.25, mean of the months.
    private static readonly (double LatitudeDeg, double LongitudeDeg, double Dark)[] Sites =
    [
        (61.133, -146.267, 0.513), (28.117, -80.65, 0.053), (30.35, -87.317, 0.107), (29.57, -95.09, 0.191), (32.783, -98.067, 0.137), (33.917, -118.333, 0.060),
        (35.95, -85.083, 0.383), (36.61, -97.49, 0.190), (34.433, -119.85, 0.085), (36.567, -79.333, 0.325), (40.417, -86.933, 0.305), (39.183, -103.717, 0.066),
        (37.7, -121.817, 0.147), (41.733, -72.65, 0.279), (43.1, -78.95, 0.325), (42.4, -90.7, 0.271), (40.517, -101.617, 0.119), (42.533, -113.767, 0.197),
        (42.967, -83.75, 0.026), (44.583, -92.483, 0.282), (44.25, -121.167, 0.113), (45.883, -93.267, 0.162), (47.49, -117.589, 0.059), (33.617, -114.717, 0.020),
    ];

    [Fact]
    public void Made_days_are_as_often_dark_and_their_nights_stray_as_far_as_the_stations()
    {
        var misses = Sites.AsParallel().AsOrdered().Select((site, i) =>
        {
            var station = StationTable.Nearest(site.LatitudeDeg, site.LongitudeDeg, 1)[0];
            Assert.True(station.DistanceKm(site.LatitudeDeg, site.LongitudeDeg) < 1, station.Place.Name);
            var made = Enumerable.Range(1, Seeds).Select(s => MonthsOf(WinterMaker.Synthetic(
                new(station.Place, station.Months), new(11, 1, 3, 31), WinterKind.Typical, (ulong)(s + 100 * i), new()))).ToArray();
            int[] months = [11, 12, 1, 2, 3];
            return (
                Dark: made.Average(m => m.Average(x => x.Dark)) - site.Dark,
                Low: made.Average(m => m.Average(x => x.LowSdK)) - months.Average(m => station.Spread!.LowSdK[m - 1]),
                Mean: made.Average(m => m.Average(x => x.MeanSdK)) - months.Average(m => station.Spread!.MeanSdK[m - 1]));
        }).ToArray();
        Validation.Within("winter dark days", "share of days with clearness under 0.25, made less the station's, mean of 24 sites", -0.01, 0.01, misses.Average(m => m.Dark), Source, "WinterMaker.Synthetic");
        Validation.Within("winter dark days site by site", "the same, rms of 24 sites", 0, 0.04, Math.Sqrt(misses.Average(m => m.Dark * m.Dark)), Source, "WinterMaker.Synthetic");
        Validation.Within("winter spread of the lows", "standard deviation of the daily lowest hour within the months, made less the station's, mean of 24 sites [K]", -0.1, 0.1, misses.Average(m => m.Low), Source, "WinterMaker.Synthetic");
        Validation.Within("winter spread of the means", "the same of the daily mean [K]", -0.1, 0.1, misses.Average(m => m.Mean), Source, "WinterMaker.Synthetic");
    }

    // Where mean and spread reach past an end, the end gives way.
    [Theory]
    [InlineData(0.42, 0.08)]
    [InlineData(0.30, 0.15)]
    [InlineData(0.20, 0.10)]
    [InlineData(0.68, 0.12)]
    public void Clearness_between_its_ends_has_the_mean_and_the_spread_it_was_made_for(double mean, double sd)
    {
        var spread = new BoundedClearness(mean, sd);
        double[] days = [.. Enumerable.Range(0, 4000).Select(i => spread.AtShare((i + 0.5) / 4000))];
        Assert.Equal(mean, days.Average(), 0.002);
        Assert.Equal(sd, days.PopulationStandardDeviation(), 0.002);
        Assert.InRange(days.Min(), Math.Min(0.14, mean - sd) - 1e-9, mean);
        Assert.InRange(days.Max(), mean, Math.Max(0.70, mean + sd) + 1e-9);
    }

    private static (double Dark, double LowSdK, double MeanSdK)[] MonthsOf(Winter winter)
    {
        var days = WinterDays.Of(winter);
        var clear = WinterBuilder.DailyClearness(winter.Place, winter.Start.AddHours(winter.WarmUpHours), winter.GlobalWPerM2[winter.WarmUpHours..]);
        return
        [
            .. Enumerable.Range(0, days.Count).GroupBy(d => winter.Start.AddHours(days.FirstHour(d)).Month).Select(month => (
                month.Count(d => clear[d] < 0.25) / (double)month.Count(),
                month.Select(d => days.LowC[d]).PopulationStandardDeviation(),
                month.Select(d => days.MeanC[d]).PopulationStandardDeviation())),
        ];
    }
}
