using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>Draws how current comes to the greenhouse and, by the names of the wiring table, to every device in it.</summary>
internal static class SupplyScheme
{
    public static void Draw(SupplyPlan plan, SchemeSketch sketch)
    {
        var board = sketch.There(SupplySchemeWords.Board, Spot.Dwelling, Terminal.Feeds);
        var box = plan.MainsCircuits.Count > 0 ? MainsBox(plan, board, sketch) : null;
        var control = sketch.Put(
            SupplyPurposes.ControlBox, SupplySchemeWords.ControlBox, Symbol.Plain, Spot.House, [.. plan.Lines.Select(Into), Terminal.Feeds]);
        sketch.Add(control, SupplyPurposes.ControlBoxGland);
        foreach (var line in plan.Lines)
            Line(line, box, board, control, sketch);
        foreach (var circuit in plan.MainsCircuits)
            sketch.Join(box, Terminal.Feeds, sketch.Find(circuit.Device), Terminal.Power, circuit.CableM, SupplyPurposes.MainsBranch(circuit.Device));
    }

    private static Component? MainsBox(SupplyPlan plan, Component board, SchemeSketch sketch)
    {
        var box = sketch.Put(SupplyPurposes.MainsBox, SupplySchemeWords.MainsBox, Symbol.Plain, Spot.House, Terminal.Power, Terminal.Feeds);
        sketch.Add(box, SupplyPurposes.MainsBoxGland, SupplyPurposes.ResidualCurrentDevice, SupplyPurposes.Breaker);
        sketch.Add(box, LicensedWork.PurposeOf(plan));
        sketch.Join(
            board,
            Terminal.Feeds,
            box,
            Terminal.Power,
            plan.MainsCableM,
            SupplyPurposes.MainsCable(true),
            SupplyPurposes.MainsCable(false),
            SupplyPurposes.MainsConduit);
        return box;
    }

    private static void Line(LowLine line, Component? box, Component board, Component? control, SchemeSketch sketch)
    {
        var atHouse = box is not null;
        var supply = sketch.PutOne(
            SupplyPurposes.Supply(atHouse), line.Supply, SupplyWords.SupplyOf(line.Volts), Symbol.Plain, atHouse ? Spot.House : Spot.Dwelling, Terminal.Power, Terminal.Feeds);
        sketch.Add(supply, SupplyPurposes.Fuse);
        if (!atHouse)
            sketch.Join(board, Terminal.Feeds, supply, Terminal.Power);
        sketch.Join(supply, Terminal.Feeds, control, Into(line), line.FeederM, SupplyPurposes.Feeder(atHouse), SupplyPurposes.LowConduit);
        foreach (var circuit in line.Circuits)
            sketch.Join(control, Terminal.Feeds, sketch.Find(circuit.Device), Terminal.Power, circuit.CableM, SupplyPurposes.LowBranch(circuit.Device, line.Volts));
    }

    private static Terminal Into(LowLine line) => new(SupplyWords.SupplyOf(line.Volts), Medium.Current);
}
