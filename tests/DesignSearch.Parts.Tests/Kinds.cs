using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Tests;

/// <summary>Every kind of part that a record of the assembly defines, by the names of their files.</summary>
internal static class Kinds
{
    public static IReadOnlyList<PartKind> All { get; } =
    [
        .. typeof(IPart).Assembly.GetTypes()
            .Where(t => t.IsAssignableTo(typeof(IPart)) && !t.IsAbstract)
            .Select(t => (PartKind)t.GetProperty("Definition")!.GetValue(null)!)
            .OrderBy(k => k.File, StringComparer.Ordinal),
    ];
}
