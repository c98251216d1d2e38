using System.Numerics;

namespace DesignSearch.Search.Space;

/// <summary>
/// Counts the different canonical points without visiting them. Only the variables that a condition really reads are branched
/// on; all others are factors.
/// </summary>
internal static class SpaceSize
{
    public static BigInteger Count(Variable[] variables) => Count(variables, null);

    /// <summary>Whether there are no more points than that, which a glance tells of most large spaces: counting ends as soon as it is passed.</summary>
    public static bool IsAtMost(Variable[] variables, BigInteger limit) => Count(variables, limit) <= limit;

    // Exact up to the limit; beyond it anything that is greater.
    private static BigInteger Count(Variable[] variables, BigInteger? limit) => Count(variables, limit, new PartialPoint(variables.Length), 0, BigInteger.One);

    private static BigInteger Count(Variable[] variables, BigInteger? limit, PartialPoint reader, int from, BigInteger factor)
    {
        for (var i = from; i < variables.Length; i++)
        {
            // A branch never holds fewer points than its factor, since each variable has a level at least.
            if (factor > limit)
                return factor;
            var awake = reader.Ask(variables[i], out var missing);
            if (missing >= 0)
            {
                var sum = BigInteger.Zero;
                for (var level = 0; level < variables[missing].Levels && !(sum > limit); level++)
                {
                    var branch = reader.Copy();
                    branch.Set(missing, level);
                    sum += Count(variables, limit, branch, i, factor / variables[missing].Levels);
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
