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
        if (supply.Battery is { } battery)
            Battery(battery, wires);
        foreach (var line in supply.Lines)
            Low(line, From(line, supply), wires);
        foreach (var signal in supply.Signals)
            wires.Add(Row(signal, 0, 0, ""));
        return CoreNumbers.Of(wires);
    }

    private static void Mains(SupplyPlan supply, List<Wire> wires)
    {
        var (cable, metres) = (supply.MainsCable, supply.MainsCableM);
        double Percent(double branchV) =>
            100 * ((cable is null ? 0 : CableDrop.Volts(cable, metres, supply.MainsA)) + branchV) / SupplyPlan.MainsVolts;
        const double Volts = SupplyPlan.MainsVolts;
        var feeder = new Circuit(WireWords.MainsFeeder, Volts, supply.MainsW, metres, WireWords.MainsSwitch, WireWords.MainsStops)
        {
            StartA = supply.MainsStartA,
            Cable = cable,
        };
        wires.Add(Row(feeder, Percent(0), supply.Breaker?.RatedA ?? 0, feeder.Device) with { IsFeeder = true });
        foreach (var c in supply.MainsCircuits)
        {
            var percent = Percent(c.Cable is null ? 0 : CableDrop.Volts(c.Cable, c.CableM, c.RunningA));
            var own = c.Breaker == supply.Breaker ? feeder.Device : c.WantsOwnBreaker ? c.Device : WireWords.MainsBox;
            wires.Add(Row(c, percent, c.BreakerA, own));
        }
    }

    private static string From(LowLine line, SupplyPlan supply) => supply.Battery is not null
        ? line.IsBatterys ? WireWords.Guard : WireWords.Converter
        : supply.MainsW > 0 ? WireWords.MainsBox : WireWords.DwellingSocket;

    private static void Battery(BatteryPlan plan, List<Wire> wires)
    {
        var (volts, metres) = (plan.InSeries * plan.Panel.WorkingV, BatteryPlan.PanelCableM);
        var panels = new Circuit(WireWords.Panels, volts, plan.PeakW, metres, WireWords.PanelSwitch, WireWords.PanelStops(plan))
        {
            StartA = plan.PanelsShortA,
            Cable = plan.PanelCable,
        };
        var lost = plan.PanelCable is { } roof ? CableDrop.Volts(roof, metres, panels.RunningA) / volts : 0;
        // A cable that bears the short circuit of all strings wants no fuse.
        wires.Add(Row(panels, 100 * lost, 0, "") with { IsSignal = true, EndsAtDevice = true });
        var watts = SupplyPlan.ControlVolts * Math.Max(plan.ChargeA, plan.RunningA);
        var battery = new Circuit(WireWords.Battery, SupplyPlan.ControlVolts, watts, plan.BatteryCableM, WireWords.BatteryFuse, WireWords.BatteryStops)
        {
            StartA = plan.FuseA,
            Cable = plan.BatteryCable,
        };
        var drop = plan.BatteryCable is { } thick ? CableDrop.Volts(thick, plan.BatteryCableM, battery.RunningA) / SupplyPlan.ControlVolts : 0;
        wires.Add(Row(battery, 100 * drop, plan.Fuse?.RatedA ?? 0, battery.Device) with { EndsAtDevice = true });
    }

    private static void Low(LowLine line, string from, List<Wire> wires)
    {
        var drop = line.Feeder is null ? 0 : CableDrop.Volts(line.Feeder, line.FeederM, line.RunningA) / line.Volts;
        var feeder = new Circuit(WireWords.Supply(line.Volts), line.Volts, line.Watts, line.FeederM, from, "")
        {
            StartA = line.StartA,
            Cable = line.Feeder,
        };
        wires.Add(Row(feeder, 100 * drop, Serving(line.MainFuseA, line.Feeder), feeder.Device) with { IsFeeder = true });
        foreach (var c in line.Circuits)
        {
            var own = c.IsControl ? feeder.SwitchedBy + feeder.Device : c.Device;
            wires.Add(Row(c, 100 * line.Drop(c), Serving(line.FuseBefore(c), c.Cable), own));
        }
    }

    // The fuse where its cable bears it.
    private static double Serving(double fuseA, Cable? cable) =>
        cable is null || fuseA * TimeLagFuse.CableShare <= cable.RatedA + 1e-9 ? fuseA : 0;

    private static Wire Row(Circuit c, double percent, double fuse, string fuseOf) => new(
        c.Device,
        c.Volts,
        Math.Round(c.RunningA, 2),
        Math.Round(c.StartA, 2),
        c.Cable?.Name ?? (c.CableM > 0 ? WireWords.NoCableServes : WireWords.OwnLead),
        c.Cable?.Cores ?? 0,
        Math.Round(c.CableM, 1),
        c.Cable?.RatedA ?? 0,
        Math.Round(percent, 1),
        fuse,
        c.Volts == 0,
        c.SwitchedBy,
        c.Stops)
    {
        FuseTag = fuse > 0 ? fuseOf : "",
        Count = c.Count,
        SectionMm2 = c.Cable?.SectionMm2 ?? 0,
        EndsAtDevice = c.EndsAtDevice,
        Purpose = c.Purpose,
        // What sits in the box or is plugged into a socket has no cores to number.
        Carries = c.CableM > 0 || (c.BringsLead && c.Volts < SupplyPlan.MainsVolts) ? CoreNumbers.Carried(c) : [],
    };
}
