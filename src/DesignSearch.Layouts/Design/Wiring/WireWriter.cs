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
        var (cable, metres) = (supply.MainsCable, supply.MainsCableM);
        double Percent(double branchV) =>
            100 * ((cable is null ? 0 : CableDrop.Volts(cable, metres, supply.MainsA)) + branchV) / SupplyPlan.MainsVolts;
        wires.Add(Row(
            WireWords.MainsFeeder, SupplyPlan.MainsVolts, supply.MainsA, supply.MainsStartA, cable, metres, Percent(0), breaker, WireWords.MainsSwitch));
        foreach (var c in supply.MainsCircuits)
            wires.Add(Row(c, Percent(c.Cable is null ? 0 : CableDrop.Volts(c.Cable, c.CableM, c.RunningA)), breaker));
    }

    private static void Low(LowLine line, bool mainsInHouse, List<Wire> wires)
    {
        var fuse = line.FuseA ?? 0;
        var feeder = line.Feeder is null ? 0 : CableDrop.Volts(line.Feeder, line.FeederM, line.RunningA) / line.Volts;
        var from = mainsInHouse ? WireWords.MainsBox : WireWords.DwellingSocket;
        wires.Add(Row(
            WireWords.Supply(line.Volts), line.Volts, line.RunningA, line.StartA, line.Feeder, line.FeederM, 100 * feeder, fuse, from));
        foreach (var c in line.Circuits)
            wires.Add(Row(c, 100 * line.Drop(c), fuse));
    }

    private static Wire Row(Circuit c, double percent, double fuse) =>
        Row(c.Device, c.Volts, c.RunningA, c.StartA, c.Cable, c.CableM, percent, fuse, c.SwitchedBy) with { Stops = c.Stops };

    private static Wire Row(
        string device, double volts, double amperes, double startA, Cable? cable, double metres, double percent, double fuse, string by) => new(
        device,
        volts,
        Math.Round(amperes, 2),
        Math.Round(startA, 2),
        cable?.Name ?? (metres > 0 ? WireWords.NoCableServes : WireWords.OwnLead),
        Math.Round(metres, 1),
        cable?.RatedA ?? 0,
        Math.Round(percent, 1),
        fuse,
        by,
        "");
}
