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
        sketch.Add(
            field,
            SolarPurposes.CollectorFittings, SolarPurposes.FixedMount, SolarPurposes.TurningMount, SolarPurposes.Anchor,
            SolarPurposes.Footing);
        sketch.Add(
            field,
            SolarPurposes.Ballast, SolarPurposes.WallBolt, SolarPurposes.Stops, SolarPurposes.HandBolt, SolarPurposes.ShaftSeal);
        sketch.Add(field, SolarPurposes.WallMount, SolarPurposes.BallastMount, SolarPurposes.Grease);
        sketch.PutOn(field, Vent, SolarPurposes.AirVent, SolarSchemeWords.AirVent, Symbol.Vent, Spot.Outdoors);
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
        var interlock = sketch.PutControl(SolarPurposes.Interlock, SolarSchemeWords.Interlock, Symbol.Relay);
        sketch.Add(interlock, SolarPurposes.HandSwitch);
        var clock = sketch.PutTeller(SolarPurposes.Timer, SolarSchemeWords.Timer, Symbol.Clock)
            ?? sketch.PutTeller(SolarPurposes.DelayRelay, SolarSchemeWords.DelayRelay, Symbol.Clock)
            ?? sketch.PutTeller(SolarPurposes.SunClock, SolarSchemeWords.SunClock, Symbol.Clock);
        sketch.Tell(clock, interlock);
        var light = sketch.PutTeller(SolarPurposes.LightSensor, SolarSchemeWords.LightSensor, Symbol.LightSensor, Spot.Outdoors);
        sketch.Tell(light, interlock);
        var stops = sketch.PutTeller(SolarPurposes.LimitSwitch, SolarSchemeWords.LimitSwitches, Symbol.LimitSwitch, Spot.Outdoors);
        sketch.Add(stops, SolarPurposes.Diode);
        var drives = sketch.PutEach(SolarPurposes.Drive, names, Symbol.Motor, Spot.Outdoors, Terminal.Turns, Terminal.Power, Terminal.Told);
        foreach (var drive in drives)
        {
            sketch.Add(drive, SolarPurposes.SpringBolt);
            sketch.Join(drive, Terminal.Turns, field, Terminal.Turned);
            sketch.Tell(interlock, drive);
            sketch.Tell(stops, drive);
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
        sketch.Add(
            store,
            SolarPurposes.Jacket, SolarPurposes.Strap, SolarPurposes.WarningLabel, SolarPurposes.Lid, SolarPurposes.TankFittings);
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
        sketch.PutOn(part, Safety, relief, SolarSchemeWords.ReliefValve + of, Symbol.ReliefValve);
        sketch.PutOn(part, Safety, vessel, SolarSchemeWords.ExpansionVessel + of, Symbol.Vessel);
        sketch.PutOn(part, Safety, fill, SolarSchemeWords.FillSet + of, Symbol.Valve);
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
        sketch.PutOn(protection, Drained, SolarPurposes.DrainPoint, SolarSchemeWords.DrainPoint, Symbol.Plain);
        sketch.Add(protection, SolarPurposes.ValveSwitch);
        if (solar.StaysFull)
        {
            sketch.Add(protection, SolarPurposes.Antifreeze, SolarPurposes.FluidTest);
            Safe(protection, SolarSchemeWords.OfLoop, SolarPurposes.LoopRelief, SolarPurposes.LoopVessel, SolarPurposes.LoopFill, sketch);
        }

        var check = sketch.PutInLine(SolarPurposes.CheckValve, SolarSchemeWords.CheckValve, Symbol.CheckValve);
        var valves = sketch.PutInLine(SolarPurposes.BallValve, SolarSchemeWords.BallValves, Symbol.Valve);
        var mover = sketch.PutPump(SolarPurposes.Pump, SolarDevices.Pump);
        var strainer = sketch.PutInLine(SolarPurposes.Strainer, SolarSchemeWords.Strainer, Symbol.Plain);
        var throttle = sketch.PutInLine(SolarPurposes.Throttle, SolarSchemeWords.Throttle, Symbol.Valve);
        var indicator = sketch.PutInLine(SolarPurposes.FlowIndicator, SolarSchemeWords.FlowIndicator, Symbol.Plain);
        ReadOnlySpan<Purpose> pipe =
        [
            SolarPurposes.FirstMetres, SolarPurposes.LongPipe, SolarPurposes.FirstInsulation, SolarPurposes.Insulation,
            SolarPurposes.FirstClips,
            SolarPurposes.PipeClip, SolarPurposes.HoseLoop, SolarPurposes.SunWrap,
        ];
        sketch.Join(field, Terminal.Outlet, check ?? protection, Terminal.Inlet, solar.PipeRunM, pipe);
        sketch.Line(check, protection, store, valves, strainer, mover, throttle, indicator);
        sketch.Join(indicator ?? throttle ?? mover, Terminal.Outlet, field, Terminal.Inlet, solar.PipeRunM, pipe);
        return mover;
    }

    private static void Control(Component? mover, SolarLoop solar, SchemeSketch sketch)
    {
        var control = sketch.PutControl(SolarPurposes.Controller, SolarDevices.Controller, Symbol.Controller);
        var hot = sketch.PutTeller(SolarPurposes.CollectorSensor, SolarSchemeWords.CollectorSensor, Symbol.Sensor, Spot.Outdoors);
        var sensors = sketch.PutControl(SolarPurposes.TankSensors, SolarSchemeWords.TankSensors, Symbol.Sensor);
        sketch.Tell(sketch.Find(SolarSchemeWords.Tank), sensors);
        sketch.Tell(sensors, control);
        sketch.Tell(hot, control);
        sketch.Tell(control, mover);
        sketch.Tell(sketch.PutTeller(SolarPurposes.TankCutOut, SolarSchemeWords.TankCutOut, Symbol.LimitSwitch), mover);
        if (solar.Protection.Watts <= 0)
            return;
        var told = sketch.Find(SolarDevices.ProtectionPart(solar.StaysFull, true));
        var relay = sketch.PutControl(SolarPurposes.ExchangerRelay, SolarSchemeWords.ExchangerRelay, Symbol.Relay);
        if (solar.StaysFull)
        {
            sketch.Tell(control, relay ?? told);
            sketch.Tell(relay, told);
            return;
        }

        Valves(told, sketch);
    }

    // The temperature relay by day and the light sensor by night: the changeover relay says whose the valves are.
    private static void Valves(Component? valves, SchemeSketch sketch)
    {
        var sensor = sketch.PutTeller(SolarPurposes.ValveSensor, SolarSchemeWords.ValveSensor, Symbol.Sensor, Spot.Outdoors);
        var warm = sketch.PutControl(SolarPurposes.ValveRelay, SolarSchemeWords.ValveRelay, Symbol.Thermostat);
        var light = sketch.PutTeller(SolarPurposes.ValveLight, SolarSchemeWords.ValveLight, Symbol.LightSensor, Spot.Outdoors);
        var over = sketch.PutControl(SolarPurposes.ValveChangeover, SolarSchemeWords.ValveChangeover, Symbol.Relay);
        var contactor = sketch.PutControl(SolarPurposes.ValveContactor, SolarSchemeWords.ValveContactor, Symbol.Relay);
        sketch.Tell(sensor, warm);
        sketch.Tell(warm, over);
        sketch.Tell(light, over);
        sketch.Tell(over, contactor ?? valves);
        sketch.Tell(contactor, valves);
    }

    private static void Release(SolarLoop solar, Component? store, SchemeSketch sketch)
    {
        var hasFan = solar.Release.FanWatts > 0;
        var mover = sketch.PutPump(SolarPurposes.ReleasePump, SolarDevices.ReleasePump);
        var release = sketch.Put(
            SolarPurposes.Release,
            SolarDevices.ReleasePart(hasFan),
            hasFan ? Symbol.Fan : Symbol.Plain,
            Spot.House,
            [Terminal.Inlet, Terminal.Outlet, .. hasFan ? [Terminal.Power, Terminal.Told] : Array.Empty<Terminal>()]);
        var strainer = sketch.PutInLine(SolarPurposes.ReleaseStrainer, SolarSchemeWords.ReleaseStrainer, Symbol.Plain);
        sketch.Join(store, HeatOut, strainer ?? mover, Terminal.Inlet, SolarListing.ReleasePipeM, SolarPurposes.ReleasePipe);
        sketch.Join(strainer, Terminal.Outlet, mover, Terminal.Inlet);
        sketch.Join(mover, Terminal.Outlet, release, Terminal.Inlet);
        sketch.Join(release, Terminal.Outlet, store, HeatBack, SolarListing.ReleasePipeM, SolarPurposes.ReleasePipe);
        var thermostat = sketch.PutTeller(SolarPurposes.Thermostat, SolarDevices.Thermostat, Symbol.Thermostat);
        var relay = sketch.PutControl(SolarPurposes.Relay, SolarSchemeWords.Relay, Symbol.Relay);
        var sensor = sketch.PutControl(SolarPurposes.TankThermostatSensor, SolarSchemeWords.TankThermostatSensor, Symbol.Sensor);
        var tank = sketch.PutControl(SolarPurposes.TankThermostat, SolarSchemeWords.TankThermostat, Symbol.Thermostat);
        sketch.Tell(store, sensor);
        sketch.Tell(sensor, tank);
        sketch.Tell(thermostat, tank);
        sketch.Tell(tank, relay);
        sketch.Tell(relay ?? tank, mover);
        if (hasFan)
            sketch.Tell(tank, release);
        Gathering.Draw(sketch, store, relay, relay is null ? mover : null, hasFan ? release : null);
    }
}
