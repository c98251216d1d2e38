using DesignSearch.Search.Space;

namespace DesignSearch.Search.Model;

/// <summary>
/// Turns a point into the few features that are not zero: a constant, one for each variable's level (or two for the knots beside a value
/// where a variable has many), a straight line for what is ordered, and one for each pair of levels. Where pairs are too many for that, what has many
/// levels has a smooth curve, a quadratic B-spline: with as many variables no knot lies near every one's best place. Where reals meet kinds, a real has a
/// <see cref="FineCurve"/>, and one more for each level of a kind.
/// </summary>
internal sealed class Features
{
    private const int MostLevels = 12;
    private const int KnotsOfLevels = 9;
    private const int LeastKnots = 5;
    private const int MostKnots = 13;

    // Weights of all pairs of reals together, about: with few variables the knots lie close, with many they smooth.
    private const double PairWeights = 500;
    private const int MostPairs = 600;

    // Beside fine curves two reals together count for little at first.
    private const double TwoReals = 0.3;

    private readonly int n;
    private readonly int[] slots;
    private readonly bool isCurved;
    private readonly bool isFine;
    private readonly int[] starts;
    private readonly int[] lines;
    private readonly bool[] smooth;
    private readonly double[] lows;
    private readonly double[] shares;
    private readonly FineCurve[] fine = [];
    private readonly int[] slot;
    private readonly double[] part;
    private readonly FeaturePairs pairs;

    public Features(SearchSpace space)
    {
        n = space.Count;
        (slots, starts, lines, smooth) = (new int[n], new int[n], new int[n], new bool[n]);
        lows = [.. Enumerable.Range(0, n).Select(space.LowOf)];
        shares = [.. Enumerable.Range(0, n).Select(i => space.HighOf(i) > lows[i] ? 1 / (space.HighOf(i) - lows[i]) : 0)];
        (slot, part) = (new int[n], new double[n]);
        for (var i = 0; i < n; i++)
            smooth[i] = space.Variables[i].Kind == VariableKind.Real || (space.Variables[i].Kind == VariableKind.Ordered && space.Variables[i].Levels > MostLevels);
        var active = Enumerable.Range(0, n).Sum(i => Enumerable.Range(0, i).Sum(j => (smooth[i] ? 2 : 1) * (smooth[j] ? 2 : 1)));
        isCurved = active > MostPairs;
        isFine = !isCurved && smooth.Contains(false) && space.Variables.Any(v => v.Kind == VariableKind.Real);
        if (isFine)
            fine = [.. Enumerable.Range(0, n).Select(_ => new FineCurve())];
        Size = 1;
        for (var i = 0; i < n; i++)
        {
            var variable = space.Variables[i];
            slots[i] = variable.Kind == VariableKind.Real ? KnotsOfReals(n) : smooth[i] ? KnotsOfLevels : variable.Levels;
            starts[i] = Size;
            Size += !smooth[i] ? slots[i] : isFine ? FineCurve.Size : isCurved ? slots[i] + 1 : slots[i];
            lines[i] = variable.Kind == VariableKind.Category || slots[i] < 3 ? -1 : Size++;
        }

        Most = 1 + ((isFine ? FineCurve.Active + 1 : 4) * n);
        var made = new List<FeaturePair>();
        for (var i = 0; i < n && !isCurved; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var isMixed = isFine && smooth[i] != smooth[j];
                var one = new FeaturePair(i, j, Size, isMixed ? FineCurve.Size * (smooth[i] ? slots[j] : slots[i]) : slots[i] * slots[j], isMixed)
                {
                    Scale = Math.Sqrt(2.0 / n) * (isFine && smooth[i] && smooth[j] ? TwoReals : 1),
                };
                made.Add(one);
                Size += one.Cells;
                Most += isMixed ? FineCurve.Active : (smooth[i] ? 2 : 1) * (smooth[j] ? 2 : 1);
            }
        }

