using System.Text.RegularExpressions;
using DesignSearch.Layouts.Tests;
using DesignSearch.Testing;

namespace DesignSearch.Toughness.Tests;

/// <summary>
/// The sample with a season of a month, few layouts ranked and few unseen winters: every file of a search is written as usual, in a third of the time. For tests of
/// what becomes of files and processes, to which the length of a winter is nothing.
/// </summary>
internal static class ShortWinter
{
    public static SmallScenario Make() => new(("start = \"11-01\"", "start = \"12-20\""), ("end = \"03-31\"", "end = \"01-20\""), Few("ranked = 3", 4));

    /// <summary>The sample as it is but for few unseen winters.</summary>
    public static SmallScenario WithFewUnseen() => new(Few("ranked = 6", 4));

    /// <summary>The change that ranks as said and judges by so many unseen winters, whatever the sample says of them.</summary>
    public static (string From, string To) Few(string ranked, int unseen)
    {
        var text = File.ReadAllText(Repository.At("runs", "sample-finished", "scenario.toml"));
        return (Regex.Match(text, @"(?m)^ranked = 6(\nunseen_winters = [0-9]+)?").Value, FormattableString.Invariant($"{ranked}\nunseen_winters = {unseen}"));
    }
}
