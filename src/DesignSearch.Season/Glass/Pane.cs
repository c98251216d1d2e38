using DesignSearch.Climate.Sun;

namespace DesignSearch.Season.Glass;

/// <summary>One flat piece of the cover with what it is made of and what hides the sky from it.</summary>
/// <param name="Facet">Where it lies.</param>
/// <param name="Glazing">The sheet it is made of.</param>
/// <param name="Horizon">Hills, trees and walls about it; null for none.</param>
public sealed record Pane(Facet Facet, Glazing Glazing, HorizonProfile? Horizon = null)
{
    /// <summary>True where snow does not slide off it: a piece of a hoop.</summary>
    public bool HoldsSnow { get; init; }
}
