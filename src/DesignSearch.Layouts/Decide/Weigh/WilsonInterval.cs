namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>How sure a share is that few trials gave: the score interval of Wilson 1927, which Brown, Cai and DasGupta 2001 recommend for few trials.</summary>
public static class WilsonInterval
{
    // Two-sided 95 %.
    private const double Z = 1.959963984540054;

    /// <summary>The 95 % interval of a share.</summary>
    /// <param name="successes">Successes, 0 to <paramref name="trials"/>.</param>
    /// <param name="trials">Trials, 1 or more.</param>
    /// <returns>Its ends [0…1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">No trials, or more successes than trials.</exception>
    public static (double Low, double High) Of(int successes, int trials)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(successes);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(successes, trials);
        var (p, spread) = ((double)successes / trials, Z * Z / trials);
        var middle = (p + spread / 2) / (1 + spread);
        var half = Z / (1 + spread) * Math.Sqrt(p * (1 - p) / trials + spread / (4 * trials));
        return (successes == 0 ? 0 : middle - half, successes == trials ? 1 : middle + half);
    }
}
