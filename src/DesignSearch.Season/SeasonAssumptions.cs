namespace DesignSearch.Season;

/// <summary>The numbers an honest modeller could choose otherwise; each is an entry of the scenario's [assumptions].</summary>
public sealed record SeasonAssumptions
{
    /// <summary>The values used when the scenario says nothing.</summary>
    public static SeasonAssumptions Default { get; } = new();
}
