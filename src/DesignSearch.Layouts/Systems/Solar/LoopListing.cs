using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Lists pipes, tank, frost protection, pump and control of a solar plant, each with what it meets.</summary>
internal static class LoopListing
{
    // What lies so near to a collector must bear its heat when it stands dry (common practice, no source).
    private const double FirstMetresM = 3;

    // A tenth more antifreeze for spills and topping up.
    private const double Spill = 1.1;
    private const int Valves = 2;

    private static readonly (Purpose Relief, Purpose Vessel, Purpose Fill) LoopSafety =
        (SolarPurposes.LoopRelief, SolarPurposes.LoopVessel, SolarPurposes.LoopFill);

    private static readonly (Purpose Relief, Purpose Vessel, Purpose Fill) TankSafety =
        (SolarPurposes.TankRelief, SolarPurposes.TankVessel, SolarPurposes.TankFill);

    public static void PipeRun(SolarLoop solar, Needs needs)
    {
        var (run, heat) = (solar.PipeRunM, solar.Heat);
        var near = Math.Min(FirstMetresM, run);
        var first = solar.FirstMetres is { } metal && metal != solar.Pipe ? near : 0;
        if (solar.LacksFirstMetres)
            needs.Pick(null, SolarWords.MetalPipe(solar.Collector.StagnationC), 1, SolarPurposes.FirstMetres);
        if (first > 0)
            needs.Add(solar.FirstMetres!, 2 * first * NeededPart.Cuts, SolarPurposes.FirstMetres, heat.AtCollector);
        var atCollector = first > 0 ? heat.Steam : heat.AtCollector;
        needs.Add(solar.Pipe, 2 * (run - first) * NeededPart.Cuts, SolarPurposes.LongPipe, heat.Warm, heat.Started, atCollector, heat.WarmUnseen);
        if (solar.Insulation is { } insulation)
            Insulation(solar, insulation, near, needs);
        else if (!solar.Pipe.IsOutdoor)
            needs.Small(SmallPartRole.SunWrap, 2 * (run - first) * NeededPart.Cuts, SolarPurposes.SunWrap, [heat.Warm, heat.Steam]);
        needs.Small(SmallPartRole.PipeClip, 2 * near, SolarPurposes.FirstClips, [heat.AtCollector]);
        if (run > near)
            needs.Small(SmallPartRole.PipeClip, 2 * (run - near), SolarPurposes.PipeClip, [heat.Warm, heat.Started, heat.Steam]);
    }

    // Plastic foam beside a dry collector melts: there the sleeve must bear its heat, and where none does the pipe stays bare.
    private static void Insulation(SolarLoop solar, PipeInsulation insulation, double nearM, Needs needs)
    {
        var heat = solar.Heat;
        var own = solar.FirstInsulation == insulation ? 0 : nearM;
        if (own > 0 && solar.FirstInsulation is { } near)
            needs.Add(near, 2 * own * NeededPart.Cuts, SolarPurposes.FirstInsulation, heat.AtCollector);
        var unprotected = (insulation.IsOutdoor ? 0 : solar.PipeRunM - own) + (solar.FirstInsulation is { IsOutdoor: false } ? own : 0);
        needs.Small(SmallPartRole.SunWrap, 2 * unprotected * NeededPart.Cuts, SolarPurposes.SunWrap, [heat.Warm]);
        needs.Add(insulation, 2 * (solar.PipeRunM - own) * NeededPart.Cuts, SolarPurposes.Insulation, heat.Warm, heat.Started, heat.Steam, heat.WarmUnseen);
    }

