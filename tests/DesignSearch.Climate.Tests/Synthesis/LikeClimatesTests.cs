using DesignSearch.Climate.Stations;
using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Winters;
using DesignSearch.Testing;
using MathNet.Numerics.LinearAlgebra;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Spreads of days at places of which the means alone are known.</summary>
public sealed class LikeClimatesTests
{
    private const string Source = "monthly statistics of 596 sites of the public typical-year set TMY3 (NSRDB 1991-2005), worked out for this project";
    private static readonly int[] Cold = [10, 11, 0, 1, 2];
    private static readonly Station[] Sites = [.. StationTable.All.Where(s => s.Spread is not null)];

    [Fact]
    public void The_table_holds_every_station()
    {
        Assert.Equal(1011, StationTable.All.Count);
        Assert.Equal(596, Sites.Length);
        Assert.All(StationTable.All, s => Assert.All(s.Months, m => Assert.True(m.MeanDailyLowC < m.MeanC)));
        var nearest = StationTable.Nearest(36.1, -79.95, 1)[0];
        Assert.Contains("Greensboro", nearest.Place.Name, StringComparison.Ordinal);
        Assert.Equal(-4.0, nearest.Months[0].LowestHourC, 0.06);
    }

    [Fact]
    public void A_site_left_out_is_told_by_the_others()
    {
        double[] truth = [.. Sites.Select(s => Winter(s.Spread!.MeanSdK))];
        var misses = LeaveOneOut(truth);
        var usual = truth.Average();
        Validation.Within("winter spread left out", "spread of the daily means November to March of a site that is left out, rms over 596 sites [K]", 0, 0.80, Rms(misses), Source, "LikeClimates.At");
        Assert.True(Rms(misses) < 0.5 * Rms(truth.Select(t => t - usual)), $"one value for all: {Rms(truth.Select(t => t - usual)):0.00}");
        Assert.InRange(misses.Average(), -0.05, 0.05);
        Assert.InRange(truth.Min(), 0.6, 0.8);
        Assert.InRange(truth.Max(), 9.5, 10.5);
    }

    // What is proved is what runs: a fit without the site says the same as the short way.
    [Fact]
    public void Leaving_out_by_algebra_is_leaving_out()
    {
        double[] lows = [.. Sites.Select(s => s.Spread!.LowSdK[0])];
        var misses = LeaveOneOut(lows);
        foreach (var i in (int[])[17, 301])
        {
            var site = Sites[i];
            var without = new LikeClimates([.. Sites.Where(s => s != site)]).At(site.Place, site.Months);
            Assert.Equal(lows[i] - misses[i], without.Spread.LowSdK[0], 0.02);
        }
    }

    [Fact]
    public void The_year_is_turned_south_of_the_equator()
    {
        var north = new MonthlyClimate(new("", 44, 12, 600, 1), Sites[100].Months);
        var south = north with { Place = north.Place with { LatitudeDeg = -44 }, Months = [.. north.Months.Skip(6), .. north.Months.Take(6)] };
        var (a, b) = (LikeClimates.Table.At(north.Place, north.Months).Spread, LikeClimates.Table.At(south.Place, south.Months).Spread);
        Assert.Equal(a.MeanSdK[0], b.MeanSdK[6], 0.25);
        Assert.True(a.MeanSdK[0] > a.MeanSdK[6]);
    }

    [Fact]
    public void A_builders_own_figures_beat_the_table()
    {
        var site = Sites[40];
        var plain = UsualDays.Of(new(site.Place with { LatitudeDeg = site.Place.LatitudeDeg + 1 }, site.Months), new());
        var climate = new MonthlyClimate(site.Place, [.. site.Months.Select(m => m with { DailyMeanSdK = 2 })]);
        var own = UsualDays.Of(climate, new() { Known = new(-30, 20), YearlyLowestSdK = 3 });
        Assert.All(own.Spread.MeanSdK, s => Assert.Equal(2, s));
        Assert.Equal(2 * site.Spread!.LowSdK[0] / site.Spread.MeanSdK[0], own.Spread.LowSdK[0], 1e-9);
        Assert.Equal(ReturnLevels.MeanOfYearly(-30, 20, 3), own.LowestC, 1e-9);
        Assert.Contains("the builder's own", own.Origin, StringComparison.Ordinal);
        Assert.Contains("-30", own.Origin, StringComparison.Ordinal);
        Assert.Contains("like climate", plain.Origin, StringComparison.Ordinal);
    }

    [Fact]
    public void The_coldest_night_is_the_one_that_is_wanted()
    {
        Station[] some = [.. Sites.Where((_, i) => i % 40 == 7)];
        var misses = some.Select(site => Enumerable.Range(1, 10).Average(s =>
            WinterMaker.Synthetic(new(site.Place, site.Months), new(11, 1, 3, 31), WinterKind.Typical, (ulong)s, new()).AirC.Min()) - site.LowestC).ToArray();
        Validation.Within("winter coldest night", "coldest hour of made winters less that of the station's typical year, mean of 10 seeds, rms of 15 sites [K]", 0, 1.5, Rms(misses), Source, "WinterMaker.Synthetic");
    }

    private static double Winter(IReadOnlyList<double> months) => Math.Sqrt(Cold.Average(m => months[m] * months[m]));

    private static double Rms(IEnumerable<double> misses) => Math.Sqrt(misses.Average(m => m * m));

    // Both regressions without one site each, by taking its row and column out of the inverse (Rasmussen and Williams 2006, section 5.4.2).
    private static double[] LeaveOneOut(double[] truth)
    {
        var like = new LikeClimates(Sites);
        var n = truth.Length;
        var mean = truth.Average();
        var y = Vector<double>.Build.Dense(n, i => truth[i] - mean);
        var (k, near) = (like.Likenesses(), like.Nearnesses());
        var a = (k + LikeClimates.OwnVariance * Matrix<double>.Build.DenseIdentity(n)).Inverse();
        var b = (near + LikeClimates.OwnVarianceNearby * Matrix<double>.Build.DenseIdentity(n)).Inverse();
        var weights = a * y;
        return
        [
            .. Enumerable.Range(0, n).Select(i =>
            {
                var w = weights - a.Column(i) * (weights[i] / a[i, i]);
                w[i] = 0;
                var rest = b * (LikeClimates.OwnVariance * w);
                rest -= b.Column(i) * (rest[i] / b[i, i]);
                rest[i] = 0;
                return y[i] - k.Row(i) * w - near.Row(i) * rest;
            }),
        ];
    }
}
