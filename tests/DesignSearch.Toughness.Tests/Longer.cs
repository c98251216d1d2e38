namespace DesignSearch.Toughness.Tests;

/// <summary>How long the tests of this project go on: a few minutes by hand, long where DESIGNSEARCH_LONG is 1, as on the build machine, and as said by a variable of their own.</summary>
internal static class Longer
{
    /// <summary>True on the build machine.</summary>
    public static bool IsOn { get; } = Environment.GetEnvironmentVariable("DESIGNSEARCH_LONG") is "1";

    /// <summary>How many of something are tried.</summary>
    /// <param name="variable">The variable that says so.</param>
    /// <param name="usual">Without it.</param>
    /// <param name="build">Without it on the build machine.</param>
    public static int Many(string variable, int usual, int build) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), out var n) ? n : IsOn ? build : usual;
}
