using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>Works a supply out: each low voltage first, then the mains that feed it and the mains devices.</summary>
internal static class SupplySizing
{
    /// <summary>Cable from a box in the greenhouse to one beside it [m] (common practice, no source).</summary>
    public const double ShortCableM = 5;

    /// <summary>Works it out.</summary>
    /// <param name="key">All on which it depends.</param>
    /// <param name="needs">An empty list, filled with what it needs.</param>
    public static PlannedSupply Plan(SupplyKey key, Needs needs)
    {
        var mains = key.Circuits.Where(c => c.Volts >= SupplyPlan.MainsVolts);
        var low = key.Circuits.Where(c => c.Volts < SupplyPlan.MainsVolts).ToList();
        var lines = low.GroupBy(c => c.Volts).OrderBy(g => g.Key).Select(g => LineSizing.Of(key, g.Key, [.. g], needs)).ToList();
        if (lines.Count > 0)
            ListBox(key, lines, low.Count(EntersTheBox), needs);
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
        };
    }

    private static void ListBox(SupplyKey key, List<LowLine> lines, int cables, Needs needs)
    {
        if (!key.MainsInHouse)
            needs.Small(SmallPartRole.Conduit, lines.Max(l => l.FeederM), SupplyPurposes.LowConduit);
        needs.Chosen(key.ControlBox, SmallPartRole.ControlBox, 1, SupplyPurposes.ControlBox, SupplyPlan.ControlVolts);
        needs.Small(SmallPartRole.Gland, lines.Count + cables, SupplyPurposes.ControlBoxGland);
    }
}
