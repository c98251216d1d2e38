namespace DesignSearch.Reporting.Words;

/// <summary>Says what could not be made.</summary>
internal static class Unmade
{
    /// <summary>A sentence about one thing.</summary>
    public static string Sentence(string what, Exception why) => $"{what} could not be made ({why.GetType().Name}: {PlainText.Cut(why.Message, 200)}).";
}
