using DesignSearch.Climate.Stations;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>What a station's means are worth some way off, worked out from all pairs of the table.</summary>
public sealed class StationWorthTests
{
    private const string Source = "all pairs of the 1 011 sites of the public typical-year set TMY3 (NSRDB 1991-2005)";
    private const double HillsKm = 100;
    private static readonly int[] Cold = [10, 11, 0, 1, 2];
    private static readonly Lazy<List<(double Km, double HigherM, double MeanK, double LowK, double SunShare, Station A, Station B)>> All = new(() => [.. Pairs()]);

    public static TheoryData<double> Distances => [.. StationWorth.Steps.Select(s => s.UpToKm)];

    [Theory]
    [MemberData(nameof(Distances))]
    public void Stations_differ_as_it_is_said(double upToKm)
    {
        var step = StationWorth.At(upToKm)!;
        Assert.Equal(upToKm, step.UpToKm);
        var fromKm = StationWorth.Steps.Where(s => s.UpToKm < upToKm).Select(s => s.UpToKm).DefaultIfEmpty(0).Max();
        var pairs = All.Value.Where(p => p.Km > fromKm && p.Km <= upToKm && Math.Abs(p.HigherM) < StationWorth.SameHeightM).ToList();
        Assert.True(pairs.Count > 400, $"only {pairs.Count} pairs");
        Validation.Equal(
            FormattableString.Invariant($"stations apart {fromKm:000}-{upToKm:000} km, lows"),
            FormattableString.Invariant($"mean daily low, November to March, of two stations {fromKm:0} to {upToKm:0} km apart at like height, rms of {pairs.Count} pairs [K]"),
            Rms(pairs.Select(p => p.LowK)), step.LowK, 0.1, Source, "StationWorth.At");
        Validation.Equal(
            FormattableString.Invariant($"stations apart {fromKm:000}-{upToKm:000} km, sun"),
            FormattableString.Invariant($"sun on the level, November to March, of the same {pairs.Count} pairs, rms as a share"),
            Rms(pairs.Select(p => p.SunShare)), step.SunShare, 0.01, Source, "StationWorth.At");
    }

    [Fact]
    public void Higher_is_colder_as_it_is_said()
    {
        var pairs = All.Value.Where(p => p.Km < HillsKm && Math.Abs(p.HigherM) > 2 * StationWorth.SameHeightM).ToList();
        Assert.True(pairs.Count > 100, $"only {pairs.Count} pairs");
        var found = -pairs.Sum(p => p.MeanK * Math.Sign(p.HigherM)) / pairs.Sum(p => Math.Abs(p.HigherM));
        Validation.Equal(
            "stations apart in height", $"how much colder the winter mean is a kilometre higher up, {pairs.Count} pairs of stations within 100 km and over 300 m apart in height [K]",
            1000 * found, StationWorth.ColderK(1000), 0.1, Source, "StationWorth.ColderK");
    }

    // Why neither is given to a scenario but as a remark.
    [Fact]
    public void A_neighbours_one_year_tells_little_of_single_days()
    {
        var near = All.Value.Where(p => p.Km <= StationWorth.NearKm && Math.Abs(p.HigherM) < StationWorth.SameHeightM).ToList();
        Validation.Equal(
            "stations apart 000-050 km, lowest", $"lowest hour of the typical year of two stations up to 50 km apart at like height, rms of {near.Count} pairs [K]",
            Rms(near.Select(p => p.A.LowestC - p.B.LowestC)), 5.3, 0.2, Source, "docs/weather-files.md");
        var days = near.Where(p => p.A.Spread is not null && p.B.Spread is not null).ToList();
        Assert.True(days.Count > 100, $"only {days.Count} pairs");
        Validation.Equal(
            "stations apart 000-050 km, spread", $"spread of the daily means, November to March, of the {days.Count} of these pairs that have it, rms of the difference [K]",
            Rms(days.Select(p => Spread(p.A) - Spread(p.B))), 0.9, 0.05, Source, "docs/weather-files.md");
    }

    [Fact]
    public void Too_far_tells_nothing()
    {
        Assert.Null(StationWorth.At(800.1));
        Assert.Equal(1.7, StationWorth.At(0)!.LowK);
        Assert.Equal(-5.3, StationWorth.ColderK(-1000), 1e-9);
    }

    private static IEnumerable<(double Km, double HigherM, double MeanK, double LowK, double SunShare, Station A, Station B)> Pairs()
    {
        var far = StationWorth.Steps[^1].UpToKm;
        var figures = StationTable.All.Select(s => (s.Place, Of: s, Mean: Winter(s, m => m.MeanC), Low: Winter(s, m => m.LowestHourC), Sun: Winter(s, m => m.GhiKwhPerM2Day))).ToList();
        for (var i = 0; i < figures.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var (a, b) = (figures[i], figures[j]);
                // A degree of latitude is 111 km everywhere.
                if (Math.Abs(a.Place.LatitudeDeg - b.Place.LatitudeDeg) > far / 110 || a.Of.DistanceKm(b.Place.LatitudeDeg, b.Place.LongitudeDeg) is var km && km > far)
                    continue;
                yield return (km, a.Place.ElevationM - b.Place.ElevationM, a.Mean - b.Mean, a.Low - b.Low, 2 * (a.Sun - b.Sun) / (a.Sun + b.Sun), a.Of, b.Of);
            }
        }
    }

    private static double Winter(Station station, Func<Winters.MonthMeans, double> figure) => Cold.Average(m => figure(station.Months[m]));

    private static double Spread(Station station) => Math.Sqrt(Cold.Average(m => station.Spread!.MeanSdK[m] * station.Spread.MeanSdK[m]));

    private static double Rms(IEnumerable<double> values) => Math.Sqrt(values.Average(v => v * v));
}
