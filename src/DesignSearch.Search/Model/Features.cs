using DesignSearch.Search.Space;

namespace DesignSearch.Search.Model;

/// <summary>
/// Turns a point into the few features that are not zero: a constant, one for each variable's level (or two for the knots beside a value
/// where a variable has many), a straight line for what is ordered, and one for each pair of levels. Where pairs are too many for that, what has many
/// levels has a smooth curve, a quadratic B-spline: with as many variables no knot lies near every one's best place.
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

    // What is left to a pair that seemed not to matter.
    private const double Floor = 0.02;

    private readonly int[] slots;
    private readonly bool isCurved;
    private readonly int[] starts;
    private readonly int[] lines;
    private readonly bool[] smooth;
    private readonly int[] pairStarts;
    private readonly double[] lows;
    private readonly double[] shares;
    private readonly int[] slot;
    private readonly double[] part;
    private readonly double[] scales = [];
    private readonly int[] pairOf = [];
    private readonly int[] cells = [];

    public Features(SearchSpace space)
    {
        var n = space.Count;
        slots = new int[n];
        starts = new int[n];
        lines = new int[n];
        smooth = new bool[n];
        lows = [.. Enumerable.Range(0, n).Select(space.LowOf)];
        shares = [.. Enumerable.Range(0, n).Select(i => space.HighOf(i) > lows[i] ? 1 / (space.HighOf(i) - lows[i]) : 0)];
        slot = new int[n];
        part = new double[n];
        for (var i = 0; i < n; i++)
            smooth[i] = space.Variables[i].Kind == VariableKind.Real || (space.Variables[i].Kind == VariableKind.Ordered && space.Variables[i].Levels > MostLevels);
        var active = Enumerable.Range(0, n).Sum(i => Enumerable.Range(0, i).Sum(j => (smooth[i] ? 2 : 1) * (smooth[j] ? 2 : 1)));
        isCurved = active > MostPairs;
        Size = 1;
        for (var i = 0; i < n; i++)
        {
            var variable = space.Variables[i];
            slots[i] = variable.Kind == VariableKind.Real ? KnotsOfReals(n) : smooth[i] ? KnotsOfLevels : variable.Levels;
            var own = smooth[i] && isCurved ? slots[i] + 1 : slots[i];
            starts[i] = Size;
            Size += own;
            lines[i] = variable.Kind == VariableKind.Category || slots[i] < 3 ? -1 : Size++;
        }

        pairStarts = [];
        Most = 1 + (4 * n);
        if (active > MostPairs)
            return;
        Most += active;
        pairStarts = new int[n * n];
        scales = [.. Enumerable.Repeat(Math.Sqrt(2.0 / n), n * n)];
        cells = new int[n * n];
        var owners = Enumerable.Repeat(-1, Size).ToList();
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < i; j++)
            {
                pairStarts[(i * n) + j] = Size;
                cells[(i * n) + j] = slots[i] * slots[j];
                owners.AddRange(Enumerable.Repeat((i * n) + j, slots[i] * slots[j]));
                Size += slots[i] * slots[j];
            }
        }

        pairOf = [.. owners];
    }

    /// <summary>Whether pairs have weights.</summary>
    public bool HasPairs => pairStarts.Length > 0;

    /// <summary>Features in all.</summary>
    public int Size { get; }

    /// <summary>Features of one point at most.</summary>
    public int Most { get; }

    /// <summary>Writes the features of a point that are not zero and says how many they are.</summary>
    public int Of(ReadOnlySpan<double> point, Span<int> index, Span<double> value)
    {
        var n = slots.Length;
        index[0] = 0;
        value[0] = 1;
        var count = 1;
        for (var i = 0; i < n; i++)
        {
            var at = point[i];
            if (smooth[i])
            {
                var knot = (at - lows[i]) * shares[i] * (slots[i] - 1);
                slot[i] = Math.Min((int)knot, slots[i] - 2);
                part[i] = knot - slot[i];
                if (isCurved)
                {
                    var (own, t) = Curve(i, at);
                    (index[count], value[count++]) = (starts[i] + own, 0.5 * (1 - t) * (1 - t));
                    (index[count], value[count++]) = (starts[i] + own + 1, 0.5 + (t * (1 - t)));
                    (index[count], value[count++]) = (starts[i] + own + 2, 0.5 * t * t);
                }
                else
                {
                    (index[count], value[count++]) = (starts[i] + slot[i], 1 - part[i]);
                    (index[count], value[count++]) = (starts[i] + slot[i] + 1, part[i]);
                }
            }
            else
            {
                slot[i] = (int)at;
                (index[count], value[count++]) = (starts[i] + slot[i], 1);
            }

            if (lines[i] >= 0)
                (index[count], value[count++]) = (lines[i], (2 * (at - lows[i]) * shares[i]) - 1);
        }

        return pairStarts.Length == 0 ? count : Pairs(index, value, count);
    }

    /// <summary>
    /// Lets pairs that turned out to matter count for more and the others for less, all together for as much as before: each by the size of what
    /// the models hold of it. A model of twelve kinds has sixty-six pairs, of which mostly a dozen matter.
    /// </summary>
    public void Reweigh(IReadOnlyList<double[]> models)
    {
        var sizes = new double[scales.Length];
        foreach (var weight in models)
        {
            var whole = 0.0;
            var own = new double[scales.Length];
            for (var f = 0; f < pairOf.Length; f++)
            {
                if (pairOf[f] < 0)
                    continue;
                var part = scales[pairOf[f]] * weight[f];
                own[pairOf[f]] += part * part;
                whole += part * part;
            }

            for (var pair = 0; pair < sizes.Length && whole > 0; pair++)
                sizes[pair] += cells[pair] == 0 ? 0 : own[pair] / whole / cells[pair];
        }

        var n = slots.Length;
        double sum = sizes.Sum(), total = 2.0 / n * (n * (n - 1) / 2);
        for (var pair = 0; pair < scales.Length && sum > 0; pair++)
            scales[pair] = Math.Sqrt((Floor * 2.0 / n) + ((1 - Floor) * total * sizes[pair] / sum));
    }

    /// <summary>Levels of a variable whose levels stand for themselves; 0 for one that is smooth.</summary>
    public int LevelsOf(int variable) => smooth[variable] ? 0 : slots[variable];

    /// <summary>Whether a variable's levels stand for themselves.</summary>
    public bool IsLevelled(int variable) => !smooth[variable];

    /// <summary>What a model predicts for each level of a variable that has levels, the others standing as in a point, but for a constant.</summary>
    public void Along(int variable, ReadOnlySpan<double> point, ReadOnlySpan<double> weight, Span<double> line)
    {
        var n = slots.Length;
        for (var s = 0; s < slots[variable]; s++)
            line[s] = weight[starts[variable] + s] + (lines[variable] < 0 ? 0 : weight[lines[variable]] * ((2.0 * s / (slots[variable] - 1)) - 1));
        for (var j = 0; j < n && HasPairs; j++)
        {
            if (j == variable)
                continue;
            var (at, share) = Slot(j, point[j]);
            var first = Math.Max(j, variable);
            var scale = scales[(first * n) + Math.Min(j, variable)];
            var (start, own, other) = first == variable
                ? (pairStarts[(variable * n) + j] + at, slots[j], 1)
                : (pairStarts[(j * n) + variable] + (at * slots[variable]), 1, slots[variable]);
            for (var s = 0; s < slots[variable]; s++)
            {
                var cell = start + (s * own);
                line[s] += scale * (share == 0 ? weight[cell] : ((1 - share) * weight[cell]) + (share * weight[cell + other]));
            }
        }
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

    private int Pairs(Span<int> index, Span<double> value, int count)
    {
        var n = slots.Length;
        for (var i = 1; i < n; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var scale = scales[(i * n) + j];
                var at = pairStarts[(i * n) + j] + (slot[i] * slots[j]) + slot[j];
                if (!smooth[i] && !smooth[j])
                {
                    (index[count], value[count++]) = (at, scale);
                    continue;
                }

                double a = smooth[i] ? part[i] : 0, b = smooth[j] ? part[j] : 0;
                (index[count], value[count++]) = (at, scale * (1 - a) * (1 - b));
                if (smooth[i])
                    (index[count], value[count++]) = (at + slots[j], scale * a * (1 - b));
                if (smooth[j])
                    (index[count], value[count++]) = (at + 1, scale * (1 - a) * b);
                if (smooth[i] && smooth[j])
                    (index[count], value[count++]) = (at + slots[j] + 1, scale * a * b);
            }
        }

        return count;
    }
}
