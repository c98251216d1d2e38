using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>What a stage of building adds, in words.</summary>
internal static class StageWords
{
    public static string Adds(IEnumerable<string> parts, bool withElectrics) =>
        string.Join(", ", parts) + (withElectrics ? ", with the electrics it needs" : "");

    public static string Part(string part, double? count, string comesWith) =>
        part + (count is null ? "" : Written.Sentence($" ({count:0} of them)")) + comesWith;
}
