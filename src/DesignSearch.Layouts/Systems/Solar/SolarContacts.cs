using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What switches the devices of a solar plant, with what each switches at its start.</summary>
internal static class SolarContacts
{
    private const int StopsPerFrame = 2;

    // Supply, return and signal; a thermostat has a contact of two cores besides its supply, one on the mains line, neutral and earth.
    private const int SensorCores = 3;
    public const int ThermostatCores = 4;
    public const int MainsCores = 3;

    public const int CoresOfProbe = 2;
    private const int TankSensors = 2;
    private const int CutOutCores = 2;

    /// <summary>A drive's current while it starts [A].</summary>
    public static double StartA(Drive drive) => Math.Max(drive.StartCurrentA, drive.Volts > 0 ? drive.Watts / drive.Volts : 0);

    /// <summary>What turns the frames and stops them.</summary>
    public static void Turning(SolarLoop solar, Drive drive, Needs needs)
    {
        var (startA, boxM) = (StartA(drive), solar.PipeRunM + SolarCircuits.NearM);
        Reversing.Add(needs, solar.Frames, startA, SolarPurposes.Interlock, SolarPurposes.HandSwitch);
        var coils = Duty.Current(PlantState.Running, solar.Frames * Reversing.CoilA(needs.Shelf, startA));
        if (solar.Mount.Turning == TurningKind.TwoPosition && solar.HasDelayRelay)
            needs.Contact(SmallPartRole.DelayRelay, 1, SolarPurposes.DelayRelay, coils, SupplyPlan.ControlVolts);
        else if (solar.Mount.Turning == TurningKind.TwoPosition)
            needs.Contact(SmallPartRole.Timer, 1, SolarPurposes.Timer, coils, SupplyPlan.ControlVolts);
        else
            needs.Contact(SmallPartRole.SunClock, 1, SolarPurposes.SunClock, coils, SupplyPlan.ControlVolts);
        needs.Contact(SmallPartRole.LightSensor, 1, SolarPurposes.LightSensor, coils, SupplyPlan.ControlVolts, new Lead(boxM, SensorCores));
        Reversing.AddStops(needs, StopsPerFrame * solar.Frames, drive.Volts, startA, boxM, SolarPurposes.LimitSwitch, SolarPurposes.Diode);
    }

    /// <summary>What starts the collector's pump.</summary>
    public static void Controller(SolarLoop solar, Needs needs)
    {
        var starts = Duty.Current(PlantState.Running, Circuit.OfPump("", solar.Pump.Volts, solar.Pump.Watts, 0, "").StartA);
        var lacks = SolarWords.Controller(solar.ControllerVolts, solar.Heat.LockOutC);
        needs.Pick(solar.Controller, lacks, 1, SolarPurposes.Controller, starts);
        ProbeAtCollector(solar, SolarPurposes.CollectorSensor, needs);
        needs.Small(SmallPartRole.TemperatureSensor, TankSensors, SolarPurposes.TankSensors, [solar.Heat.Store, solar.Heat.StoreUnseen]);
        needs.Small(
            SmallPartRole.TankCutOut, 1, SolarPurposes.TankCutOut, [starts, solar.Heat.StoreUnseen], solar.ControllerVolts,
            new Lead(SolarCircuits.NearM, solar.ControllerVolts >= SupplyPlan.MainsVolts ? MainsCores : CutOutCores) { StartA = starts.Value });
    }

    /// <summary>By day the valves are the temperature relay's; by night the light sensor has them shut and open to the drain.</summary>
    public static void DrainValves(SolarLoop solar, Needs needs)
    {
        var protection = solar.Protection;
        var onMains = protection.Volts >= SupplyPlan.MainsVolts;
        var valves = Duty.Current(PlantState.Drained, protection.Volts > 0 ? protection.Watts / protection.Volts : 0);
        needs.Small(SmallPartRole.TemperatureRelay, 1, SolarPurposes.ValveRelay, onMains ? [] : [valves], SupplyPlan.ControlVolts);
        ProbeAtCollector(solar, SolarPurposes.ValveSensor, needs);
        needs.Small(SmallPartRole.LightSensor, 1, SolarPurposes.ValveLight, [], SupplyPlan.ControlVolts, ToCollector(solar, SensorCores));
        needs.Small(SmallPartRole.ChangeoverRelay, 1, SolarPurposes.ValveChangeover, onMains ? [] : [valves], SupplyPlan.ControlVolts);
        if (onMains)
            needs.Small(SmallPartRole.Contactor, 1, SolarPurposes.ValveContactor, [valves], protection.Volts);
        else
            needs.Small(SmallPartRole.HandSwitch, 1, SolarPurposes.ValveSwitch, [valves]);
    }

    private static void ProbeAtCollector(SolarLoop solar, Purpose purpose, Needs needs) =>
        needs.Small(SmallPartRole.TemperatureSensor, 1, purpose, [solar.Heat.AtCollector], 0, ToCollector(solar, CoresOfProbe));

    private static Lead ToCollector(SolarLoop solar, int cores) => new(solar.PipeRunM + SolarCircuits.NearM, cores);

    /// <summary>What starts the heat release while house and tank both call: a fan, or the pump where there is none; a pump of another voltage through a relay.</summary>
    public static void Release(SolarLoop solar, Needs needs)
    {
        var fan = solar.Release.Volts > 0 ? solar.Release.FanWatts * solar.ReleasePieces / solar.Release.Volts : 0;
        var pump = solar.ReleasePump is { } p ? Circuit.OfPump("", p.Volts, p.Watts, 0, "").StartA : 0;
        var startA = solar.IsRelayed ? fan : fan + pump;
        var switched = Duty.Current(PlantState.DesignNight, startA);
        var onMains = solar.ThermostatVolts >= SupplyPlan.MainsVolts;
        var lead = new Lead(SolarCircuits.NearM, onMains ? MainsCores : ThermostatCores);
        needs.Contact(SmallPartRole.Thermostat, 1, SolarPurposes.Thermostat, switched, solar.ThermostatVolts, lead);
        needs.Contact(SmallPartRole.ProbeThermostat, 1, SolarPurposes.TankThermostat, switched, solar.ThermostatVolts, onMains ? lead : default);
        needs.Small(SmallPartRole.TemperatureSensor, 1, SolarPurposes.TankThermostatSensor, [solar.Heat.Store, solar.Heat.StoreUnseen]);
        if (solar.IsRelayed)
            needs.Small(SmallPartRole.Relay, 1, SolarPurposes.Relay, [Duty.Current(PlantState.DesignNight, pump)]);
        Gathering.List(solar, startA, needs);
    }
}
