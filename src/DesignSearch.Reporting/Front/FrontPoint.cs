namespace DesignSearch.Reporting.Front;

/// <summary>One layout on the charts of cost and cold.</summary>
/// <param name="Rank">Its rank; 0 for the bare house.</param>
/// <param name="Title">The layout in plain words.</param>
/// <param name="LifeCost">Cost over the years.</param>
/// <param name="BuildPrice">Price to build.</param>
/// <param name="FrostKh">Frost degree-hours [K·h].</param>
/// <param name="LowestAirC">Lowest hour mean of the plants' air [°C].</param>
/// <param name="Holds">True where it holds the limit.</param>
/// <param name="Turning">How it turns.</param>
/// <param name="OnFront">True when no other layout beats it on both life cost and frost.</param>
/// <param name="PickName">What it was picked for; empty when it was not.</param>
internal sealed record FrontPoint(
    int Rank,
    string Title,
    double LifeCost,
    double BuildPrice,
    double FrostKh,
    double LowestAirC,
    bool Holds,
    TurningMode Turning,
    bool OnFront,
    string PickName)
{
    /// <summary>True where it stands out: of the front, picked, or the bare house; the others are drawn pale.</summary>
    public bool Stands => OnFront || PickName.Length > 0 || Rank == 0;
}
