namespace DesignSearch.Reporting.Front;

/// <summary>One layout on the chart of cost against frost.</summary>
/// <param name="Rank">Its rank; 0 for the bare house.</param>
/// <param name="Title">The layout in plain words.</param>
/// <param name="LifeCost">Across.</param>
/// <param name="FrostKh">Up, frost degree-hours [K·h].</param>
/// <param name="Turning">How it turns.</param>
/// <param name="OnFront">True when no other layout beats it on both.</param>
/// <param name="PickName">What it was picked for; empty when it was not.</param>
internal sealed record FrontPoint(
    int Rank, string Title, double LifeCost, double FrostKh, TurningMode Turning, bool OnFront, string PickName)
{
    /// <summary>True where it stands out: of the front, picked, or the bare house; the others are drawn pale.</summary>
    public bool Stands => OnFront || PickName.Length > 0 || Rank == 0;
}
