using DesignSearch.Fitting.Model;
using DesignSearch.Fitting.Nights;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace DesignSearch.Fitting.Estimate;

/// <summary>
/// Figures of a house from nights, or from days: least squares after Levenberg and Marquardt of measured against predicted air, with every night the weight of one
/// reading, and the priors as further readings.
/// </summary>
/// <param name="model">The house with its log.</param>
/// <param name="nights">The nights, or days, to fit, one at least.</param>
/// <param name="priors">What is sought, the chief figure first.</param>
/// <param name="toPoint">The figures of the model from the logarithms sought, each against its usual value.</param>
/// <param name="usualScatterK">What is taken of a night's scatter before any is seen [K].</param>
internal sealed class GroupFit(FitModel model, IReadOnlyList<Night> nights, IReadOnlyList<Prior> priors, Func<double[], FitPoint> toPoint, double usualScatterK)
{
    private const double Step = 0.04;
    private const int MostRounds = 60;

    // How many nights' worth the scatter is that was taken before any was seen.
    private const double ScatterNights = 2;

    private static readonly Prior[] OfLoss = [Prior.Loss, Prior.Store, Prior.Coupling];

    /// <summary>Loss, inner store and its coupling from nights.</summary>
    public static GroupFit Loss(FitModel model, IReadOnlyList<Night> nights) => new(
        model, nights, OfLoss, p => new(Math.Exp(p[0]), Prior.Store.Usual * Math.Exp(p[1]), Prior.Coupling.Usual * Math.Exp(p[2]), 1), NightScatterK);

    /// <summary>The sun from days, all else held.</summary>
    public static GroupFit Sun(FitModel model, IReadOnlyList<Night> days, FitPoint house, double scatterK) =>
        new(model, days, [Prior.Sun], p => house with { Sun = Math.Exp(p[0]) }, scatterK);

    private const double NightScatterK = 0.35;

    private readonly (int Hour, int Night)[] rows =
        [.. nights.SelectMany((n, i) => n.Hours.Where(h => !double.IsNaN(model.Log.InsideC[h])).Select(h => (h, i)))];

    private readonly int[] hoursOf = [.. nights.Select(n => n.Hours.Count(h => !double.IsNaN(model.Log.InsideC[h])))];
    private readonly bool[] free = model.FreeIn(nights);
    private Vector<double>? at;
    private Vector<double> values = null!;
    private Matrix<double> slopes = null!;

    /// <summary>Fits.</summary>
    public GroupFound Run()
    {
        var guess = Vector<double>.Build.Dense(priors.Count);
        var scatter = usualScatterK;
        GroupFound found = null!;
        for (var round = 0; round < 2; round++)
        {
            guess = Minimum(guess, scatter);
            found = Found(guess, scatter);
            var squares = found.NightMeansK.Sum(r => r * r) + ScatterNights * usualScatterK * usualScatterK;
            scatter = Math.Sqrt(squares / Math.Max(1, nights.Count - 1 + ScatterNights));
        }

        return Found(guess, scatter);
    }

    private FitPoint Point(Vector<double> p) => toPoint([.. p]);

    private Vector<double> Minimum(Vector<double> guess, double scatterK)
    {
        var weights = Vector<double>.Build.Dense(rows.Length + priors.Count, r => r < rows.Length
            ? 1 / (scatterK * scatterK * HoursOf(rows[r].Night))
            : 1 / (priors[r - rows.Length].Spread * priors[r - rows.Length].Spread));
        var observed = Vector<double>.Build.Dense(rows.Length + priors.Count, r => r < rows.Length ? model.Log.InsideC[rows[r].Hour] : 0);
        var places = Vector<double>.Build.Dense(observed.Count, r => r);
        // It weighs what it is given in place.
        var objective = ObjectiveFunction.NonlinearModel((p, _) => At(p).Values.Clone(), (p, _) => At(p).Slopes.Clone(), places, observed, weights);
        return new LevenbergMarquardtMinimizer(gradientTolerance: 1e-8, stepTolerance: 1e-6, functionTolerance: 1e-8, maximumIterations: MostRounds)
            .FindMinimum(objective, guess).MinimizingPoint;
    }

    private int HoursOf(int night) => hoursOf[night];

    // All differences in one pass: the point itself, and either side of it along each figure.
    private (Vector<double> Values, Matrix<double> Slopes) At(Vector<double> p)
    {
        if (at is not null && at.Equals(p))
            return (values, slopes);
        var points = new List<FitPoint> { Point(p) };
        for (var i = 0; i < p.Count; i++)
        {
            foreach (var step in new[] { Step, -Step })
            {
                var moved = p.Clone();
                moved[i] += step;
                points.Add(Point(moved));
            }
        }

        var air = model.Air(points, free);
        values = Vector<double>.Build.Dense(rows.Length + p.Count, r => r < rows.Length ? air[0][rows[r].Hour] : p[r - rows.Length]);
        slopes = Matrix<double>.Build.Dense(rows.Length + p.Count, p.Count, (r, c) => r < rows.Length
            ? (air[1 + 2 * c][rows[r].Hour] - air[2 + 2 * c][rows[r].Hour]) / (2 * Step)
            : r - rows.Length == c ? 1 : 0);
        at = p.Clone();
        return (values, slopes);
    }

    private GroupFound Found(Vector<double> p, double scatterK)
    {
        var (air, slope) = At(p);
        var information = Matrix<double>.Build.DenseOfDiagonalArray([.. priors.Select(f => 1 / (f.Spread * f.Spread))]);
        var (means, own) = (new double[nights.Count], new double[nights.Count]);
        var weight = new double[nights.Count];
        for (var n = 0; n < nights.Count; n++)
        {
            var hours = HoursOf(n);
            var (along, square) = (0.0, 0.0);
            for (var r = 0; r < rows.Length; r++)
            {
                if (rows[r].Night != n)
                    continue;
                var row = slope.Row(r);
                information += row.OuterProduct(row) / (scatterK * scatterK * hours);
                var missed = model.Log.InsideC[rows[r].Hour] - air[r];
                means[n] += missed / hours;
                along += row[0] * missed;
                square += row[0] * row[0];
            }

            (own[n], weight[n]) = (square > 0 ? along / square : 0, Math.Sqrt(square / hours));
        }

        return new(Point(p), [.. p], information.Inverse(), means, weight, own);
    }
}
