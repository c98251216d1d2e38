using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Schemes;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Draws a solar plant: the water's way, what turns the frame, and who tells whom.</summary>
internal static class SolarScheme
{
    private static readonly Terminal Vent = new("vent", Medium.Water);
    private static readonly Terminal Safety = new("safety", Medium.Water);
    private static readonly Terminal HeatOut = new("heat out", Medium.Water);
    private static readonly Terminal HeatBack = new("heat back", Medium.Water);

    public static void Draw(SolarLoop solar, SchemeSketch sketch)
    {
        var turns = solar.Drive is not null;
        var field = sketch.Put(
            SolarPurposes.Collector, SolarSchemeWords.Collectors, Symbol.Collector, Spot.Outdoors, [Terminal.Inlet, Terminal.Outlet, Vent, .. turns ? [Terminal.Turned] : Array.Empty<Terminal>()]);
        sketch.Add(field, SolarPurposes.CollectorFittings, SolarPurposes.FixedMount, SolarPurposes.TurningMount, SolarPurposes.Anchor, SolarPurposes.Footing);
        sketch.Add(field, SolarPurposes.Ballast, SolarPurposes.WallBolt, SolarPurposes.Stops, SolarPurposes.HandBolt, SolarPurposes.ShaftSeal);
        sketch.Join(field, Vent, sketch.Put(SolarPurposes.AirVent, SolarSchemeWords.AirVent, Symbol.Vent, Spot.Outdoors, Terminal.Inlet), Terminal.Inlet);
        if (turns)
            Turning(solar, field, sketch);
        var store = Store(solar, sketch);
        var mover = Loop(solar, field, store, sketch);
        Control(mover, solar, sketch);
        Release(solar, store, sketch);
    }

    private static void Turning(SolarLoop solar, Component? field, SchemeSketch sketch)
    {
        IReadOnlyList<string> names = [.. Enumerable.Range(1, solar.Frames).Select(f => SolarDevices.Drive(f, solar.Frames))];
        var interlock = sketch.Put(SolarPurposes.Interlock, SolarSchemeWords.Interlock, Symbol.Relay, Spot.House, Terminal.Told, Terminal.Tells);
        sketch.Add(interlock, SolarPurposes.HandSwitch);
        var clock = sketch.Put(SolarPurposes.Timer, SolarSchemeWords.Timer, Symbol.Clock, Spot.House, Terminal.Tells)
            ?? sketch.Put(SolarPurposes.DelayRelay, SolarSchemeWords.DelayRelay, Symbol.Clock, Spot.House, Terminal.Tells)
            ?? sketch.Put(SolarPurposes.SunClock, SolarSchemeWords.SunClock, Symbol.Clock, Spot.House, Terminal.Tells);
        sketch.Join(clock, Terminal.Tells, interlock, Terminal.Told);
        sketch.Join(sketch.Put(SolarPurposes.LightSensor, SolarSchemeWords.LightSensor, Symbol.LightSensor, Spot.Outdoors, Terminal.Tells), Terminal.Tells, interlock, Terminal.Told);
        var stops = sketch.Put(SolarPurposes.LimitSwitch, SolarSchemeWords.LimitSwitches, Symbol.LimitSwitch, Spot.Outdoors, Terminal.Tells);
        sketch.Add(stops, SolarPurposes.Diode);
        foreach (var drive in sketch.PutEach(SolarPurposes.Drive, names, Symbol.Motor, Spot.Outdoors, Terminal.Turns, Terminal.Power, Terminal.Told))
        {
            sketch.Add(drive, SolarPurposes.SpringBolt);
            sketch.Join(drive, Terminal.Turns, field, Terminal.Turned);
            sketch.Join(interlock, Terminal.Tells, drive, Terminal.Told);
            sketch.Join(stops, Terminal.Tells, drive, Terminal.Told);
        }
    }

    private static Component? Store(SolarLoop solar, SchemeSketch sketch)
    {
        var isSafe = solar.Tank.IsClosed && !solar.StaysFull;
        var store = sketch.Put(
            SolarPurposes.Tank,
            SolarSchemeWords.Tank,
            Symbol.Tank,
            Spot.House,
            [Terminal.Inlet, Terminal.Outlet, HeatOut, HeatBack, Terminal.Tells, .. isSafe ? [Safety] : Array.Empty<Terminal>()]);
        sketch.Add(store, SolarPurposes.Jacket, SolarPurposes.Strap, SolarPurposes.WarningLabel, SolarPurposes.Lid, SolarPurposes.TankFittings);
        if (isSafe)
            Safe(store, sketch);
        return store;
    }

    private static void Safe(Component? part, SchemeSketch sketch)
    {
        sketch.Join(part, Safety, sketch.Put(SolarPurposes.ReliefValve, SolarSchemeWords.ReliefValve, Symbol.ReliefValve, Spot.House, Terminal.Inlet), Terminal.Inlet);
        sketch.Join(part, Safety, sketch.Put(SolarPurposes.ExpansionVessel, SolarSchemeWords.ExpansionVessel, Symbol.Vessel, Spot.House, Terminal.Inlet), Terminal.Inlet);
        sketch.Join(part, Safety, sketch.Put(SolarPurposes.FillSet, SolarSchemeWords.FillSet, Symbol.Valve, Spot.House, Terminal.Inlet), Terminal.Inlet);
    }

