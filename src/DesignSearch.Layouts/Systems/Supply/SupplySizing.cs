using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>Works a supply out: each low voltage first, then the mains that feed it and the mains devices.</summary>
internal static class SupplySizing
{
    private const int CoresOfFeeder = 2;
    private const double TerminalsOfStrip = 10;

    /// <summary>Cable from a box in the greenhouse to one beside it [m] (common practice, no source).</summary>
    public const double ShortCableM = 5;

    /// <summary>What splashes under glass ask of an enclosure: IP44 at least (IEC 60364-7-705).</summary>
    public static Duty UnderGlass { get; } = Duty.Kept(PlantState.Running, 44);

    /// <summary>Works it out.</summary>
    /// <param name="key">All on which it depends.</param>
    /// <param name="needs">An empty list, filled with what it needs.</param>
    public static PlannedSupply Plan(SupplyKey key, Needs needs)
    {
        var mains = key.Circuits.Where(c => c.Volts >= SupplyPlan.MainsVolts);
        var low = key.Circuits.Where(c => c.Volts is > 0 and < SupplyPlan.MainsVolts).ToList();
        List<Circuit> signals = [.. key.Circuits.Where(c => c.Volts == 0).Select(c => Signal(c, needs))];
        var spot = key.MainsInHouse ? SupplySpot.MainsBox : SupplySpot.Dwelling;
        var lines = low.GroupBy(c => c.Volts).OrderBy(g => g.Key).Select(g => LineSizing.Of(key, g.Key, [.. g], spot, needs)).ToList();
        if (lines.Count > 0)
            ListBox(key, lines, [.. low, .. signals], needs);
        List<Circuit> onMains = [.. mains, .. lines.Select(Input)];
        var running = onMains.Sum(c => c.RunningA);
        var plan = new SupplyPlan
        {
            MainsW = 0,
            MainsCircuits = [],
            MainsCable = null,
            MainsCableM = 0,
            Breaker = null,
            Lines = lines,
            Signals = signals,
            DwellingA = running,
            DwellingStartA = running + onMains.Max(c => c.StartA - c.RunningA),
        };
        return new(key.MainsInHouse ? MainsSizing.Of(key, plan, onMains, needs) : plan, needs);
    }

    /// <summary>Whether a device has a cable or lead of its own, which wants a gland.</summary>
    public static bool EntersTheBox(Circuit circuit) => circuit.CableM > 0 || circuit.BringsLead;

    // What a line draws from the mains through its supply.
    private static Circuit Input(LowLine line)
    {
        var efficiency = line.Supply?.Efficiency ?? 1;
        return new(SupplyWords.SupplyOf(line.Volts), SupplyPlan.MainsVolts, line.Watts / efficiency, 0, SupplyWords.AlwaysOn, "")
        {
            StartA = line.StartA * line.Volts / efficiency / SupplyPlan.MainsVolts,
            BringsLead = true,
        };
    }

    /// <summary>Lists the box of the controls with what leads cables into it.</summary>
    public static void ListBox(SupplyKey key, IReadOnlyList<LowLine> lines, IReadOnlyList<Circuit> entering, Needs needs)
    {
        if (!key.MainsInHouse)
            needs.Small(SmallPartRole.Conduit, lines.Max(l => l.FeederM), SupplyPurposes.LowConduit);
        needs.Chosen(key.ControlBox, SmallPartRole.ControlBox, 1, SupplyPurposes.ControlBox, SupplyPlan.ControlVolts, UnderGlass);
        var (cables, cores) = (lines.Count, CoresOfFeeder * lines.Count);
        foreach (var c in entering)
        {
            if (EntersTheBox(c))
                (cables, cores) = (cables + c.Count, cores + (c.Cores * c.Count));
        }

        needs.Small(SmallPartRole.Gland, cables, SupplyPurposes.ControlBoxGland);
        needs.Small(SmallPartRole.Terminals, Math.Ceiling(cores / TerminalsOfStrip), SupplyPurposes.Terminals);
    }

    /// <summary>A switch or sensor with its cable, which is listed.</summary>
    public static Circuit Signal(Circuit signal, Needs needs)
    {
        if (signal.CableM <= 0)
            return signal;
        var cable = SupplyShelf.Of(needs.Shelf).SignalCable(signal);
        var carries = Duty.Current(PlantState.Running, signal.StartA);
        var metres = signal.CableM * signal.Count * NeededPart.Cuts;
        needs.Pick(cable, SupplyWords.WantedBranch(signal), metres, SupplyPurposes.Signal(signal), carries);
        return signal with { Cable = cable };
    }
}
