using DesignSearch.Layouts.Tests;

namespace DesignSearch.Toughness.Tests;

/// <summary>
/// The sample with a season of a month, few layouts ranked and few unseen winters: every file of a search is written as usual, in a third of the time. For tests of
/// what becomes of files and processes, to which the length of a winter is nothing.
/// </summary>
internal static class ShortWinter
{
    public static SmallScenario Make() => new(("start = \"11-01\"", "start = \"12-20\""), ("end = \"03-31\"", "end = \"01-20\""), ("ranked = 6", "ranked = 3\nunseen_winters = 4"));

    /// <summary>The sample as it is but for few unseen winters.</summary>
    public static SmallScenario WithFewUnseen() => new(("ranked = 6", "ranked = 6\nunseen_winters = 4"));
}