    // From the collector's outlet through what is on the warm pipe to the store, and by the pump back along the cool one.
    private static Component? Loop(SolarLoop solar, Component? field, Component? store, SchemeSketch sketch)
    {
        var powered = solar.Protection.Watts > 0;
        var protection = sketch.Put(
            SolarPurposes.Protection,
            SolarDevices.ProtectionPart(solar.StaysFull, powered),
            Symbol.Plain,
            Spot.House,
            [Terminal.Inlet, Terminal.Outlet, .. powered ? [Terminal.Power, Terminal.Told] : Array.Empty<Terminal>(), .. solar.StaysFull ? [Safety] : Array.Empty<Terminal>()]);
        sketch.Add(protection, SolarPurposes.ValveSwitch);
        if (solar.StaysFull)
        {
            sketch.Add(protection, SolarPurposes.Antifreeze);
            Safe(protection, sketch);
        }

        var check = sketch.Put(SolarPurposes.CheckValve, SolarSchemeWords.CheckValve, Symbol.CheckValve, Spot.House, Terminal.Inlet, Terminal.Outlet);
        var valves = sketch.Put(SolarPurposes.BallValve, SolarSchemeWords.BallValves, Symbol.Valve, Spot.House, Terminal.Inlet, Terminal.Outlet);
        var mover = sketch.Put(SolarPurposes.Pump, SolarDevices.Pump, Symbol.Pump, Spot.House, Terminal.Inlet, Terminal.Outlet, Terminal.Power, Terminal.Told);
        ReadOnlySpan<Purpose> pipe =
        [
            SolarPurposes.FirstMetres, SolarPurposes.LongPipe, SolarPurposes.FirstInsulation, SolarPurposes.Insulation, SolarPurposes.PipeClip, SolarPurposes.HoseLoop,
        ];
        sketch.Join(field, Terminal.Outlet, check ?? protection, Terminal.Inlet, solar.PipeRunM, pipe);
        sketch.Line(check, protection, store, valves, mover);
        sketch.Join(mover, Terminal.Outlet, field, Terminal.Inlet, solar.PipeRunM, pipe);
        return mover;
    }

    private static void Control(Component? mover, SolarLoop solar, SchemeSketch sketch)
    {
        var control = sketch.Put(SolarPurposes.Controller, SolarDevices.Controller, Symbol.Controller, Spot.House, Terminal.Told, Terminal.Tells);
        var sensors = sketch.Put(SolarPurposes.Sensors, SolarSchemeWords.Sensors, Symbol.Sensor, Spot.House, Terminal.Told, Terminal.Tells);
        sketch.Join(sketch.Find(SolarSchemeWords.Tank), Terminal.Tells, sensors, Terminal.Told);
        sketch.Join(sensors, Terminal.Tells, control, Terminal.Told);
        var outlet = sketch.Put(SolarPurposes.OutletSensor, SolarSchemeWords.OutletSensor, Symbol.Sensor, Spot.Outdoors, Terminal.Tells);
        sketch.Join(outlet, Terminal.Tells, control, Terminal.Told);
        sketch.Join(control, Terminal.Tells, mover, Terminal.Told);
        if (solar.Protection.Watts > 0)
            sketch.Join(control, Terminal.Tells, sketch.Find(SolarDevices.ProtectionPart(solar.StaysFull, true)), Terminal.Told);
    }

    private static void Release(SolarLoop solar, Component? store, SchemeSketch sketch)
    {
        var hasFan = solar.Release.FanWatts > 0;
        var mover = sketch.Put(SolarPurposes.ReleasePump, SolarDevices.ReleasePump, Symbol.Pump, Spot.House, Terminal.Inlet, Terminal.Outlet, Terminal.Power, Terminal.Told);
        var release = sketch.Put(
            SolarPurposes.Release, SolarDevices.ReleasePart(hasFan), hasFan ? Symbol.Fan : Symbol.Plain, Spot.House, [Terminal.Inlet, Terminal.Outlet, .. hasFan ? [Terminal.Power, Terminal.Told] : Array.Empty<Terminal>()]);
        sketch.Join(store, HeatOut, mover, Terminal.Inlet, 0, SolarPurposes.ReleasePipe);
        sketch.Join(mover, Terminal.Outlet, release, Terminal.Inlet);
        sketch.Join(release, Terminal.Outlet, store, HeatBack, 0, SolarPurposes.ReleasePipe);
        var thermostat = sketch.Put(SolarPurposes.Thermostat, SolarDevices.Thermostat, Symbol.Thermostat, Spot.House, Terminal.Tells);
        var relay = sketch.Put(SolarPurposes.Relay, SolarSchemeWords.Relay, Symbol.Relay, Spot.House, Terminal.Told, Terminal.Tells);
        sketch.Join(thermostat, Terminal.Tells, relay, Terminal.Told);
        sketch.Join(relay ?? thermostat, Terminal.Tells, mover, Terminal.Told);
        if (hasFan)
            sketch.Join(thermostat, Terminal.Tells, release, Terminal.Told);
    }
}
