using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads what stands in the house.</summary>
internal static class ContentsReading
{
    public const string Key = "contents";

    private static readonly string Expected = "a list of " + string.Join(", ", HouseContents.Words.Select(w => $"\"{w}\"")) + ", each once, or [] for an empty house";

    public static IReadOnlyList<HouseContents>? Of(TomlTable table)
    {
        if (table.Find(Key) is not { } value)
            return null;
        var named = value.Kind == TomlKind.List ? value.Items : [value];
        var found = named.Select(i => i.Kind == TomlKind.Text ? HouseContents.All.FirstOrDefault(c => c.Word == i.Text) : null).ToList();
        if (value.Kind == TomlKind.List && found.TrueForAll(c => c is not null) && found.Distinct().Count() == found.Count)
            return [.. HouseContents.All.Where(found.Contains)];
        table.Fault(value, Expected);
        return null;
    }
}
