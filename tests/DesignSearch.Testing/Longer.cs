namespace DesignSearch.Testing;

/// <summary>
/// How long the tests go on that could go on for ever. One variable decides: DESIGNSEARCH_LONG is 1 on the build machine, and every loop has its long size there;
/// without it each has a small one. A loop's own variable sets that one alone, for runs by hand.
/// </summary>
public static class Longer
{
    /// <summary>True where DESIGNSEARCH_LONG is 1.</summary>
    public static bool IsOn { get; } = Environment.GetEnvironmentVariable("DESIGNSEARCH_LONG") is "1";

    /// <summary>How many of something are tried.</summary>
    /// <param name="variable">The variable that says so.</param>
    /// <param name="usual">Without it.</param>
    /// <param name="longer">Without it where DESIGNSEARCH_LONG is 1.</param>
    public static int Many(string variable, int usual, int longer) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), out var n) ? n : IsOn ? longer : usual;
}
