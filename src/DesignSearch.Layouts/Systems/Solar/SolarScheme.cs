using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Schemes;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Draws a solar plant: the water's way, what turns the frame, and who tells whom.</summary>
internal static class SolarScheme
{
    private static readonly Terminal Vent = new("vent", Medium.Water);
    private static readonly Terminal Safety = new("safety", Medium.Water);
    private static readonly Terminal Filled = new("filled", Medium.Water);
    private static readonly Terminal Drained = new("drained", Medium.Water);
    private static readonly Terminal HeatOut = new("heat out", Medium.Water);
    private static readonly Terminal HeatBack = new("heat back", Medium.Water);

    public static void Draw(SolarLoop solar, SchemeSketch sketch)
    {
        var turns = solar.Drive is not null;
        var field = sketch.Put(
            SolarPurposes.Collector,
            SolarSchemeWords.Collectors,
            Symbol.Collector,
            Spot.Outdoors,
            [Terminal.Inlet, Terminal.Outlet, Vent, .. turns ? [Terminal.Turned] : Array.Empty<Terminal>()]);
        sketch.Add(field, SolarPurposes.CollectorFittings, SolarPurposes.FixedMount, SolarPurposes.TurningMount, SolarPurposes.Anchor, SolarPurposes.Footing);
        sketch.Add(field, SolarPurposes.Ballast, SolarPurposes.WallBolt, SolarPurposes.Stops, SolarPurposes.HandBolt, SolarPurposes.ShaftSeal);
        sketch.Add(field, SolarPurposes.Grease);
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
        var isSafe = solar.ClosedTank is not null;
        var store = sketch.Put(
            SolarPurposes.Tank,
            SolarSchemeWords.Tank,
            Symbol.Tank,
            Spot.House,
            [Terminal.Inlet, Terminal.Outlet, HeatOut, HeatBack, Terminal.Tells, isSafe ? Safety : Filled]);
        sketch.Add(store, SolarPurposes.Jacket, SolarPurposes.Strap, SolarPurposes.WarningLabel, SolarPurposes.Lid, SolarPurposes.TankFittings);
        sketch.Add(store, SolarPurposes.Anode);
        if (isSafe)
            Safe(store, SolarSchemeWords.OfTank, SolarPurposes.TankRelief, SolarPurposes.TankVessel, SolarPurposes.TankFill, sketch);
        var fill = sketch.Put(SolarPurposes.FreeOutlet, SolarSchemeWords.FreeOutlet, Symbol.Plain, Spot.House, Terminal.Outlet)
            ?? sketch.Put(SolarPurposes.MakeUp, SolarSchemeWords.MakeUp, Symbol.Valve, Spot.House, Terminal.Outlet);
        sketch.Join(fill, Terminal.Outlet, store, Filled);
        return store;
    }

    private static void Safe(Component? part, string of, Purpose relief, Purpose vessel, Purpose fill, SchemeSketch sketch)
    {
        sketch.Join(part, Safety, sketch.Put(relief, SolarSchemeWords.ReliefValve + of, Symbol.ReliefValve, Spot.House, Terminal.Inlet), Terminal.Inlet);
        sketch.Join(part, Safety, sketch.Put(vessel, SolarSchemeWords.ExpansionVessel + of, Symbol.Vessel, Spot.House, Terminal.Inlet), Terminal.Inlet);
        sketch.Join(part, Safety, sketch.Put(fill, SolarSchemeWords.FillSet + of, Symbol.Valve, Spot.House, Terminal.Inlet), Terminal.Inlet);
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
            [
                Terminal.Inlet,
                Terminal.Outlet,
                .. powered ? [Terminal.Power, Terminal.Told] : Array.Empty<Terminal>(),
                .. solar.StaysFull ? [Safety] : solar.IsDrainedByValves ? [Drained] : Array.Empty<Terminal>(),
            ]);
        sketch.Join(protection, Drained, sketch.Put(SolarPurposes.DrainPoint, SolarSchemeWords.DrainPoint, Symbol.Plain, Spot.House, Terminal.Inlet), Terminal.Inlet);
        sketch.Add(protection, SolarPurposes.ValveSwitch);
        if (solar.StaysFull)
        {
            sketch.Add(protection, SolarPurposes.Antifreeze, SolarPurposes.FluidTest);
            Safe(protection, SolarSchemeWords.OfLoop, SolarPurposes.LoopRelief, SolarPurposes.LoopVessel, SolarPurposes.LoopFill, sketch);
        }

