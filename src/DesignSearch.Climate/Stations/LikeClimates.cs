using DesignSearch.Climate.Winters;
using MathNet.Numerics.LinearAlgebra;

namespace DesignSearch.Climate.Stations;

/// <summary>
/// How days differ at a place of which only the means are known: a regression on stations of like climate, then what it leaves over at the
/// stations of the neighbourhood, where there are any. Both are Gaussian processes (Rasmussen and Williams 2006, chapter 2): the first over
/// <see cref="ClimateFeatures"/>, the second over the way between places, so that far from every station only the climate speaks.
/// </summary>
internal sealed class LikeClimates
{
    /// <summary>Variance that a station's one year has of its own, in units of the variance among stations.</summary>
    internal const double OwnVariance = 0.4;

    /// <summary>The same against what the first regression leaves over.</summary>
    internal const double OwnVarianceNearby = 0.6;

    private const double FeatureReach = 6;
    private const double NearbyKm = 500;
    private const int MonthsOfYear = 12;
    private static readonly Lazy<LikeClimates> OfTable = new(() => new([.. StationTable.All.Where(s => s.Spread is not null)]));

    private readonly IReadOnlyList<Station> stations;
    private readonly double[][] features;
    private readonly double[] featureMean;
    private readonly double[] featureSd;
    private readonly double[] targetMean;
    private readonly double[] targetSd;
    private readonly Matrix<double> likeWeights;
    private readonly Matrix<double> nearWeights;

    /// <summary>Fits the regression.</summary>
    /// <param name="stations">Stations with their spread, two or more.</param>
    public LikeClimates(IReadOnlyList<Station> stations)
    {
        this.stations = stations;
        double[][] raw = [.. stations.Select(s => ClimateFeatures.Of(s.Place, s.Months))];
        (featureMean, featureSd) = Moments(raw);
        features = [.. raw.Select(r => Scaled(r, featureMean, featureSd))];
        double[][] targets = [.. stations.Select(Targets)];
        (targetMean, targetSd) = Moments(targets);
        var scaled = Matrix<double>.Build.DenseOfRowArrays(targets.Select(t => Scaled(t, targetMean, targetSd)));
        likeWeights = Solved(Likenesses(), OwnVariance, scaled);
        nearWeights = Solved(Nearnesses(), OwnVarianceNearby, OwnVariance * likeWeights);
    }

    /// <summary>The regression on the program's own table; fitted at the first call.</summary>
    public static LikeClimates Table => OfTable.Value;

    /// <summary>What the days of a place most likely do.</summary>
    /// <param name="place">The place.</param>
    /// <param name="months">Its twelve means.</param>
    /// <returns>Spreads by the calendar's months, and how far the lowest hour of a typical year lies under the lowest mean daily low [K].</returns>
    public (StationSpread Spread, double LowestDepthK) At(Place place, IReadOnlyList<MonthMeans> months)
    {
        var here = Scaled(ClimateFeatures.Of(place, months), featureMean, featureSd);
        var like = Vector<double>.Build.Dense(stations.Count, i => Likeness(here, features[i]));
        var near = Vector<double>.Build.Dense(stations.Count, i => Nearness(stations[i], place));
        double[] found = [.. (like * likeWeights + near * nearWeights).Select((t, i) => t * targetSd[i] + targetMean[i])];
        double[] Twelve(int kind, double least, double most) =>
            [.. Enumerable.Range(0, MonthsOfYear).Select(m => Math.Clamp(found[MonthsOfYear * kind + ClimateFeatures.Calendar(place, m)], least, most))];
        return (
            new(Twelve(0, 0.5, 12), Twelve(1, 0.5, 12), Twelve(2, 0.03, 0.25), Math.Clamp(found[36], 0.3, 0.85), Math.Clamp(found[37], -0.8, 0.4)),
            Math.Clamp(found[38], 1, 30));
    }

    /// <summary>Covariance of every station's climate with every other's, 1 for the same.</summary>
    internal Matrix<double> Likenesses() => Matrix<double>.Build.Dense(stations.Count, stations.Count, (i, j) => Likeness(features[i], features[j]));

    /// <summary>Covariance of every station with every other by the way between them, 1 for the same place.</summary>
    internal Matrix<double> Nearnesses() => Matrix<double>.Build.Dense(stations.Count, stations.Count, (i, j) => Nearness(stations[i], stations[j].Place));

    private static double Likeness(double[] a, double[] b)
    {
        var square = 0.0;
        for (var i = 0; i < a.Length; i++)
            square += (a[i] - b[i]) * (a[i] - b[i]);
        return Math.Exp(-square / (2 * FeatureReach * FeatureReach));
    }

    private static double Nearness(Station station, Place place) => Math.Exp(-station.DistanceKm(place.LatitudeDeg, place.LongitudeDeg) / NearbyKm);

    private static Matrix<double> Solved(Matrix<double> covariance, double own, Matrix<double> values) =>
        (covariance + own * Matrix<double>.Build.DenseIdentity(values.RowCount)).Cholesky().Solve(values);

    private static double[] Targets(Station station) =>
    [
        .. Turned(station, station.Spread!.MeanSdK), .. Turned(station, station.Spread.LowSdK), .. Turned(station, station.Spread.ClearnessSd),
        station.Spread.MeanLag, station.Spread.ClearLowTie, station.Months.Min(m => m.LowestHourC) - station.LowestC,
    ];

    private static IEnumerable<double> Turned(Station station, IReadOnlyList<double> months) => months.Select((_, m) => months[ClimateFeatures.Calendar(station.Place, m)]);

    private static (double[] Mean, double[] Sd) Moments(double[][] rows)
    {
        double[] mean = [.. rows[0].Select((_, i) => rows.Average(r => r[i]))];
        return (mean, [.. mean.Select((m, i) => Math.Max(1e-9, Math.Sqrt(rows.Average(r => (r[i] - m) * (r[i] - m)))))]);
    }

    private static double[] Scaled(double[] row, double[] mean, double[] sd) => [.. row.Select((x, i) => (x - mean[i]) / sd[i])];
}
