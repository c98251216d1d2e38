using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Design;

/// <summary>What the catalogue lacks, in words.</summary>
internal static class NeedsWords
{
    /// <summary>A small part that nothing serves.</summary>
    public static string SmallPart(SmallPartRole role, double volts, double amperes)
    {
        var voltage = volts > 0 ? Written.Sentence($" for {volts:0} V") : "";
        var current = amperes > 0 ? Written.Sentence($" and {amperes:0.0} A") : "";
        return $"a small part of role '{role}'{voltage}{current}";
    }
}
