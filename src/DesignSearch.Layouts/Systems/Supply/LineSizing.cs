using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>Works one extra-low voltage out: its supply, its cables and its fuse.</summary>
internal static class LineSizing
{
    // A supply a quarter stronger than its load lives longer (common practice, no source).
    private const double SpareLoad = 1.25;
    private const double Tiny = 1e-9;

    /// <summary>Works it out and lists it.</summary>
    /// <param name="key">All on which the supply depends.</param>
    /// <param name="volts">The voltage [V].</param>
    /// <param name="circuits">Its devices, one or more.</param>
    /// <param name="needs">The list.</param>
    public static LowLine Of(SupplyKey key, double volts, IReadOnlyList<Circuit> circuits, Needs needs)
    {
        var (shelf, atHouse) = (SupplyShelf.Of(needs.Shelf), key.MainsInHouse);
        var bare = new LowLine(volts, atHouse ? SupplySizing.ShortCableM : key.MainsCableM, circuits);
        var wanted = Math.Max(bare.Watts * SpareLoad, bare.StartA * volts);
        var isAsked = key.SupplyW > 0;
        var supply = shelf.Supply(volts, isAsked ? key.SupplyW : wanted - Tiny);
        needs.Pick(supply, SupplyWords.WantedSupply(volts, isAsked ? key.SupplyW : wanted), 1, SupplyPurposes.Supply(atHouse));
        var line = CableChooser.Choose(bare with { Supply = supply }, key.CableMm2, shelf.LowCables);
        needs.Pick(line.Feeder, SupplyWords.WantedFeeder(line), line.FeederM * NeededPart.Cuts, SupplyPurposes.Feeder(atHouse));
        foreach (var circuit in line.Circuits)
        {
            if (circuit.Cable is { } cable)
                needs.Add(cable, circuit.CableM * NeededPart.Cuts, SupplyPurposes.LowBranch(circuit.Device, volts));
        }

        needs.Small(SmallPartRole.Fuse, 1, SupplyPurposes.Fuse, 0, line.FuseA ?? line.RunningA);
        return line;
    }
}
