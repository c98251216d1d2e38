using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Electrics;

namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>Makes the wiring table of a layout.</summary>
public static class WireWriter
{
    /// <summary>The rows: mains first, then each low voltage, each box before its devices; none where nothing needs current.</summary>
    /// <param name="built">The layout worked out.</param>
    public static IReadOnlyList<Wire> Of(BuiltLayout built)
    {
        if (built.Supply is not { } supply)
            return [];
        var wires = new List<Wire>();
        if (supply.MainsCircuits.Count > 0)
            Mains(supply, wires);
        foreach (var line in supply.Lines)
            Low(line, supply.MainsW > 0, wires);
        return wires;
    }

    private static void Mains(SupplyPlan supply, List<Wire> wires)
    {
        var breaker = supply.Breaker?.RatedA ?? 0;
        wires.Add(Row("mains to the greenhouse's mains box", SupplyPlan.MainsVolts, supply.MainsA, supply.MainsStartA, supply.MainsCable, supply.MainsCableM, Percent(supply.MainsCable, supply.MainsCableM, supply.MainsA, 0), breaker, "residual-current device and circuit breaker", ""));
        foreach (var c in supply.MainsCircuits)
            wires.Add(Row(c.Device, c.Volts, c.RunningA, c.StartA, c.Cable, c.CableM, Percent(supply.MainsCable, supply.MainsCableM, supply.MainsA, c.Cable is null ? 0 : CableDrop.Volts(c.Cable, c.CableM, c.RunningA)), breaker, c.SwitchedBy, c.Stops));
    }

    private static void Low(LowLine line, bool mainsInHouse, List<Wire> wires)
    {
        var fuse = line.FuseA ?? 0;
        var feeder = line.Feeder is null ? 0 : CableDrop.Volts(line.Feeder, line.FeederM, line.RunningA) / line.Volts;
        wires.Add(Row(Written.Sentence($"{line.Volts:0} V supply to the control box"), line.Volts, line.RunningA, line.StartA, line.Feeder, line.FeederM, 100 * feeder, fuse, mainsInHouse ? "the mains box" : "a socket in the dwelling behind a 30 mA residual-current device", ""));
        foreach (var c in line.Circuits)
            wires.Add(Row(c.Device, c.Volts, c.RunningA, c.StartA, c.Cable, c.CableM, 100 * line.Drop(c), fuse, c.SwitchedBy, c.Stops));
    }

    private static double Percent(Cable? feeder, double metres, double amperes, double branchV) =>
        100 * ((feeder is null ? 0 : CableDrop.Volts(feeder, metres, amperes)) + branchV) / SupplyPlan.MainsVolts;

    private static Wire Row(string device, double volts, double amperes, double startA, Cable? cable, double metres, double percent, double fuse, string by, string stops) =>
        new(device, volts, Math.Round(amperes, 2), Math.Round(startA, 2), cable?.Name ?? (metres > 0 ? "none in the catalogue serves" : "its own lead, or inside the box"), Math.Round(metres, 1), cable?.RatedA ?? 0, Math.Round(percent, 1), fuse, by, stops);
}
