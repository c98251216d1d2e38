using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>Works the mains in the greenhouse out: protection where the cable begins, cable, box and branches.</summary>
internal static class MainsSizing
{
    // The box's own cable, in and out.
    private const int GlandsOfBox = 2;

    // What a household plug bears; above it a device is joined for good.
    private const double PlugA = 16;

    private const double Tiny = 1e-9;

    // It must let a tenth above the mains pass for good (from memory of IEC 60364-5-53, 534).
    private static readonly Duty SurgeV = Duty.Voltage(PlantState.Running, 1.1 * SupplyPlan.MainsVolts);

    /// <summary>Works it out and lists it.</summary>
    /// <param name="key">All on which the supply depends.</param>
    /// <param name="plan">The plan without mains in the greenhouse.</param>
    /// <param name="circuits">What is on the mains, the supplies of low voltage among them.</param>
    /// <param name="needs">The list.</param>
    public static SupplyPlan Of(SupplyKey key, SupplyPlan plan, IReadOnlyList<Circuit> circuits, Needs needs)
    {
        var (shelf, hasMains) = (SupplyShelf.Of(needs.Shelf), key.MainsAtGreenhouse);
        var all = Load.Of(circuits);
        var metres = hasMains ? SupplySizing.ShortCableM : key.MainsCableM;
        var (cable, breaker) = shelf.MainsFeeder(metres, all.RunningA, all.StartA, key.MainsLoopOhm);
        var wanted = SupplyWords.WantedMainsCable(all.RunningA, metres);
        needs.Pick(cable, wanted, metres * NeededPart.Cuts, SupplyPurposes.MainsCable(hasMains), Bears(breaker));
        if (!hasMains)
            ListTrench(metres, needs);
        var loop = cable is null ? key.MainsLoopOhm : EarthFault.LoopOhm(key.MainsLoopOhm, metres, CableDrop.OhmPerM(cable));
        var branches = MainsBranches.Of(circuits, breaker, loop, needs);
        ListOrigin(breaker, cable, all, hasMains, needs);
        ListBox(circuits, all, needs);
        return plan with
        {
            MainsW = all.Watts,
            MainsCircuits = branches,
            MainsCable = cable,
            MainsCableM = metres,
            Breaker = breaker,
            Loop = cable is null || breaker is null ? null : Worst(branches, breaker, loop),
        };
    }

    private static void ListTrench(double metres, Needs needs)
    {
        needs.Small(SmallPartRole.Conduit, metres, SupplyPurposes.MainsConduit);
        needs.Small(SmallPartRole.WarningTape, metres, SupplyPurposes.WarningTape);
        needs.Small(SmallPartRole.EarthRod, 1, SupplyPurposes.EarthRod);
        // Whether one is wanted the licensed person says; a catalogue may have none.
        if (needs.Shelf.Cheapest(SmallPartRole.SurgeProtection) is not null)
            needs.Small(SmallPartRole.SurgeProtection, 1, SupplyPurposes.SurgeProtection, [SurgeV]);
    }

    private static void ListOrigin(SmallPart? breaker, Cable? cable, Load all, bool hasMains, Needs needs)
    {
        var load = Duty.Current(PlantState.Running, all.RunningA);
        needs.Small(SmallPartRole.ResidualCurrentDevice, 1, SupplyPurposes.ResidualCurrentDevice(hasMains), [load]);
        needs.Pick(breaker, SupplyWords.WantedBreaker(all.RunningA, cable?.RatedA ?? 0), 1, SupplyPurposes.Breaker(hasMains), load);
    }

    private static void ListBox(IReadOnlyList<Circuit> circuits, Load all, Needs needs)
    {
        var load = Duty.Current(PlantState.Running, all.RunningA);
        needs.Small(SmallPartRole.ControlBox, 1, SupplyPurposes.MainsBox, [SupplySizing.UnderGlass], SupplyPlan.MainsVolts);
        needs.Small(SmallPartRole.Isolator, 1, SupplyPurposes.Isolator, [load]);
        var cables = 0;
        foreach (var c in circuits)
        {
            cables += SupplySizing.EntersTheBox(c) ? c.Count : 0;
            if (c.BringsLead && c.RunningA <= PlugA + Tiny)
            {
                var plugged = Duty.Current(PlantState.Running, c.RunningA);
                needs.Small(SmallPartRole.SocketOutlet, 1, SupplyPurposes.Socket(c.Device), [plugged, SupplySizing.UnderGlass]);
            }
        }

        needs.Small(SmallPartRole.Gland, GlandsOfBox + cables, SupplyPurposes.MainsBoxGland);
    }

    // At the end of the long cable, and at the end of each branch behind the breaker before it.
    private static FaultLoop Worst(List<Circuit> branches, SmallPart breaker, double loopOhm)
    {
        var worst = Loop(WireWords.MainsBoxEnd, breaker, loopOhm);
        foreach (var c in branches)
        {
            if (c.Cable is null || c.Breaker is not { } own)
                continue;
            var here = Loop(c.Device, own, EarthFault.LoopOhm(loopOhm, c.CableM, CableDrop.OhmPerM(c.Cable)));
            if (here.Ohm / here.LargestOhm > worst.Ohm / worst.LargestOhm)
                worst = here;
        }

        return worst;
    }

    private static FaultLoop Loop(string to, SmallPart breaker, double ohm) =>
        new(to, ohm, SupplyShelf.LargestLoopOhm(breaker), breaker.RatedA);

    private static Duty Bears(SmallPart? breaker) => Duty.Current(PlantState.Running, breaker?.RatedA ?? 0);
}
