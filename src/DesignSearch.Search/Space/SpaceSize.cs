using System.Numerics;

namespace DesignSearch.Search;

/// <summary>
/// Counts the different canonical points without visiting them. Only the variables that a condition really reads are branched
/// on; all others are factors.
/// </summary>
internal static class SpaceSize
{
    public static BigInteger Count(Variable[] variables) => Count(variables, new Reader(variables.Length), 0, BigInteger.One);

    private static BigInteger Count(Variable[] variables, Reader reader, int from, BigInteger factor)
    {
        for (var i = from; i < variables.Length; i++)
        {
            var awake = reader.Ask(variables[i], out var missing);
            if (missing >= 0)
            {
                var sum = BigInteger.Zero;
                for (var level = 0; level < variables[missing].Levels; level++)
                {
                    var branch = reader.Copy();
                    branch.Set(missing, level);
                    sum += Count(variables, branch, i, factor / variables[missing].Levels);
                }

                return sum;
            }

            if (awake)
                factor *= variables[i].Levels;
            else
                reader.Set(i, 0);
        }

        return factor;
    }

    private sealed class Reader(int count) : IReadOnlyList<double>
    {
        private double[] values = [.. Enumerable.Repeat(double.NaN, count)];
        private int missing;

        public int Count => values.Length;

        public double this[int index]
        {
            get
            {
                if (!double.IsNaN(values[index]))
                    return values[index];
                missing = missing < 0 ? index : missing;
                return 0;
            }
        }

        public bool Ask(Variable variable, out int firstMissing)
        {
            missing = -1;
            var awake = variable.AwakeWhen?.Invoke(this) ?? true;
            firstMissing = missing;
            return awake;
        }

        public void Set(int index, double value) => values[index] = value;

        public Reader Copy() => new(values.Length) { values = [.. values] };

        public IEnumerator<double> GetEnumerator()
        {
            for (var i = 0; i < values.Length; i++)
                yield return this[i];
        }

        System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
