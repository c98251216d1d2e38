namespace DesignSearch.Climate.Winters;

/// <summary>The lowest temperature that was seen at the place, and in how many years.</summary>
/// <param name="LowestC">[°C].</param>
/// <param name="Years">Years watched; under 1.5 count as 1.5.</param>
public sealed record KnownLowest(double LowestC, double Years = 10);
