using System.Numerics;

namespace DesignSearch.Search.Space;

/// <summary>
/// Counts the different canonical points without visiting them. Only the variables that a condition really reads are branched
/// on; all others are factors.
/// </summary>
internal static class SpaceSize
{
    public static BigInteger Count(Variable[] variables) => Count(variables, new PartialPoint(variables.Length), 0, BigInteger.One);

    private static BigInteger Count(Variable[] variables, PartialPoint reader, int from, BigInteger factor)
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
}
