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
    /// <param name="spot">Where its supply stands.</param>
    /// <param name="needs">The list.</param>
    public static LowLine Of(SupplyKey key, double volts, IReadOnlyList<Circuit> circuits, SupplySpot spot, Needs needs)
    {
        var shelf = SupplyShelf.Of(needs.Shelf);
        var bare = new LowLine(volts, spot == SupplySpot.Dwelling ? key.MainsCableM : SupplySizing.ShortCableM, circuits);
        var wanted = Math.Max(bare.Watts * SpareLoad, bare.StartA * volts);
        var isAsked = key.SupplyW > 0;
        var supply = shelf.Supply(volts, isAsked ? key.SupplyW : wanted - Tiny, spot == SupplySpot.Battery);
        needs.Pick(supply, SupplyWords.WantedSupply(volts, isAsked ? key.SupplyW : wanted), 1, SupplyPurposes.Supply(volts, spot));
        return Wired(bare with { Supply = supply }, key, spot, needs);
    }

    /// <summary>The same of the voltage that the battery gives by itself.</summary>
    /// <param name="key">All on which the supply depends.</param>
    /// <param name="circuits">Its devices, one or more.</param>
    /// <param name="needs">The list.</param>
    public static LowLine OfBattery(SupplyKey key, IReadOnlyList<Circuit> circuits, Needs needs) => Wired(
        new LowLine(SupplyPlan.ControlVolts, SupplySizing.ShortCableM, circuits) { IsBatterys = true }, key, SupplySpot.Battery, needs);

    private static LowLine Wired(LowLine bare, SupplyKey key, SupplySpot spot, Needs needs)
    {
        needs.Small(SmallPartRole.SupplyBox, 1, SupplyPurposes.SupplyBox(bare.Volts, spot), [SupplySizing.UnderGlass]);
        var line = CableChooser.Choose(bare, key.CableMm2, SupplyShelf.Of(needs.Shelf).LowCables);
        ListCables(line, spot, needs);
        ListFuses(line, needs);
        return line;
    }

    private static void ListCables(LowLine line, SupplySpot spot, Needs needs)
    {
        var main = Duty.Current(PlantState.Running, line.MainFuseA);
        needs.Pick(line.Feeder, SupplyWords.WantedFeeder(line), line.FeederM * NeededPart.Cuts, SupplyPurposes.Feeder(spot), main);
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
