using DesignSearch.Search.Space;

namespace DesignSearch.Search.Model;

/// <summary>
/// Turns a point into the few features that are not zero: a constant, one for each variable's level (or two for the knots beside
/// a value where a variable has many), a straight line for what is ordered, and one for each pair of levels where pairs are not too many.
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

    private readonly int[] slots;
    private readonly int[] starts;
    private readonly int[] lines;
    private readonly bool[] smooth;
    private readonly int[] pairStarts;
    private readonly double[] lows;
    private readonly double[] shares;
    private readonly int[] slot;
    private readonly double[] part;
    private readonly double pairWeight;

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
        Size = 1;
        for (var i = 0; i < n; i++)
        {
            var variable = space.Variables[i];
            smooth[i] = variable.Kind == VariableKind.Real || (variable.Kind == VariableKind.Ordered && variable.Levels > MostLevels);
            slots[i] = variable.Kind == VariableKind.Real ? KnotsOfReals(n) : smooth[i] ? KnotsOfLevels : variable.Levels;
            starts[i] = Size;
            Size += slots[i];
            lines[i] = variable.Kind == VariableKind.Category || slots[i] < 3 ? -1 : Size++;
        }

        var active = Enumerable.Range(0, n).Sum(i => Enumerable.Range(0, i).Sum(j => (smooth[i] ? 2 : 1) * (smooth[j] ? 2 : 1)));
        pairStarts = [];
        Most = 1 + (3 * n);
        if (active > MostPairs)
            return;
        Most += active;
        pairWeight = Math.Sqrt(2.0 / n);
        pairStarts = new int[n * n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < i; j++)
            {
                pairStarts[(i * n) + j] = Size;
                Size += slots[i] * slots[j];
            }
        }
    }

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
                (index[count], value[count++]) = (starts[i] + slot[i], 1 - part[i]);
                (index[count], value[count++]) = (starts[i] + slot[i] + 1, part[i]);
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

    private static int KnotsOfReals(int variables) =>
        variables < 2 ? MostKnots : Math.Clamp((int)Math.Round(Math.Sqrt(PairWeights / (variables * (variables - 1) / 2.0))), LeastKnots, MostKnots);

    private int Pairs(Span<int> index, Span<double> value, int count)
    {
        var n = slots.Length;
        for (var i = 1; i < n; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var at = pairStarts[(i * n) + j] + (slot[i] * slots[j]) + slot[j];
                if (!smooth[i] && !smooth[j])
                {
                    (index[count], value[count++]) = (at, pairWeight);
                    continue;
                }

                double a = smooth[i] ? part[i] : 0, b = smooth[j] ? part[j] : 0;
                (index[count], value[count++]) = (at, pairWeight * (1 - a) * (1 - b));
                if (smooth[i])
                    (index[count], value[count++]) = (at + slots[j], pairWeight * a * (1 - b));
                if (smooth[j])
                    (index[count], value[count++]) = (at + 1, pairWeight * (1 - a) * b);
                if (smooth[i] && smooth[j])
                    (index[count], value[count++]) = (at + slots[j] + 1, pairWeight * a * b);
            }
        }

        return count;
    }
}
