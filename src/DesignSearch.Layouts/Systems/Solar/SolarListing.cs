using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Lists what a solar plant needs.</summary>
internal static class SolarListing
{
    private const double ReleasePipeM = 2;
    private const int FootingsPerFrame = 2;
    private const int StopsPerFrame = 2;
    private const int HosesPerFrame = 2;

    public static void List(SolarLoop solar, Needs needs)
    {
        Collector(solar, needs);
        if (solar.Drive is { } drive)
            Turning(solar, drive, needs);
        LoopListing.PipeRun(solar, needs);
        LoopListing.Tank(solar, needs);
        LoopListing.Protection(solar, needs);
        LoopListing.PumpAndControl(solar, needs);
        Release(solar, needs);
    }

    private static void Collector(SolarLoop solar, Needs needs)
    {
        var turns = solar.Mount.Turning != TurningKind.Fixed;
        if (solar.ClosedLoop is { Relief: { } relief })
            needs.Add(solar.Collector, solar.Count, SolarPurposes.Collector, Duty.Pressure(PlantState.Running, relief.OpensAtBar));
        else
            needs.Add(solar.Collector, solar.Count, SolarPurposes.Collector);
        var byArea = solar.Mount.Unit == PartUnit.SquareMetre;
        needs.Add(solar.Mount, byArea ? solar.AreaM2 : solar.Frames, turns ? SolarPurposes.TurningMount : SolarPurposes.FixedMount);
        needs.Small(SmallPartRole.Anchor, solar.Anchors, SolarPurposes.Anchor);
        if (turns)
            needs.Small(SmallPartRole.Cement, FootingsPerFrame * solar.Frames, SolarPurposes.Footing);
        needs.Small(SmallPartRole.Fittings, solar.Count, SolarPurposes.CollectorFittings, [solar.Heat.AtCollector]);
    }

    private static void Turning(SolarLoop solar, Drive drive, Needs needs)
    {
        needs.Add(drive, solar.Frames, SolarPurposes.Drive);
        if (solar.Mount.Turning == TurningKind.TwoPosition)
            needs.Small(SmallPartRole.Timer, 1, SolarPurposes.Timer, SupplyPlan.ControlVolts);
        else
            needs.Small(SmallPartRole.SunClock, 1, SolarPurposes.SunClock, SupplyPlan.ControlVolts);
        needs.Small(SmallPartRole.LightSensor, 1, SolarPurposes.LightSensor);
        needs.Small(SmallPartRole.LimitSwitch, StopsPerFrame * solar.Frames, SolarPurposes.LimitSwitch);
        needs.Small(SmallPartRole.ReversingInterlock, solar.Frames, SolarPurposes.Interlock, SupplyPlan.ControlVolts);
        needs.Chosen(solar.ShaftSeal, SmallPartRole.ShaftSeal, solar.Frames, SolarPurposes.ShaftSeal);
        needs.Small(SmallPartRole.HoseLoop, HosesPerFrame * solar.Frames, SolarPurposes.HoseLoop, [solar.Heat.AtCollector]);
    }

    private static void Release(SolarLoop solar, Needs needs)
    {
        var store = solar.Heat.Store;
        needs.Add(solar.Pipe, 2 * ReleasePipeM * NeededPart.Cuts, SolarPurposes.ReleasePipe, store);
        needs.Add(solar.Release, solar.ReleaseCount, SolarPurposes.Release, store);
        needs.Pick(solar.ReleasePump, SolarWords.ReleasePump(solar.Pump.Volts), 1, SolarPurposes.ReleasePump, store);
        if (solar.ReleasePump is { NeedsStrainer: true })
            needs.Small(SmallPartRole.Strainer, 1, SolarPurposes.ReleaseStrainer, [store]);
        needs.Small(SmallPartRole.Thermostat, 1, SolarPurposes.Thermostat, solar.ThermostatVolts);
        if (solar.IsRelayed)
            needs.Small(SmallPartRole.Relay, 1, SolarPurposes.Relay);
    }
}
