using DesignSearch.Search.Moves;
using DesignSearch.Search.Space;

namespace DesignSearch.Search.Model;

/// <summary>
/// Looks for new points within the model, where a look costs nothing: from a point on, one variable after another takes the level that the model
/// thinks best, the others standing, until none helps; a kind takes the reals that matter together with it along. The new point on the way by
/// which the front would gain most is remembered.
/// </summary>
internal sealed class Climber
{
    // Rounds over all variables at most.
    private const int MostRounds = 10;
    private const double LeastStep = 1e-9;
    private const double LeastWeight = 0.02;

    private readonly SearchSpace space;
    private readonly Features features;
    private readonly RidgeModel model;
    private readonly Ranking ranking;
    private readonly bool[] learned;
    private readonly int objectives;
    private readonly double[][] along;
    private readonly double[] now;
    private readonly double[] tried;
    private readonly double[] offset;
    private readonly double[] weights;
    private readonly FineGrid grid = new();
    private readonly bool hasFine;
    private readonly double[][] apart;
    private readonly double[] ground;
    private readonly double[][] figuresAt;
    private readonly double[][] pointAt;
    private readonly double[] saved;
    private bool isWorstCounted;
    private double[]? best;
    private double most;

    public Climber(SearchSpace space, Features features, RidgeModel model, Ranking ranking, bool[] learned)
    {
        (this.space, this.features, this.model, this.ranking, this.learned) = (space, features, model, ranking, learned);
        objectives = learned.Length - 1;
        IsOfUse = features.HasPairs && Enumerable.Range(0, space.Count).Any(features.IsLevelled);
        var most = Enumerable.Range(0, space.Count).Max(features.LevelsOf);
        hasFine = Enumerable.Range(0, space.Count).Any(features.IsFine);
        var widest = Math.Max(hasFine ? FineGrid.Places : 0, most);
        apart = [.. learned.Select(_ => new double[widest])];
        ground = new double[learned.Length];
        figuresAt = [.. Enumerable.Range(0, most).Select(_ => new double[learned.Length])];
        pointAt = [.. Enumerable.Range(0, most).Select(_ => new double[space.Count])];
        saved = new double[space.Count];
        along = [.. learned.Select(_ => new double[widest])];
        (now, tried, offset, weights) = (new double[learned.Length], new double[learned.Length], new double[learned.Length], new double[objectives]);
    }

    /// <summary>Whether there is anything to climb by: levels whose pairs the model knows.</summary>
    public bool IsOfUse { get; }

    /// <summary>The most promising new point on the way up from one; null where none was new. Changes the point.</summary>
    /// <param name="point">Where to start, canonical; it passes the screen.</param>
    /// <param name="met">What was met before.</param>
    /// <param name="passes">Asks the screen.</param>
    /// <param name="descent">Whom the start was made from.</param>
    /// <param name="random">Draws what counts on this climb.</param>
    public double[]? From(double[] point, PointSet met, Func<double[], bool> passes, Descent descent, ref SplitMixStream random)
    {
        ranking.GroundOf(descent, offset);
        for (var k = 0; k < objectives; k++)
        {
            // Even weights lead to the middle of the front, squared ones to its ends.
            var share = random.Unit();
            weights[k] = LeastWeight + (random.Below(2) == 0 ? share : share * share);
        }

        isWorstCounted = random.Below(2) == 0;
        if (hasFine)
            grid.Shift(random.Unit());
        Stand(point);
        (most, best) = (double.NegativeInfinity, null);
        var n = space.Count;
        for (int at = random.Below(n), still = 0, turn = 0; still < n && turn < MostRounds * n; at = (at + 1) % n, turn++)
            still = Move(point, at, met, passes) ? 0 : still + 1;
        return best;
    }

    private void Stand(double[] point)
    {
        model.Predict(point, now, learned);
        for (var k = 0; k < objectives; k++)
            now[k] += offset[k];
    }

    private bool Move(double[] point, int at, PointSet met, Func<double[], bool> passes)
    {
        if (features.IsFine(at))
            return space.IsAwake(at, point) && MoveReal(point, at, met, passes);
        if (features.LevelsOf(at) < 2 || !space.IsAwake(at, point))
            return false;
        if (hasFine && features.FineBeside(at).ToArray() is { Length: > 0 } reals)
            return MoveLinked(point, at, reals, met, passes);
        for (var k = 0; k <= objectives; k++)
        {
            if (learned[k])
                features.Along(at, point, model.Weights(k), along[k]);
        }

        var old = (int)point[at];
        var (chosen, least) = (old, Sum(now) - LeastStep);
        for (var level = 0; level < features.LevelsOf(at); level++)
        {
            if (level == old)
                continue;
            for (var k = 0; k <= objectives; k++)
                tried[k] = learned[k] ? now[k] + along[k][level] - along[k][old] : 0;
            double sum = Sum(tried), gain = Gain(tried);
            if (sum >= least && gain <= most)
                continue;
            point[at] = level;
            Consider(point, gain, met, passes);
            if (sum < least && passes(point))
                (chosen, least) = (level, sum);
            point[at] = old;
        }

        return Take(point, at, old, chosen);
    }

