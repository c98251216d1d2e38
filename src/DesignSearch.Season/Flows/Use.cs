namespace DesignSearch.Season.Flows;

/// <summary>Something that is paid by the kilowatt-hour. It is booked apart from heat: a heater books the electricity here and its heat as a <see cref="Flow"/>.</summary>
/// <param name="Id">Small letters and hyphens, of no other use.</param>
/// <param name="Words">What a person calls it.</param>
/// <param name="IsHeat">True for electricity that is bought to heat, false for pumps, fans and the like.</param>
public sealed record Use(string Id, string Words, bool IsHeat);
