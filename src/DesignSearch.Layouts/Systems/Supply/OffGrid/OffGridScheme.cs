using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;

namespace DesignSearch.Layouts.Systems.Supply.OffGrid;

/// <summary>Draws panels, charge controller, battery and guard.</summary>
internal static class OffGridScheme
{
    /// <summary>Draws them.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sketch">The scheme so far.</param>
    /// <returns>What feeds the devices: the guard.</returns>
    public static Component? Draw(BatteryPlan plan, SchemeSketch sketch)
    {
        var panels = sketch.Put(OffGridPurposes.Panel, OffGridWords.Panels, Symbol.Plain, Spot.Outdoors, Terminal.Feeds);
        sketch.Add(panels, OffGridPurposes.Bracket);
        var cutOff = Box(OffGridPurposes.PanelSwitch, OffGridWords.PanelSwitch, sketch);
        var controller = Box(OffGridPurposes.Controller, OffGridWords.Controller, sketch);
        sketch.Add(controller, OffGridPurposes.Gland);
        var fuse = Box(OffGridPurposes.Fuse(plan.Fuse?.RatedA ?? 0), OffGridWords.Fuse, sketch);
        var battery = sketch.Put(OffGridPurposes.Battery, OffGridWords.Battery, Symbol.Plain, Spot.House, Terminal.Power);
        sketch.Add(battery, OffGridPurposes.BatteryBox);
        var guard = Box(OffGridPurposes.Guard, OffGridWords.Guard, sketch);
        Feed(panels, cutOff, BatteryPlan.PanelCableM, sketch, OffGridPurposes.PanelCable);
        Feed(cutOff, controller, 0, sketch);
        // The fuse is the node: battery, charge controller and guard hang on it.
        Feed(controller, fuse, 0, sketch);
        Feed(fuse, battery, plan.BatteryCableM, sketch, OffGridPurposes.BatteryCable);
        Feed(fuse, guard, 0, sketch);
        return guard;
    }

    private static Component? Box(Design.Purpose purpose, string name, SchemeSketch sketch) =>
        sketch.Put(purpose, name, Symbol.Plain, Spot.House, Terminal.Power, Terminal.Feeds);

    private static void Feed(
        Component? from, Component? to, double metres, SchemeSketch sketch, params ReadOnlySpan<Design.Purpose> by) =>
        sketch.Join(from, Terminal.Feeds, to, Terminal.Power, metres, by);
}
