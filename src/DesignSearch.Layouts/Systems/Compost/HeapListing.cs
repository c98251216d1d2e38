using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Small;
using DesignSearch.Season.Compost;

namespace DesignSearch.Layouts.Systems.Compost;

/// <summary>Lists what a compost heap needs.</summary>
internal static class HeapListing
{
    /// <summary>From the control box to the pump [m].</summary>
    public const double NearM = 3;

    // A tenth more for spills and topping up.
    private const double Spill = 1.1;
    private const double Cocks = 2;

    // An electronic thermostat has a supply and a contact, one on the mains line, neutral and earth; a probe has two.
    private const int LowCores = 4;
    private const int MainsCores = 3;
    private const int CoresOfProbe = 2;

    /// <summary>What everything that its water runs through meets.</summary>
    private static Duty Hot => Duty.Heat(PlantState.Running, HeapPlan.HottestC);

    /// <summary>What lies in the core meets when nothing moves its water.</summary>
    private static Duty Standing => Duty.Heat(PlantState.PowerCut, HeapPlan.HottestC);

    /// <summary>Voltage that its controls are for [V].</summary>
    public static double ControlVolts(HeapPlan heap) =>
        heap.Pump.Volts >= SupplyPlan.MainsVolts ? SupplyPlan.MainsVolts : SupplyPlan.ControlVolts;

    public static void List(HeapPlan heap, Needs needs)
    {
        Heap(heap, needs);
        Pipes(heap, needs);
        Control(heap, needs);
    }

    private static void Heap(HeapPlan heap, Needs needs)
    {
        needs.Add(heap.Mix, heap.VolumeM3, CompostPurposes.Mix);
        needs.Hire(SmallPartRole.HeapHire, 1, CompostPurposes.Hire);
        if (heap.Wrap is not null)
            needs.Add(heap.Wrap, CompostHeap.SurfaceM2(heap.VolumeM3) * NeededPart.Cuts, CompostPurposes.Wrap);
        needs.Small(SmallPartRole.HeapCage, CompostHeap.SideM2(heap.VolumeM3) * NeededPart.Cuts, CompostPurposes.Cage);
        needs.Small(SmallPartRole.HeapTray, CompostHeap.GroundM2(heap.VolumeM3) * NeededPart.Cuts, CompostPurposes.Tray);
        needs.Small(SmallPartRole.ProbeThermometer, 1, CompostPurposes.Probe, [Hot]);
    }

    private static void Pipes(HeapPlan heap, Needs needs)
    {
        needs.Add(heap.Coil, 2 * heap.CoilM * NeededPart.Cuts, CompostPurposes.Coil, Hot, Standing);
        needs.Add(heap.Coil, 2 * heap.OutdoorM * NeededPart.Cuts, CompostPurposes.Outdoor, Hot);
        if (heap.Sleeve is { } sleeve)
            needs.Add(sleeve, 2 * heap.OutdoorM * NeededPart.Cuts, CompostPurposes.Sleeve, Hot);
        else
            needs.Pick(null, CompostWords.Sleeve(heap.Coil.OuterMm, HeapPlan.HottestC), 1, CompostPurposes.Sleeve);
        needs.Small(SmallPartRole.AntifreezeConcentrate, heap.GlycolLitres * Spill, CompostPurposes.Glycol, [Hot]);
        needs.Small(SmallPartRole.FluidTest, heap.GlycolShare > 0 ? 1 : 0, CompostPurposes.FluidTest);
        needs.Small(SmallPartRole.HeaderTank, heap.HeaderTanks, CompostPurposes.Header, [Hot]);
        needs.Small(SmallPartRole.AirVent, 1, CompostPurposes.Vent, [Hot]);
        needs.Small(SmallPartRole.BallValve, Cocks, CompostPurposes.Cock, [Hot]);
        needs.Small(SmallPartRole.Strainer, 1, CompostPurposes.Strainer, [Hot]);
        needs.Small(SmallPartRole.HeapFittings, 1, CompostPurposes.Fittings, [Hot]);
    }

    private static void Control(HeapPlan heap, Needs needs)
    {
        var volts = ControlVolts(heap);
        var contact = Duty.Current(PlantState.Running, Circuit(heap).StartA);
        var house = new Lead(NearM, volts >= SupplyPlan.MainsVolts ? MainsCores : LowCores);
        needs.Add(heap.Pump, 1, CompostPurposes.Pump, Hot);
        needs.Contact(SmallPartRole.Thermostat, 1, CompostPurposes.Thermostat, contact, volts, house);
        needs.Contact(SmallPartRole.ProbeThermostat, 1, CompostPurposes.CoreThermostat, contact, volts);
        var lead = new Lead(heap.OutdoorM + NearM, CoresOfProbe);
        needs.Small(SmallPartRole.TemperatureSensor, 1, CompostPurposes.CoreSensor, [Hot, Standing], 0, lead);
        needs.Small(SmallPartRole.Conduit, heap.OutdoorM, CompostPurposes.SensorDuct);
    }

    /// <summary>What draws current.</summary>
    public static Circuit Circuit(HeapPlan heap) =>
        Design.Wiring.Circuit.OfPump(CompostWords.PumpDevice, heap.Pump.Volts, heap.Pump.Watts, NearM, CompostWords.PumpSwitch);
}
