using DesignSearch.Layouts.Design.Wiring;

namespace DesignSearch.Layouts.Design.Sizing;

/// <summary>Everything on which a supply plan depends, beside catalogue and prices.</summary>
/// <param name="MainsInHouse">Whether mains are brought to the greenhouse.</param>
/// <param name="MainsAtGreenhouse">Whether they are there already.</param>
/// <param name="MainsCableM">Way from the dwelling [m].</param>
/// <param name="SupplyW">Power of the low-voltage supply that was asked for [W]; 0 for whatever serves.</param>
/// <param name="CableMm2">Cross-section that was asked for [mm²]; 0 for whatever serves.</param>
/// <param name="ControlBox">The control box that was chosen.</param>
/// <param name="Heater">Id of the stand-by heater; empty without.</param>
/// <param name="Circuits">The devices.</param>
internal sealed record SupplyKey(bool MainsInHouse, bool MainsAtGreenhouse, double MainsCableM, double SupplyW, double CableMm2, string ControlBox, string Heater, IReadOnlyList<Circuit> Circuits)
{
    public bool Equals(SupplyKey? other) =>
        other is not null
        && (MainsInHouse, MainsAtGreenhouse, MainsCableM, SupplyW, CableMm2, ControlBox, Heater) == (other.MainsInHouse, other.MainsAtGreenhouse, other.MainsCableM, other.SupplyW, other.CableMm2, other.ControlBox, other.Heater)
        && Circuits.SequenceEqual(other.Circuits);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        hash.Add(MainsInHouse);
        hash.Add(SupplyW);
        hash.Add(CableMm2);
        hash.Add(Heater, StringComparer.Ordinal);
        // Enough to tell most apart; Equals tells the rest.
        for (var i = 0; i < Circuits.Count; i++)
        {
            hash.Add(Circuits[i].Watts);
            hash.Add(Circuits[i].StartA);
            hash.Add(Circuits[i].CableM);
        }

        return hash.ToHashCode();
    }
}
