namespace DesignSearch.Layouts.Design.Schemes;

/// <summary>A part of a plant, or a thing that is there anyway, with the places where others are joined to it.</summary>
/// <param name="Name">What it is in this plant; of no other component.</param>
/// <param name="System">Subsystem of the bill; empty for a thing that is there.</param>
/// <param name="Symbol">How it is drawn.</param>
/// <param name="Spot">Where it stands.</param>
/// <param name="PartId">The bought part; empty for a thing that is there.</param>
/// <param name="Count">How many of it, or how much.</param>
/// <param name="Terminals">Where it is joined; each of them is.</param>
/// <param name="With">Ids of parts that belong to it and are not drawn: straps, labels, glands.</param>
public sealed record Component(
    string Name,
    string System,
    Symbol Symbol,
    Spot Spot,
    string PartId,
    decimal Count,
    IReadOnlyList<Terminal> Terminals,
    IReadOnlyList<string> With)
{
    /// <summary>What it was bought for; null for a thing that is there.</summary>
    public Purpose? Purpose { get; init; }
}
