using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>Works one extra-low voltage out: its supply, its cables and its fuses.</summary>
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
        needs.Pick(supply, SupplyWords.WantedSupply(volts, isAsked ? key.SupplyW : wanted), 1, SupplyPurposes.Supply(volts, atHouse));
        needs.Small(SmallPartRole.SupplyBox, 1, SupplyPurposes.SupplyBox(volts, atHouse), [SupplySizing.UnderGlass]);
        var line = CableChooser.Choose(bare with { Supply = supply }, key.CableMm2, shelf.LowCables);
        ListCables(line, atHouse, needs);
        ListFuses(line, needs);
        return line;
    }

    private static void ListCables(LowLine line, bool atHouse, Needs needs)
    {
        var main = Duty.Current(PlantState.Running, line.MainFuseA);
        needs.Pick(line.Feeder, SupplyWords.WantedFeeder(line), line.FeederM * NeededPart.Cuts, SupplyPurposes.Feeder(atHouse), main);
        foreach (var c in line.Circuits)
        {
            if (c.CableM <= 0)
                continue;
            var purpose = SupplyPurposes.LowBranch(c.Device, line.Volts);
            var metres = c.CableM * c.Count * NeededPart.Cuts;
            var duty = Duty.Current(PlantState.Running, line.FuseBefore(c));
            if (c.Cable is { } cable)
                needs.Add(cable, metres, purpose, duty);
            else if (line.Feeder is not null)
                needs.Pick(null, SupplyWords.WantedBranch(c), metres, purpose);
        }
    }

    // One right behind the supply, one in the box for each device, one for all controls: a short in one takes none of the others.
    private static void ListFuses(LowLine line, Needs needs)
    {
        Fuse(line.MainFuseA, SupplyPurposes.MainFuse(line.Volts, line.MainFuseA), needs);
        foreach (var c in line.Circuits)
        {
            if (c is { IsControl: false, Watts: > 0 })
                Fuse(line.FuseBefore(c), SupplyPurposes.Fuse(c.Device, line.FuseBefore(c)), needs);
        }

        if (line.HasControls)
            Fuse(line.ControlsFuseA, SupplyPurposes.Fuse(SupplyWords.Controls, line.ControlsFuseA), needs);
    }

    private static void Fuse(double amperes, Purpose purpose, Needs needs)
    {
        if (amperes > 0)
            needs.Small(SmallPartRole.Fuse, 1, purpose, [Duty.Current(PlantState.Running, amperes)]);
    }
}
