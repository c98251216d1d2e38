namespace DesignSearch.Layouts.Design.Brief;

/// <summary>What is wanted of the winters of a scenario, in words.</summary>
internal static class WinterWords
{
    public const string WholeSeason = "weather that covers the whole season and its warm-up, or a whole year";
}