    public static void Tank(SolarLoop solar, Needs needs)
    {
        var (store, unseen) = (solar.Heat.Store, solar.Heat.StoreUnseen);
        if (solar.ClosedTank is { Relief: { } relief })
            needs.Add(solar.Tank, solar.TankCount, SolarPurposes.Tank, store, unseen, Duty.Pressure(PlantState.Running, relief.OpensAtBar));
        else
            needs.Add(solar.Tank, solar.TankCount, SolarPurposes.Tank, store, unseen);
        if (solar.Jacket is { } jacket)
            needs.Add(jacket, solar.TankCount * solar.Tank.SurfaceM2 * NeededPart.Cuts, SolarPurposes.Jacket, store, unseen);
        needs.Small(SmallPartRole.Strap, solar.TankCount, SolarPurposes.Strap);
        needs.Small(SmallPartRole.WarningLabel, 1, SolarPurposes.WarningLabel);
        if (!solar.Tank.IsClosed)
        {
            needs.Small(SmallPartRole.Lid, solar.TankCount, SolarPurposes.Lid, [store]);
            if (solar.IsDrainedByValves)
                needs.Small(SmallPartRole.MakeUpValve, 1, SolarPurposes.MakeUp, [solar.Heat.Drained]);
            else
                needs.Small(SmallPartRole.FreeOutlet, 1, SolarPurposes.FreeOutlet);
        }

        if (solar.TankCount > 1)
            needs.Small(SmallPartRole.Fittings, solar.TankCount - 1, SolarPurposes.TankFittings, [store]);
    }

    public static void Protection(SolarLoop solar, Needs needs)
    {
        var heat = solar.Heat;
        needs.Add(solar.Protection, 1, SolarPurposes.Protection, heat.Warm, heat.Started, heat.Steam);
        needs.Small(SmallPartRole.AirVent, 1, SolarPurposes.AirVent, [heat.AtCollector]);
        if (solar.StaysFull)
        {
            var (litres, lacks) = (solar.LoopLitres * Spill, SolarWords.Fluid(solar.Protection.ProtectsToC));
            needs.Pick(solar.Fluid, lacks, litres, SolarPurposes.Antifreeze, heat.Warm, heat.Steam);
            needs.Small(SmallPartRole.CheckValve, 1, SolarPurposes.CheckValve, [heat.Warm, heat.Started, heat.Steam]);
            if (solar.Protection.Watts > 0 && solar.Protection.Volts != solar.ControllerVolts)
                needs.Small(SmallPartRole.Relay, 1, SolarPurposes.ExchangerRelay);
        }
        else if (solar.IsDrainedByValves)
        {
            SolarContacts.DrainValves(solar, needs);
            needs.Small(SmallPartRole.DrainPoint, 1, SolarPurposes.DrainPoint, [heat.Drained]);
        }

        if (solar.ClosedLoop is { } loop)
            Closed(loop, 1, (heat.SteamC ?? heat.OutletC, heat.ReturnC), LoopSafety, needs);
        if (solar.ClosedTank is { } tank)
            Closed(tank, solar.TankCount, (heat.CeilingC, heat.CeilingC), TankSafety, needs);
    }

    private static void Closed(
        ClosedWater closed, int count, (double Relief, double Vessel) heatC, (Purpose Relief, Purpose Vessel, Purpose Fill) to, Needs needs)
    {
        var (opens, cool) = (closed.Relief?.OpensAtBar ?? 0, Duty.Heat(PlantState.Running, heatC.Vessel));
        needs.Pick(closed.Relief, SolarWords.Relief, count, to.Relief, Duty.Heat(PlantState.StandingInSun, heatC.Relief));
        var lacks = SolarWords.Vessel(closed.WantedL, opens);
        needs.Pick(closed.Vessel, lacks, count * Math.Max(1, closed.Vessels), to.Vessel, cool, Duty.Pressure(PlantState.Running, opens));
        needs.Small(SmallPartRole.FillSet, 1, to.Fill, [cool]);
    }

    public static void PumpAndControl(SolarLoop solar, Needs needs)
    {
        var heat = solar.Heat;
        needs.Add(solar.Pump, 1, SolarPurposes.Pump, heat.Cool, heat.CoolUnseen);
        if (solar.Pump.NeedsStrainer)
            needs.Small(SmallPartRole.Strainer, 1, SolarPurposes.Strainer, [heat.Cool]);
        SolarContacts.Controller(solar, needs);
        needs.Small(SmallPartRole.BallValve, Valves, SolarPurposes.BallValve, [heat.Warm, heat.Started]);
        needs.Small(SmallPartRole.RegulatingValve, 1, SolarPurposes.Throttle, [heat.Cool]);
        needs.Small(SmallPartRole.FlowIndicator, 1, SolarPurposes.FlowIndicator, [heat.Cool]);
    }
}
