using System.Numerics;

namespace DesignSearch.Search.Space;

/// <summary>
/// The points that variables span. Every point has one canonical form: reals inside their bounds, levels whole and in range,
/// sleepers at their first level or lower bound. Points that differ only in sleepers are the same point.
/// </summary>
public sealed class SearchSpace
{
    private readonly Variable[] variables;
    private readonly Lazy<BigInteger?> size;

    /// <summary>Takes the variables in their order.</summary>
    /// <param name="variables">One or more, names unique, at least one level each, bounds in order and finite.</param>
    /// <exception cref="ArgumentException">A variable breaks those rules; every breach is named.</exception>
    public SearchSpace(IReadOnlyList<Variable> variables)
    {
        ArgumentNullException.ThrowIfNull(variables);
        this.variables = [.. variables];
        var faults = new List<string>();
        if (variables.Count == 0)
            faults.Add("a space needs at least one variable");
        foreach (var twin in variables.GroupBy(v => v.Name, StringComparer.Ordinal).Where(g => g.Count() > 1))
            faults.Add($"the name '{twin.Key}' stands for {twin.Count()} variables");
        foreach (var variable in variables)
        {
            if (variable.Kind == VariableKind.Real && !(double.IsFinite(variable.Low) && double.IsFinite(variable.High) && variable.Low < variable.High))
                faults.Add(FormattableString.Invariant($"'{variable.Name}' runs from {variable.Low} to {variable.High}; expected two finite bounds, the lower first"));
            if (variable.Kind != VariableKind.Real && variable.Levels < 1)
                faults.Add(FormattableString.Invariant($"'{variable.Name}' has {variable.Levels} levels; expected 1 or more"));
        }

        if (faults.Count > 0)
            throw new ArgumentException(string.Join("; ", faults), nameof(variables));
        size = new(() => IsFinite ? SpaceSize.Count(this.variables) : null);
    }

    /// <summary>The variables in their order.</summary>
    public IReadOnlyList<Variable> Variables => variables;

    /// <summary>Number of variables.</summary>
    public int Count => variables.Length;

    /// <summary>Whether no variable is real.</summary>
    public bool IsFinite => Array.TrueForAll(variables, v => v.Kind != VariableKind.Real);

    /// <summary>Number of different canonical points; null where a variable is real.</summary>
    public BigInteger? Size => size.Value;

    /// <summary>Whether every variable is finite and there are no more points than that; far cheaper than <see cref="Size"/> where there are many more.</summary>
    /// <param name="limit">How many.</param>
    public bool HoldsAtMost(BigInteger limit) => IsFinite && SpaceSize.IsAtMost(variables, limit);

    /// <summary>Whether a variable is awake at a point whose earlier values are canonical.</summary>
    /// <param name="variable">Its place, from 0.</param>
    /// <param name="point">One value per variable.</param>
    public bool IsAwake(int variable, IReadOnlyList<double> point) => variables[variable].AwakeWhen?.Invoke(point) ?? true;

    /// <summary>Brings a point into canonical form, in place.</summary>
    /// <param name="point">One value per variable; not a number counts as the lower bound.</param>
    public void Canonicalise(double[] point)
    {
        ArgumentNullException.ThrowIfNull(point);
        for (var i = 0; i < variables.Length; i++)
        {
            var (variable, low) = (variables[i], LowOf(i));
            // At its lowest a variable rests already, whether it sleeps or not.
            if (!(point[i] > low) || (variable.AwakeWhen is { } awake && !awake(point)))
                point[i] = low;
            else
                point[i] = variable.Kind == VariableKind.Real ? Math.Min(point[i], variable.High) : Math.Min(Math.Round(point[i]), variable.Levels - 1);
        }
    }

    /// <summary>The key of a canonical point.</summary>
    /// <param name="point">One value per variable, canonical.</param>
    public static PointKey KeyOf(ReadOnlySpan<double> point)
    {
        ulong high = 0x243F6A8885A308D3, low = 0x13198A2E03707344;
        foreach (var value in point)
        {
            var bits = (ulong)BitConverter.DoubleToInt64Bits(value + 0.0);
            high = Math.BigMul(high ^ bits, 0x9E3779B97F4A7C15, out var rest) ^ rest;
            low = BitOperations.RotateLeft(low ^ (bits * 0xD6E8FEB86659FD93), 29) * 0xBF58476D1CE4E5B9;
            low ^= low >> 32;
        }

        return new(Scramble(high ^ (low << 1)), Scramble(low + 1) | 1);
    }

    /// <summary>Every different canonical point, the last variable running fastest. Each comes as an array of its own.</summary>
    /// <exception cref="InvalidOperationException">A variable is real.</exception>
    public IEnumerable<double[]> Points()
    {
        if (!IsFinite)
            throw new InvalidOperationException("A space with a real variable cannot be enumerated.");
        return Walk();
    }

    /// <summary>Sets in a box of levels whatever is known sleeping to its first level.</summary>
    internal void Pin(int[] low, int[] high)
    {
        var known = new PartialPoint(low.Length);
        for (var i = 0; i < low.Length; i++)
        {
            if (variables[i].AwakeWhen is not null && !known.Ask(variables[i], out var missing) && missing < 0)
                low[i] = high[i] = 0;
            if (low[i] == high[i])
                known.Set(i, low[i]);
        }
    }

    internal double LowOf(int variable) => variables[variable].Kind == VariableKind.Real ? variables[variable].Low : 0;

    internal double HighOf(int variable) => variables[variable].Kind == VariableKind.Real ? variables[variable].High : variables[variable].Levels - 1;

    private IEnumerable<double[]> Walk()
    {
        var point = new double[variables.Length];
        while (true)
        {
            yield return [.. point];
            var at = variables.Length - 1;
            while (at >= 0 && !(point[at] + 1 < variables[at].Levels && IsAwake(at, point)))
                point[at--] = 0;
            if (at < 0)
                yield break;
            point[at]++;
        }
    }

    private static ulong Scramble(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