        var check = sketch.Put(SolarPurposes.CheckValve, SolarSchemeWords.CheckValve, Symbol.CheckValve, Spot.House, Terminal.Inlet, Terminal.Outlet);
        var valves = sketch.Put(SolarPurposes.BallValve, SolarSchemeWords.BallValves, Symbol.Valve, Spot.House, Terminal.Inlet, Terminal.Outlet);
        var mover = sketch.Put(SolarPurposes.Pump, SolarDevices.Pump, Symbol.Pump, Spot.House, Terminal.Inlet, Terminal.Outlet, Terminal.Power, Terminal.Told);
        var strainer = sketch.Put(SolarPurposes.Strainer, SolarSchemeWords.Strainer, Symbol.Plain, Spot.House, Terminal.Inlet, Terminal.Outlet);
        var throttle = sketch.Put(SolarPurposes.Throttle, SolarSchemeWords.Throttle, Symbol.Valve, Spot.House, Terminal.Inlet, Terminal.Outlet);
        var indicator = sketch.Put(SolarPurposes.FlowIndicator, SolarSchemeWords.FlowIndicator, Symbol.Plain, Spot.House, Terminal.Inlet, Terminal.Outlet);
        ReadOnlySpan<Purpose> pipe =
        [
            SolarPurposes.FirstMetres, SolarPurposes.LongPipe, SolarPurposes.FirstInsulation, SolarPurposes.Insulation, SolarPurposes.FirstClips,
            SolarPurposes.PipeClip, SolarPurposes.HoseLoop,
        ];
        sketch.Join(field, Terminal.Outlet, check ?? protection, Terminal.Inlet, solar.PipeRunM, pipe);
        sketch.Line(check, protection, store, valves, strainer, mover, throttle, indicator);
        sketch.Join(indicator ?? throttle ?? mover, Terminal.Outlet, field, Terminal.Inlet, solar.PipeRunM, pipe);
        return mover;
    }

    private static void Control(Component? mover, SolarLoop solar, SchemeSketch sketch)
    {
        var control = sketch.Put(SolarPurposes.Controller, SolarDevices.Controller, Symbol.Controller, Spot.House, Terminal.Told, Terminal.Tells);
        var hot = sketch.Put(SolarPurposes.CollectorSensor, SolarSchemeWords.CollectorSensor, Symbol.Sensor, Spot.Outdoors, Terminal.Tells);
        var sensors = sketch.Put(SolarPurposes.TankSensors, SolarSchemeWords.TankSensors, Symbol.Sensor, Spot.House, Terminal.Told, Terminal.Tells);
        sketch.Join(sketch.Find(SolarSchemeWords.Tank), Terminal.Tells, sensors, Terminal.Told);
        sketch.Join(sensors, Terminal.Tells, control, Terminal.Told);
        sketch.Join(hot, Terminal.Tells, control, Terminal.Told);
        sketch.Join(control, Terminal.Tells, mover, Terminal.Told);
        if (solar.Protection.Watts <= 0)
            return;
        var told = sketch.Find(SolarDevices.ProtectionPart(solar.StaysFull, true));
        var relay = sketch.Put(SolarPurposes.ExchangerRelay, SolarSchemeWords.ExchangerRelay, Symbol.Relay, Spot.House, Terminal.Told, Terminal.Tells);
        if (solar.StaysFull)
        {
            sketch.Join(control, Terminal.Tells, relay ?? told, Terminal.Told);
            sketch.Join(relay, Terminal.Tells, told, Terminal.Told);
            return;
        }

        Valves(told, sketch);
    }

    // The temperature relay by day and the light sensor by night: the changeover relay says whose the valves are.
    private static void Valves(Component? valves, SchemeSketch sketch)
    {
        var sensor = sketch.Put(SolarPurposes.ValveSensor, SolarSchemeWords.ValveSensor, Symbol.Sensor, Spot.Outdoors, Terminal.Tells);
        var warm = sketch.Put(SolarPurposes.ValveRelay, SolarSchemeWords.ValveRelay, Symbol.Thermostat, Spot.House, Terminal.Told, Terminal.Tells);
        var light = sketch.Put(SolarPurposes.ValveLight, SolarSchemeWords.ValveLight, Symbol.LightSensor, Spot.Outdoors, Terminal.Tells);
        var over = sketch.Put(
            SolarPurposes.ValveChangeover, SolarSchemeWords.ValveChangeover, Symbol.Relay, Spot.House, Terminal.Told, Terminal.Tells);
        var contactor = sketch.Put(
            SolarPurposes.ValveContactor, SolarSchemeWords.ValveContactor, Symbol.Relay, Spot.House, Terminal.Told, Terminal.Tells);
        sketch.Join(sensor, Terminal.Tells, warm, Terminal.Told);
        sketch.Join(warm, Terminal.Tells, over, Terminal.Told);
        sketch.Join(light, Terminal.Tells, over, Terminal.Told);
        sketch.Join(over, Terminal.Tells, contactor ?? valves, Terminal.Told);
        sketch.Join(contactor, Terminal.Tells, valves, Terminal.Told);
    }

    private static void Release(SolarLoop solar, Component? store, SchemeSketch sketch)
    {
        var hasFan = solar.Release.FanWatts > 0;
        var mover = sketch.Put(SolarPurposes.ReleasePump, SolarDevices.ReleasePump, Symbol.Pump, Spot.House, Terminal.Inlet, Terminal.Outlet, Terminal.Power, Terminal.Told);
        var release = sketch.Put(
            SolarPurposes.Release,
            SolarDevices.ReleasePart(hasFan),
            hasFan ? Symbol.Fan : Symbol.Plain,
            Spot.House,
            [Terminal.Inlet, Terminal.Outlet, .. hasFan ? [Terminal.Power, Terminal.Told] : Array.Empty<Terminal>()]);
        var strainer = sketch.Put(SolarPurposes.ReleaseStrainer, SolarSchemeWords.ReleaseStrainer, Symbol.Plain, Spot.House, Terminal.Inlet, Terminal.Outlet);
        sketch.Join(store, HeatOut, strainer ?? mover, Terminal.Inlet, 0, SolarPurposes.ReleasePipe);
        sketch.Join(strainer, Terminal.Outlet, mover, Terminal.Inlet);
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
