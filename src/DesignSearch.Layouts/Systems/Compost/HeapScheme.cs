using DesignSearch.Layouts.Design.Schemes;

namespace DesignSearch.Layouts.Systems.Compost;

/// <summary>Draws a compost heap: the way of its water, and who tells its pump.</summary>
internal static class HeapScheme
{
    private static readonly Terminal Top = new("highest place", Medium.Water);
    private static readonly Terminal Core = new("core", Medium.Signal);

    public static void Draw(HeapPlan heap, SchemeSketch sketch)
    {
        var pile = sketch.Put(CompostPurposes.Mix, HeapSchemeWords.Heap, Symbol.Plain, Spot.Outdoors, Core);
        sketch.Add(pile, CompostPurposes.Wrap, CompostPurposes.Hire, CompostPurposes.Cage, CompostPurposes.Tray, CompostPurposes.Probe);
        Water(heap, sketch);
        Control(heap, pile, sketch);
    }

    // From the pump out to the coil and back past the header tank, the cocks and the strainer.
    private static void Water(HeapPlan heap, SchemeSketch sketch)
    {
        var coil = sketch.Put(
            CompostPurposes.Coil, HeapSchemeWords.Coil, Symbol.Plain, Spot.Outdoors, Terminal.Inlet, Terminal.Outlet, Top);
        sketch.Add(coil, CompostPurposes.Glycol, CompostPurposes.FluidTest, CompostPurposes.Fittings);
        var vent = sketch.Put(CompostPurposes.Vent, HeapSchemeWords.Vent, Symbol.Vent, Spot.Outdoors, Terminal.Inlet);
        sketch.Join(coil, Top, vent, Terminal.Inlet);
        var header = sketch.PutInLine(CompostPurposes.Header, HeapSchemeWords.Header, Symbol.Tank);
        var cocks = sketch.PutInLine(CompostPurposes.Cock, HeapSchemeWords.Cocks, Symbol.Valve);
        var strainer = sketch.PutInLine(CompostPurposes.Strainer, HeapSchemeWords.Strainer, Symbol.Plain);
        var mover = sketch.Put(
            CompostPurposes.Pump,
            CompostWords.PumpDevice,
            Symbol.Pump,
            Spot.House,
            Terminal.Inlet,
            Terminal.Outlet,
            Terminal.Power,
            Terminal.Told);
        sketch.Join(mover, Terminal.Outlet, coil, Terminal.Inlet, heap.OutdoorM, CompostPurposes.Outdoor, CompostPurposes.Sleeve);
        sketch.Join(coil, Terminal.Outlet, header, Terminal.Inlet, heap.OutdoorM, CompostPurposes.Outdoor, CompostPurposes.Sleeve);
        sketch.Line(header, cocks, strainer, mover);
    }

    private static void Control(HeapPlan heap, Component? pile, SchemeSketch sketch)
    {
        var sensor = sketch.Put(
            CompostPurposes.CoreSensor, HeapSchemeWords.CoreSensor, Symbol.Sensor, Spot.Outdoors, Terminal.Told, Terminal.Tells);
        var core = sketch.PutControl(CompostPurposes.CoreThermostat, HeapSchemeWords.CoreThermostat, Symbol.Thermostat);
        var house = sketch.PutTeller(CompostPurposes.Thermostat, HeapSchemeWords.Thermostat, Symbol.Thermostat);
        sketch.Join(pile, Core, sensor, Terminal.Told);
        sketch.Join(
            sensor,
            Terminal.Tells,
            core,
            Terminal.Told,
            heap.OutdoorM + HeapListing.NearM,
            CompostPurposes.SensorDuct);
        sketch.Tell(house, core);
        sketch.Tell(core, sketch.Find(CompostWords.PumpDevice));
    }
}
