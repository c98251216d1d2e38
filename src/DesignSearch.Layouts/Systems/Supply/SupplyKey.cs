using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Systems.Supply.OffGrid;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>Everything on which a supply plan depends, beside catalogue and prices.</summary>
/// <param name="MainsInHouse">Whether mains are brought to the greenhouse.</param>
/// <param name="MainsAtGreenhouse">Whether they are there already.</param>
/// <param name="MainsCableM">Way from the dwelling [m].</param>
/// <param name="MainsLoopOhm">Loop impedance where the mains cable begins [Ω].</param>
/// <param name="SupplyW">Power of the low-voltage supply that was asked for [W]; 0 for whatever serves.</param>
/// <param name="CableMm2">Cross-section that was asked for [mm²]; 0 for whatever serves.</param>
/// <param name="ControlBox">The control box that was chosen; null for the cheapest that serves.</param>
/// <param name="Circuits">The devices, which nobody changes any more.</param>
internal sealed record SupplyKey(
    bool MainsInHouse,
    bool MainsAtGreenhouse,
    double MainsCableM,
    double MainsLoopOhm,
    double SupplyW,
    double CableMm2,
    SmallPart? ControlBox,
    IReadOnlyList<Circuit> Circuits)
{
    /// <summary>What a panel and a battery are sized by; null where there are mains.</summary>
    public OffGridSite? OffGrid { get; init; }

    /// <inheritdoc/>
    public bool Equals(SupplyKey? other) =>
        other is not null
        && (MainsInHouse, MainsAtGreenhouse, MainsCableM, MainsLoopOhm)
            == (other.MainsInHouse, other.MainsAtGreenhouse, other.MainsCableM, other.MainsLoopOhm)
        && (SupplyW, CableMm2, ControlBox?.Id, OffGrid) == (other.SupplyW, other.CableMm2, other.ControlBox?.Id, other.OffGrid)
        && HasCircuitsOf(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        hash.Add(MainsInHouse);
        hash.Add(SupplyW);
        hash.Add(CableMm2);
        // Enough to tell most apart; Equals tells the rest.
        for (var i = 0; i < Circuits.Count; i++)
        {
            hash.Add(Circuits[i].Watts);
            hash.Add(Circuits[i].StartA);
            hash.Add(Circuits[i].CableM);
        }

        return hash.ToHashCode();
    }

    private bool HasCircuitsOf(SupplyKey other)
    {
        if (Circuits.Count != other.Circuits.Count)
            return false;
        for (var i = 0; i < Circuits.Count; i++)
        {
            if (Circuits[i] != other.Circuits[i])
                return false;
        }

        return true;
    }
}
