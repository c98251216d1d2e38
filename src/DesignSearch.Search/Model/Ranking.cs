using DesignSearch.Search.Archive;
using DesignSearch.Search.Engine;
using DesignSearch.Search.Moves;
using DesignSearch.Search.Space;

namespace DesignSearch.Search.Model;

/// <summary>
/// Says which of several points not yet evaluated promises most: predicts their figures with a ridge model, takes those that the
/// screen knows exactly from there, and asks what the front would gain. Between the knots of a real variable the model is coarse; there
/// only what it says of the difference between a point and its parents is believed, and the parents' own figures are the ground.
/// </summary>
internal sealed class Ranking
{
    private const int Needed = 60;
    private const double Optimism = 0.5;
    private const double Reach = 1.1;
    private const long FirstSettled = 200;
    private const long BetweenPasses = 200;
    private const long BetweenWeighings = 1000;
    private const int Passes = 4;
    private const int MostMembers = 300;
    private const int Steps = 10;

    // Where reals meet kinds, the model has far more to learn from as many points: it catches up more often and twice each time, and keeps to the
    // straight scale further behind the front, so that what is drawn anywhere teaches too.
    private const int FineSteps = 30;
    private const long BetweenFineWeighings = 500;
    private const int FineWeighings = 2;
    private const double FineBend = 5;
    private const double Far = 3;
    private const double BeyondCounts = 0.3;

    private readonly int objectives;
    private readonly FrontArchive archive;
    private readonly RidgeModel model;
    private readonly bool[] learned;
    private readonly bool isUnpaired;
    private readonly bool isCoarse;
    private readonly bool isFine;
    private readonly double bend;
    private readonly double[] ideal;
    private readonly double[] width;
    private readonly double[] error;
    private readonly bool[] needed;
    private readonly double[] predicted;
    private readonly double[] ofParent;
    private readonly double[] ofDescent;
    private readonly double[] scaled;
    private double[][] front = [];
    private bool stale = true;
    private long due = FirstSettled;

    public Ranking(SearchSpace space, FrontArchive archive, int objectives)
    {
        (this.archive, this.objectives) = (archive, objectives);
        var features = new Features(space);
        model = new(features, objectives + 1);
        isUnpaired = !features.HasPairs;
        learned = new bool[objectives + 1];
        Climber = new(space, features, model, this, learned);
        Array.Fill(learned, Climber.IsOfUse, 0, objectives);
        isFine = Enumerable.Range(0, space.Count).Any(features.IsFine);
        bend = isFine ? FineBend : 1;
        isCoarse = space.Variables.Any(v => v.Kind == VariableKind.Real);
        ideal = new double[objectives];
        width = new double[objectives];
        error = new double[objectives];
        needed = new bool[objectives + 1];
        predicted = new double[objectives + 1];
        ofParent = new double[objectives + 1];
        ofDescent = new double[objectives + 1];
        scaled = new double[objectives];
    }

    /// <summary>Looks for new points within the model.</summary>
    public Climber Climber { get; }

    /// <summary>Whether enough is known to rank by.</summary>
    public bool Ready => model.Count >= Needed && archive.Count >= 2;

    /// <summary>What the front gains by these figures, as a share of the box that it spans; falls below 0 with the distance behind it.</summary>
    public double Gain(ReadOnlySpan<double> figures)
    {
        Refresh();
        for (var k = 0; k < objectives; k++)
            scaled[k] = Scale(k, figures[k]);
        return Score(scaled);
    }

    /// <summary>How much a point promises; higher is better.</summary>
    public double Promise(ReadOnlySpan<double> point, ReadOnlySpan<double> bounds, Descent descent)
    {
        Refresh();
        model.Predict(point, predicted, needed);
        GroundOf(descent, ofDescent);
        for (var k = 0; k < objectives; k++)
        {
            predicted[k] += ofDescent[k];
            var low = double.IsFinite(bounds[k]) ? Scale(k, bounds[k]) : double.NegativeInfinity;
            scaled[k] = !needed[k] ? low : Math.Max(predicted[k] - (Optimism * error[k]), low);
        }

        var score = Score(scaled);
        if (!needed[objectives])
            return score;
        var likely = Math.Clamp(1.2 - (1.4 * predicted[objectives]), 0.02, 1);
        return score > 0 ? score * likely : score - 1 + likely;
    }

    /// <summary>Learns from an evaluated point, before the archive takes it.</summary>
    public void Learn(EvaluatedPoint point, ReadOnlySpan<double> bounds)
    {
        var figures = point.Evaluation.Objectives;
        if (Ready)
        {
            Refresh();
            model.Predict(point.Point, predicted, needed);
            for (var k = 0; k < objectives; k++)
            {
                var off = Math.Min(Math.Abs(predicted[k] - Scale(k, figures[k])), 1);
                error[k] = (0.95 * error[k]) + (0.05 * off);
            }
        }

        var violation = point.Evaluation.TotalViolation;
        needed[objectives] |= violation > 0;
        for (var k = 0; k < objectives; k++)
            needed[k] |= bounds[k] != figures[k];
        for (var k = 0; k <= objectives; k++)
            learned[k] |= needed[k];
        model.Add(point.Point, [.. figures, violation]);
        if (archive.Count >= 2)
        {
            Refresh();
            model.Improve(isFine ? FineSteps : Steps, Scale, learned);
            if (point.Index + 1 >= due)
                Settle(point.Index + 1);
        }
    }

