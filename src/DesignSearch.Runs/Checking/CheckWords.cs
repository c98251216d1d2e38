using DesignSearch.Layouts.Words;

namespace DesignSearch.Runs.Checking;

/// <summary>What is said of lines that can be read and may still not be meant.</summary>
internal static class CheckWords
{
    private const double Thousand = 1000;

    public static string Grouped(string key, string number, int line, double value) => Written.Sentence(
        $"Line {line}: {key} = {number} is {value:0.###}, with a decimal point.",
        $"Was {value * Thousand:0} meant? Then write {value * Thousand:0}.");

    public static string Copied(string example, IReadOnlyList<(string Key, int Line)> lines)
    {
        var named = Written.Joined([.. lines.Select(l => Written.Sentence($"{l.Key} (line {l.Line})"))]);
        return $"Still as in the example '{example}': {named}. Are they yours?";
    }
}
