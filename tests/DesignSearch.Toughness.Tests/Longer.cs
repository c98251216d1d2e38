namespace DesignSearch.Toughness.Tests;

/// <summary>How long the tests of this project go on: a few minutes by hand, several times as long where DESIGNSEARCH_LONG is 1, and as said by a variable of their own, as on the build machine.</summary>
internal static class Longer
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