    // One real moves.
    private bool MoveReal(double[] point, int at, PointSet met, Func<double[], bool> passes)
    {
        for (var k = 0; k <= objectives; k++)
        {
            if (learned[k])
                features.Along(at, point, model.Weights(k), grid, -1, along[k]);
        }

        Ground(at, point[at]);
        var old = point[at];
        var (chosen, least) = (old, Sum(now) - LeastStep);
        for (var place = 0; place < FineGrid.Places; place++)
        {
            for (var k = 0; k <= objectives; k++)
                tried[k] = learned[k] ? now[k] + along[k][place] - ground[k] : 0;
            // With three and more objectives a gain is dear to work out.
            var sum = Sum(tried);
            var gain = objectives > 2 && sum >= least ? double.NegativeInfinity : Gain(tried);
            if (sum >= least && gain <= most)
                continue;
            point[at] = ValueAt(at, place);
            Consider(point, gain, met, passes);
            if (sum < least && passes(point))
                (chosen, least) = (point[at], sum);
            point[at] = old;
        }

        return Take(point, at, old, chosen);
    }

    private bool Take(double[] point, int at, double old, double chosen)
    {
        if (chosen == old)
            return false;
        point[at] = chosen;
        space.Canonicalise(point);
        Stand(point);
        return true;
    }

    // A kind moves, and with it the reals that matter together with it.
    private bool MoveLinked(double[] point, int at, int[] reals, PointSet met, Func<double[], bool> passes)
    {
        var levels = features.LevelsOf(at);
        var old = (int)point[at];
        for (var k = 0; k <= objectives; k++)
        {
            if (learned[k])
                features.Along(at, point, model.Weights(k), along[k]);
        }

        for (var level = 0; level < levels; level++)
        {
            for (var k = 0; k <= objectives; k++)
                figuresAt[level][k] = learned[k] ? now[k] + along[k][level] - along[k][old] : 0;
            point.CopyTo(pointAt[level], 0);
            pointAt[level][at] = level;
        }

        foreach (var real in reals)
        {
            if (!space.IsAwake(real, point))
                continue;
            for (var k = 0; k <= objectives; k++)
            {
                if (learned[k])
                    features.Along(real, point, model.Weights(k), grid, at, apart[k]);
            }

            for (var level = 0; level < levels; level++)
            {
                for (var k = 0; k <= objectives; k++)
                {
                    if (!learned[k])
                        continue;
                    apart[k].CopyTo(along[k], 0);
                    features.AddPair(real, at, level, model.Weights(k), grid, along[k]);
                }

                Ground(real, point[real]);
                var (best, least) = (-1, Sum(figuresAt[level]));
                for (var place = 0; place < FineGrid.Places; place++)
                {
                    for (var k = 0; k <= objectives; k++)
                        tried[k] = learned[k] ? figuresAt[level][k] + along[k][place] - ground[k] : 0;
                    var sum = Sum(tried);
                    if (sum < least)
                        (best, least) = (place, sum);
                }

                if (best < 0)
                    continue;
                for (var k = 0; k <= objectives; k++)
                    figuresAt[level][k] += learned[k] ? along[k][best] - ground[k] : 0;
                pointAt[level][real] = ValueAt(real, best);
            }
        }

        var (chosen, lowest) = (-1, Sum(now) - LeastStep);
        for (var level = 0; level < levels; level++)
        {
            double sum = Sum(figuresAt[level]), gain = Gain(figuresAt[level]);
            if (sum >= lowest && gain <= most)
                continue;
            space.Canonicalise(pointAt[level]);
            Consider(pointAt[level], gain, met, passes);
            if (sum < lowest && passes(pointAt[level]))
                (chosen, lowest) = (level, sum);
        }

        if (chosen < 0)
            return false;
        var before = Sum(now);
        point.CopyTo(saved, 0);
        pointAt[chosen].CopyTo(point, 0);
        Stand(point);
        if (Sum(now) < before - LeastStep)
            return true;
        saved.CopyTo(point, 0);
        Stand(point);
        return false;
    }

    // What the lines along a real say where it stands.
    private void Ground(int at, double value)
    {
        for (var k = 0; k <= objectives; k++)
            ground[k] = learned[k] ? grid.Between(along[k], (value - space.LowOf(at)) / (space.HighOf(at) - space.LowOf(at))) : 0;
    }

    private double ValueAt(int at, int place) => space.LowOf(at) + ((space.HighOf(at) - space.LowOf(at)) * grid.Share(place));

    private void Consider(double[] point, double gain, PointSet met, Func<double[], bool> passes)
    {
        if (gain <= most)
            return;
        var other = (double[])point.Clone();
        space.Canonicalise(other);
        if (!met.Contains(SearchSpace.KeyOf(other)) && passes(other))
            (best, most) = (other, gain);
    }

    private double Gain(double[] figures) => ranking.Score(figures) - Miss(figures);

    private double Miss(double[] figures) => learned[objectives] ? Math.Max(0, figures[objectives]) : 0;

    // Either a weighted sum of the figures, which leads to the corners of a front, or mostly the worst of them, which leads into its hollows too.
    private double Sum(double[] figures)
    {
        double sum = 0, worst = double.NegativeInfinity;
        for (var k = 0; k < objectives; k++)
        {
            sum += (isWorstCounted ? 0.05 : weights[k]) * figures[k];
            worst = Math.Max(worst, weights[k] * (figures[k] + 0.1));
        }

        return sum + (isWorstCounted ? worst : 0) + Miss(figures);
    }
}
