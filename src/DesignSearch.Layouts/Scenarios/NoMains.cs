using DesignSearch.Files.Toml;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>What a scenario without mains cannot say.</summary>
internal static class NoMains
{
    /// <summary>The key of [site] that says so.</summary>
    public const string Key = "no_mains";

    /// <summary>What is told of a key that speaks of mains.</summary>
    public const string Expected = "no such key: [site] says no_mains = true";

    /// <summary>What is told of a part that needs them.</summary>
    public const string ExpectedPart = "a part that does without mains: [site] says no_mains = true; for";

    /// <summary>A fault for each key that speaks of mains; <c>false</c> and 0 say nothing.</summary>
    /// <param name="table">The table.</param>
    /// <param name="keys">Its keys that speak of mains.</param>
    public static void Refuse(TomlTable table, params ReadOnlySpan<string> keys)
    {
        foreach (var key in keys)
        {
            if (table.Find(key) is { } value && !Denies(value))
                table.Fault(value, Expected);
        }
    }

    private static bool Denies(TomlValue value) => value.Kind switch
    {
        TomlKind.Flag => !value.Flag,
        TomlKind.Whole or TomlKind.Real => value.Number == 0,
        _ => false,
    };
}
