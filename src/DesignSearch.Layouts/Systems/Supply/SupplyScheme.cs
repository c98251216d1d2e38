using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Systems.Supply.OffGrid;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>Draws how current comes to the greenhouse and, by the names of the wiring table, to every device in it.</summary>
internal static class SupplyScheme
{
    public static void Draw(SupplyPlan plan, SchemeSketch sketch)
    {
        // Without mains the battery takes the place of the dwelling's board.
        var board = plan.DwellingA > 0 ? sketch.There(SupplySchemeWords.Board, Spot.Dwelling, Terminal.Feeds)
            : plan.Battery is { } battery ? OffGridScheme.Draw(battery, sketch) : null;
        var box = plan.MainsCircuits.Count > 0 ? MainsBox(plan, board, sketch) : null;
        var control = sketch.Put(
            SupplyPurposes.ControlBox,
            SupplySchemeWords.ControlBox,
            Symbol.Plain,
            Spot.House,
            [.. plan.Lines.Select(Into), .. FeedsAny(plan, sketch) ? [Terminal.Feeds] : Array.Empty<Terminal>()]);
        sketch.Add(control, SupplyPurposes.ControlBoxGland, SupplyPurposes.Terminals);
        foreach (var signal in plan.Signals)
            sketch.Add(control ?? box, SupplyPurposes.Signal(signal));
        foreach (var line in plan.Lines)
            Line(line, SpotOf(plan), board, control, sketch);
        foreach (var circuit in plan.MainsCircuits)
            Feed(box, circuit, SupplyPurposes.MainsBranch(circuit.Device), sketch);
    }

    // A box whose low voltage serves its own relays alone, beside devices on the mains, feeds nothing outside.
    private static bool FeedsAny(SupplyPlan plan, SchemeSketch sketch) => plan.Lines.Any(l => l.Circuits.Any(c => sketch.Find(c.Device) is not null));

    private static Component? MainsBox(SupplyPlan plan, Component? board, SchemeSketch sketch)
    {
        var box = sketch.Put(SupplyPurposes.MainsBox, SupplySchemeWords.MainsBox, Symbol.Plain, Spot.House, Terminal.Power, Terminal.Feeds);
        sketch.Add(box, SupplyPurposes.MainsBoxGland, SupplyPurposes.Isolator, SupplyPurposes.EarthRod, SupplyPurposes.SurgeProtection);
        foreach (var circuit in plan.MainsCircuits)
            AddBranch(circuit, box, sketch);
        sketch.Add(box, SupplyPurposes.BranchBreaker(SupplyWords.TheOthers));
        foreach (var hasMains in new[] { true, false })
            sketch.Add(board, SupplyPurposes.ResidualCurrentDevice(hasMains), SupplyPurposes.Breaker(hasMains));
        sketch.Add(box, LicensedWork.PurposeOf(plan));
        sketch.Join(
            board,
            Terminal.Feeds,
            box,
            Terminal.Power,
            plan.MainsCableM,
            SupplyPurposes.MainsCable(true),
            SupplyPurposes.MainsCable(false),
            SupplyPurposes.MainsConduit,
            SupplyPurposes.WarningTape);
        return box;
    }

    // A control's own cable belongs to the box from which it comes; a device's is a joint.
    private static void AddBranch(Circuit circuit, Component? box, SchemeSketch sketch)
    {
        sketch.Add(box, SupplyPurposes.Socket(circuit.Device), SupplyPurposes.BranchBreaker(circuit.Device));
        if (circuit.IsControl)
            sketch.Add(box, SupplyPurposes.MainsBranch(circuit.Device));
    }

    private static SupplySpot SpotOf(SupplyPlan plan) => plan.MainsCircuits.Count > 0 ? SupplySpot.MainsBox
        : plan.DwellingA > 0 ? SupplySpot.Dwelling : SupplySpot.Battery;

    private static void Line(LowLine line, SupplySpot spot, Component? source, Component? control, SchemeSketch sketch)
    {
        var supply = line.IsBatterys ? source : sketch.PutOne(
            SupplyPurposes.Supply(line.Volts, spot),
            line.Supply,
            SupplyWords.SupplyOf(line.Volts),
            Symbol.Plain,
            spot == SupplySpot.Dwelling ? Spot.Dwelling : Spot.House, Terminal.Power, Terminal.Feeds);
        sketch.Add(supply, SupplyPurposes.SupplyBox(line.Volts, spot), SupplyPurposes.MainFuse(line.Volts, line.MainFuseA));
        sketch.Add(control, SupplyPurposes.Fuse(SupplyWords.Controls, line.ControlsFuseA));
        if (spot == SupplySpot.Dwelling)
            sketch.Join(source, Terminal.Feeds, supply, Terminal.Power);
        sketch.Join(supply, Terminal.Feeds, control, Into(line), line.FeederM, SupplyPurposes.Feeder(spot), SupplyPurposes.LowConduit);
        foreach (var circuit in line.Circuits)
            sketch.Add(control, SupplyPurposes.Fuse(circuit.Device, line.FuseBefore(circuit)));
        foreach (var circuit in line.Circuits.Where(c => c.IsControl))
            sketch.Add(control, SupplyPurposes.LowBranch(circuit.Device, line.Volts));
        foreach (var circuit in line.Circuits)
            Feed(control, circuit, SupplyPurposes.LowBranch(circuit.Device, line.Volts), sketch);
    }

    private static void Feed(Component? box, Circuit circuit, Purpose branch, SchemeSketch sketch) =>
        sketch.Join(box, Terminal.Feeds, sketch.Find(circuit.Device), Terminal.Power, circuit.CableM, branch);

    private static Terminal Into(LowLine line) => new(SupplyWords.SupplyOf(line.Volts), Medium.Current);
}