        pairs = new(n, made);
    }

    /// <summary>Whether pairs have weights.</summary>
    public bool HasPairs => pairs.Any;

    /// <summary>Features in all.</summary>
    public int Size { get; }

    /// <summary>Features of one point at most.</summary>
    public int Most { get; }

    /// <summary>Whether a variable has a fine curve.</summary>
    public bool IsFine(int variable) => isFine && smooth[variable];

    /// <summary>Writes the features of a point that are not zero and says how many they are.</summary>
    public int Of(ReadOnlySpan<double> point, Span<int> index, Span<double> value)
    {
        index[0] = 0;
        value[0] = 1;
        var count = 1;
        for (var i = 0; i < n; i++)
        {
            var at = point[i];
            if (smooth[i])
                count = Smooth(i, at, index, value, count);
            else
            {
                slot[i] = (int)at;
                (index[count], value[count++]) = (starts[i] + slot[i], 1);
            }

            if (lines[i] >= 0)
                (index[count], value[count++]) = (lines[i], (2 * (at - lows[i]) * shares[i]) - 1);
        }

        foreach (var pair in pairs.Used)
            count = OfPair(pair, index, value, count);
        return count;
    }

    /// <inheritdoc cref="FeaturePairs.Reweigh"/>
    public double[] Reweigh(IReadOnlyList<double[]> models) => pairs.Reweigh(models, Size);

    /// <inheritdoc cref="FeaturePairs.UseAll"/>
    public void UseAll() => pairs.UseAll();

    /// <inheritdoc cref="FeaturePairs.Prune"/>
    public void Prune() => pairs.Prune();

    /// <summary>Levels of a variable whose levels stand for themselves; 0 for one that is smooth.</summary>
    public int LevelsOf(int variable) => smooth[variable] ? 0 : slots[variable];

    /// <summary>Whether a variable's levels stand for themselves.</summary>
    public bool IsLevelled(int variable) => !smooth[variable];

    /// <summary>The reals that matter together with a variable that has levels.</summary>
    public IEnumerable<int> FineBeside(int variable)
    {
        foreach (var pair in pairs.Of(variable))
        {
            if (pair.IsMixed && pairs.AreTogether(pair))
                yield return pair.Other(variable);
        }
    }

    /// <summary>What a model predicts for each level of a variable that has levels, the others standing as in a point, but for a constant.</summary>
    public void Along(int variable, ReadOnlySpan<double> point, ReadOnlySpan<double> weight, Span<double> line)
    {
        for (var s = 0; s < slots[variable]; s++)
            line[s] = weight[starts[variable] + s] + (lines[variable] < 0 ? 0 : weight[lines[variable]] * ((2.0 * s / (slots[variable] - 1)) - 1));
        foreach (var pair in pairs.Of(variable))
        {
            var j = pair.Other(variable);
            if (pair.IsMixed)
            {
                fine[j].At((point[j] - lows[j]) * shares[j]);
                for (var s = 0; s < slots[variable]; s++)
                    line[s] += pair.Scale * fine[j].Sum(weight[(pair.Start + (s * FineCurve.Size))..]);
                continue;
            }

            var (at, share) = Slot(j, point[j]);
            var (start, own, other) = pair.First == variable ? (pair.Start + at, slots[j], 1) : (pair.Start + (at * slots[variable]), 1, slots[variable]);
            for (var s = 0; s < slots[variable]; s++)
            {
                var cell = start + (s * own);
                line[s] += pair.Scale * (share == 0 ? weight[cell] : ((1 - share) * weight[cell]) + (share * weight[cell + other]));
            }
        }
    }

    /// <summary>What a model predicts at the places of a grid along a variable that has a fine curve, the others standing as in a point, but for a constant.</summary>
    /// <param name="variable">The variable.</param>
    /// <param name="point">Where the others stand, canonical.</param>
    /// <param name="weight">The model.</param>
    /// <param name="grid">The places.</param>
    /// <param name="without">A variable whose pair with this one is left out; negative for none.</param>
    /// <param name="line">Filled, a value for each place.</param>
    public void Along(int variable, ReadOnlySpan<double> point, ReadOnlySpan<double> weight, FineGrid grid, int without, Span<double> line)
    {
        Span<double> sums = stackalloc double[FineCurve.Size];
        Span<double> knots = stackalloc double[slots[variable]];
        weight.Slice(starts[variable], FineCurve.Size).CopyTo(sums);
        knots.Clear();
        var hasKnots = false;
        foreach (var pair in pairs.Of(variable))
        {
            var j = pair.Other(variable);
            if (j == without)
                continue;
            if (pair.IsMixed)
            {
                var start = pair.Start + ((int)point[j] * FineCurve.Size);
                for (var f = 0; f < FineCurve.Size; f++)
                    sums[f] += pair.Scale * weight[start + f];
                continue;
            }

            var (at, share) = Slot(j, point[j]);
            hasKnots = true;
            for (var s = 0; s < slots[variable]; s++)
            {
                var (cell, other) = pair.Second == variable ? (pair.Start + (at * slots[variable]) + s, slots[variable]) : (pair.Start + (s * slots[j]) + at, 1);
                knots[s] += pair.Scale * (((1 - share) * weight[cell]) + (share * weight[cell + other]));
            }
        }

        var slope = lines[variable] < 0 ? 0 : weight[lines[variable]];
        for (var place = 0; place < FineGrid.Places; place++)
        {
            line[place] = grid.Sum(place, sums) + (slope * ((2 * grid.Share(place)) - 1));
            if (!hasKnots)
                continue;
            var knot = grid.Share(place) * (slots[variable] - 1);
            var at = Math.Min((int)knot, slots[variable] - 2);
            line[place] += ((1 - knot + at) * knots[at]) + ((knot - at) * knots[at + 1]);
        }
    }

    /// <summary>Adds what a model holds of a level together with a variable that has a fine curve, at the places of a grid along that one.</summary>
    public void AddPair(int fineOne, int levelled, int level, ReadOnlySpan<double> weight, FineGrid grid, Span<double> line)
    {
        foreach (var pair in pairs.Of(levelled))
        {
            if (pair.Other(levelled) != fineOne)
                continue;
            var own = weight.Slice(pair.Start + (level * FineCurve.Size), FineCurve.Size);
            for (var place = 0; place < FineGrid.Places; place++)
                line[place] += pair.Scale * grid.Sum(place, own);
        }
    }

    private int Smooth(int variable, double at, Span<int> index, Span<double> value, int count)
    {
        (slot[variable], part[variable]) = Slot(variable, at);
        if (isFine)
        {
            var curve = fine[variable];
            curve.At((at - lows[variable]) * shares[variable]);
            for (var f = 0; f < FineCurve.Active; f++)
                (index[count], value[count++]) = (starts[variable] + curve.Index[f], curve.Value[f]);
            return count;
        }

        if (!isCurved)
        {
            (index[count], value[count++]) = (starts[variable] + slot[variable], 1 - part[variable]);
            (index[count], value[count++]) = (starts[variable] + slot[variable] + 1, part[variable]);
            return count;
        }

        var (own, t) = Curve(variable, at);
        (index[count], value[count++]) = (starts[variable] + own, 0.5 * (1 - t) * (1 - t));
        (index[count], value[count++]) = (starts[variable] + own + 1, 0.5 + (t * (1 - t)));
        (index[count], value[count++]) = (starts[variable] + own + 2, 0.5 * t * t);
        return count;
    }

    private int OfPair(FeaturePair pair, Span<int> index, Span<double> value, int count)
    {
        var (i, j, scale) = (pair.First, pair.Second, pair.Scale);
        if (pair.IsMixed)
        {
            var (curve, level) = smooth[i] ? (fine[i], slot[j]) : (fine[j], slot[i]);
            var start = pair.Start + (level * FineCurve.Size);
            for (var f = 0; f < FineCurve.Active; f++)
                (index[count], value[count++]) = (start + curve.Index[f], scale * curve.Value[f]);
            return count;
        }

        var at = pair.Start + (slot[i] * slots[j]) + slot[j];
        if (!smooth[i] && !smooth[j])
        {
            (index[count], value[count++]) = (at, scale);
            return count;
        }

        double a = smooth[i] ? part[i] : 0, b = smooth[j] ? part[j] : 0;
        (index[count], value[count++]) = (at, scale * (1 - a) * (1 - b));
        if (smooth[i])
            (index[count], value[count++]) = (at + slots[j], scale * a * (1 - b));
        if (smooth[j])
            (index[count], value[count++]) = (at + 1, scale * (1 - a) * b);
        if (smooth[i] && smooth[j])
            (index[count], value[count++]) = (at + slots[j] + 1, scale * a * b);
        return count;
    }

    // The part of a smooth curve that a value lies on, and how far along it, 0 … 1.
    private (int At, double Share) Curve(int variable, double value)
    {
        var parts = slots[variable] - 1;
        var at = (value - lows[variable]) * shares[variable] * parts;
        var part = Math.Min((int)at, parts - 1);
        return (part, at - part);
    }

    private (int At, double Share) Slot(int variable, double value)
    {
        if (!smooth[variable])
            return ((int)value, 0);
        var knot = (value - lows[variable]) * shares[variable] * (slots[variable] - 1);
        var at = Math.Min((int)knot, slots[variable] - 2);
        return (at, knot - at);
    }

    private static int KnotsOfReals(int variables) =>
        variables < 2 ? MostKnots : Math.Clamp((int)Math.Round(Math.Sqrt(PairWeights / (variables * (variables - 1) / 2.0))), LeastKnots, MostKnots);
}
