namespace DesignSearch.Layouts.Assess.Problem;

/// <summary>What a search makes as small as it can, in words.</summary>
internal static class ObjectiveWords
{
    public const string LifeCost = "life cost";
    public const string Frost = "frost degree-hours";
}
