namespace DesignSearch.Parts.Catalogues;

/// <summary>Words in files for the values of an enumeration: TwoPosition is written two-position.</summary>
internal static class Words
{
    public static IReadOnlyList<(string Word, T Meaning)> Of<T>()
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(v => (Kebab(v.ToString()), v))];

    private static string Kebab(string name) =>
        string.Concat(name.Select((c, i) => (i > 0 && char.IsUpper(c) ? "-" : "") + char.ToLowerInvariant(c)));
}