    // A few steps a point leave the model behind what is known. From time to time it catches up: where levels have pairs, with those that matter
    // counting for more; where there are too many for pairs, as it is.
    private void Settle(long evaluations)
    {
        for (var weighing = 0; Climber.IsOfUse && weighing < (isFine ? FineWeighings : 1); weighing++)
            model.Reweigh(Scale, learned);
        if (isUnpaired)
            model.Improve(Passes * model.Count, Scale, learned);
        due = evaluations + (isFine ? Math.Min(evaluations / 2, BetweenFineWeighings) : Math.Min(evaluations, isUnpaired ? BetweenPasses : BetweenWeighings));
    }

    /// <summary>What is to be added to predictions because the model misses the parents; nothing where it is not coarse.</summary>
    public void GroundOf(Descent descent, Span<double> figures)
    {
        Refresh();
        figures.Clear();
        if (!isCoarse)
            return;
        Ground(descent.First, 1 - descent.ShareOfSecond, figures);
        Ground(descent.Second, descent.ShareOfSecond, figures);
    }

    private void Ground(EvaluatedPoint? parent, double share, Span<double> figures)
    {
        if (parent is null || share <= 0)
            return;
        model.Predict(parent.Point, ofParent, learned);
        for (var k = 0; k < objectives; k++)
        {
            if (learned[k])
                figures[k] += share * (Scale(k, parent.Evaluation.Objectives[k]) - ofParent[k]);
        }
    }

    /// <summary>To be called when the archive changed.</summary>
    public void FrontMoved() => stale = true;

    // Scaled so that the front spans 0 … 1; far behind it distances count by their logarithm. The violation counts as met or missed.
    private double Scale(int figure, double value)
    {
        if (figure == objectives)
            return value > 0 ? 1 : 0;
        var share = (value - ideal[figure]) / width[figure];
        return share > bend ? Math.Min(bend + Math.Log(share - bend + 1), bend + 3) : share;
    }

    private void Refresh()
    {
        if (!stale || archive.Count < 2)
            return;
        stale = false;
        if (objectives == 2)
        {
            double[] left = archive[0].Evaluation.Objectives, right = archive[archive.Count - 1].Evaluation.Objectives;
            (ideal[0], ideal[1]) = (left[0], right[1]);
            (width[0], width[1]) = (right[0] - left[0], left[1] - right[1]);
            return;
        }

        for (var k = 0; k < objectives; k++)
        {
            double low = double.PositiveInfinity, high = double.NegativeInfinity;
            for (var i = 0; i < archive.Count; i++)
            {
                var value = archive[i].Evaluation.Objectives[k];
                (low, high) = (Math.Min(low, value), Math.Max(high, value));
            }

            (ideal[k], width[k]) = (low, high > low ? high - low : 1);
        }

        // A few hundred members stand for a large front.
        front = new double[Math.Min(archive.Count, MostMembers)][];
        for (var i = 0; i < front.Length; i++)
        {
            front[i] = new double[objectives];
            for (var k = 0; k < objectives; k++)
                front[i][k] = Scale(k, archive[(int)((long)i * archive.Count / front.Length)].Evaluation.Objectives[k]);
        }
    }

    private double At(int place, int figure) => (archive[place].Evaluation.Objectives[figure] - ideal[figure]) / width[figure];

    /// <summary>What the front gains by scaled figures; falls below 0 with the distance behind it.</summary>
    public double Score(double[] figures) => objectives == 2 ? Area(figures[0], figures[1]) : Margin(figures);

    // The area that is new in the box up to 1.1; where there is none, how far below the front's step the point would have to lie.
    private double Area(double first, double second)
    {
        int low = 0, high = archive.Count;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (At(middle, 0) <= first)
                low = middle + 1;
            else
                high = middle;
        }

        var ceiling = low > 0 ? At(low - 1, 1) : Reach;
        if (second >= ceiling || first >= Reach)
            return isFine && Beyond(first, second) is var beyond and > 0 ? beyond : ceiling - second - Math.Max(0, first - Reach);
        var area = 0.0;
        var left = first;
        for (var i = low; ; i++)
        {
            var right = i < archive.Count ? At(i, 0) : Reach;
            area += (Math.Min(right, Reach) - left) * (ceiling - second);
            if (i == archive.Count || At(i, 1) <= second)
                return area;
            (left, ceiling) = (right, At(i, 1));
        }
    }

    // Past an end of the front that was found: other kinds may lead on from there, though they lie outside its box.
    private static double Beyond(double first, double second)
    {
        double before = first < 0 && second < Far ? -first * (Far - second) : 0, below = second < 0 && first < Far ? -second * (Far - first) : 0;
        return BeyondCounts * Math.Max(before, below);
    }

    private double Margin(double[] figures)
    {
        var least = double.PositiveInfinity;
        foreach (var member in front)
        {
            var most = double.NegativeInfinity;
            for (var k = 0; k < objectives; k++)
                most = Math.Max(most, member[k] - figures[k]);
            least = Math.Min(least, most);
        }

        return least;
    }
}
