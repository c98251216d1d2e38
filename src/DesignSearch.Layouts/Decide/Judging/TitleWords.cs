namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>How a judged layout is named.</summary>
internal static class TitleWords
{
    public static string Full(string title, string apart) => apart.Length == 0 ? title : $"{title}; with {apart}";

    public static string Apart(IEnumerable<string> choices) => string.Join("; ", choices);

    public static string NoSuchPart(string id) => $"The catalogue has no '{id}'.";
}
