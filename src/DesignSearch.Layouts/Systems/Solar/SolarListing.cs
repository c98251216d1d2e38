using DesignSearch.Layouts.Design;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Lists what a solar plant needs.</summary>
internal static class SolarListing
{
    // What lies so near to a collector must bear its heat when it stands dry (common practice, no source).
    private const double FirstMetresM = 3;
    private const double ReleasePipeM = 2;

    // A tenth more antifreeze for spills and topping up.
    private const double Spill = 1.1;
    private const int SensorsOfTank = 1;
    private const int Valves = 2;
    private const int HosesPerFrame = 2;

    public static void List(SolarLoop solar, Needs needs)
    {
        Collector(solar, needs);
        if (solar.Turns)
            Held(solar, needs);
        if (solar.Drive is { } drive)
            Turning(solar, drive, needs);
        PipeRun(solar, needs);
        Tank(solar, needs);
        Protection(solar, needs);
        PumpAndControl(solar, needs);
        Release(solar, needs);
    }

    private static void Collector(SolarLoop solar, Needs needs)
    {
        needs.Add(solar.Collector, solar.Count, SolarPurposes.Collector);
        var byArea = solar.Mount.Unit == PartUnit.SquareMetre;
        needs.Add(solar.Mount, byArea ? solar.AreaM2 : solar.Frames, solar.Turns ? SolarPurposes.TurningMount : SolarPurposes.FixedMount);
        Founded(solar, needs);
        needs.Small(SmallPartRole.Fittings, solar.Count, SolarPurposes.CollectorFittings, [solar.StandsHot]);
    }

    // By what the mount says of itself: feet in the ground, a post in a block, bolts in a wall, weight on trays.
    private static void Founded(SolarLoop solar, Needs needs)
    {
        var (stand, founding) = (solar.Stand, solar.Mount.Founding);
        var onWall = founding == Founding.Wall;
        if (founding is Founding.Feet or Founding.Wall)
            needs.Pick(stand.Anchor, SolarWords.Anchor(onWall), stand.Anchors, onWall ? SolarPurposes.WallBolt : SolarPurposes.Anchor);
        if (stand.ConcreteM3 > 0)
            needs.Small(SmallPartRole.Cement, stand.ConcreteM3 * solar.Frames, SolarPurposes.Footing);
        if (stand.BallastKg > 0)
            needs.Small(SmallPartRole.Ballast, stand.BallastKg * solar.Frames, SolarPurposes.Ballast);
    }

    // Whatever turns, by a drive or by hand, wants stops, what keeps it there in a storm, and pipes that follow.
    private static void Held(SolarLoop solar, Needs needs)
    {
        var stand = solar.Stand;
        needs.Pick(stand.Stops, SolarWords.Stops(stand.TurnsNm), solar.Frames, SolarPurposes.Stops);
        var bolt = stand.SpringBolt is null ? SolarPurposes.HandBolt : SolarPurposes.SpringBolt;
        needs.Pick(stand.Bolt, SolarWords.Bolt(stand.TurnsNm), solar.Frames, bolt);
        needs.Small(SmallPartRole.HoseLoop, HosesPerFrame * solar.Frames, SolarPurposes.HoseLoop, [solar.StandsHot]);
    }

    private static void Turning(SolarLoop solar, Drive drive, Needs needs)
    {
        needs.Add(drive, solar.Frames, SolarPurposes.Drive);
        SolarContacts.Turning(solar, drive, needs);
        needs.Chosen(solar.ShaftSeal, SmallPartRole.ShaftSeal, solar.Frames, SolarPurposes.ShaftSeal);
    }

    private static void PipeRun(SolarLoop solar, Needs needs)
    {
        var run = solar.PipeRunM;
        var first = solar.FirstMetres is { } metal && metal != solar.Pipe ? Math.Min(FirstMetresM, run) : 0;
        if (solar.LacksFirstMetres)
            needs.Pick(null, SolarWords.MetalPipe(solar.Collector.StagnationC), 1, SolarPurposes.FirstMetres);
        if (first > 0)
            needs.Add(solar.FirstMetres!, 2 * first * NeededPart.Cuts, SolarPurposes.FirstMetres);
        needs.Add(solar.Pipe, 2 * (run - first) * NeededPart.Cuts, SolarPurposes.LongPipe);
        if (solar.Insulation is { } insulation)
            Insulation(solar, insulation, needs);
        needs.Small(SmallPartRole.PipeClip, 2 * run, SolarPurposes.PipeClip);
    }

    // Plastic foam beside a dry collector melts: there the sleeve must bear its heat, and where none does the pipe stays bare.
    private static void Insulation(SolarLoop solar, PipeInsulation insulation, Needs needs)
    {
        var own = solar.FirstInsulation == insulation ? 0 : Math.Min(FirstMetresM, solar.PipeRunM);
        if (own > 0 && solar.FirstInsulation is { } near)
            needs.Add(near, 2 * own * NeededPart.Cuts, SolarPurposes.FirstInsulation);
        needs.Add(insulation, 2 * (solar.PipeRunM - own) * NeededPart.Cuts, SolarPurposes.Insulation);
    }

    private static void Tank(SolarLoop solar, Needs needs)
    {
        needs.Add(solar.Tank, solar.TankCount, SolarPurposes.Tank);
        if (solar.Jacket is { } jacket)
            needs.Add(jacket, solar.TankCount * solar.Tank.SurfaceM2 * NeededPart.Cuts, SolarPurposes.Jacket);
        needs.Small(SmallPartRole.Strap, solar.TankCount, SolarPurposes.Strap);
        needs.Small(SmallPartRole.WarningLabel, 1, SolarPurposes.WarningLabel);
        if (!solar.Tank.IsClosed)
            needs.Small(SmallPartRole.Lid, solar.TankCount, SolarPurposes.Lid);
        if (solar.TankCount > 1)
            needs.Small(SmallPartRole.Fittings, solar.TankCount - 1, SolarPurposes.TankFittings);
    }

    private static void Protection(SolarLoop solar, Needs needs)
    {
        needs.Add(solar.Protection, 1, SolarPurposes.Protection);
        needs.Small(SmallPartRole.AirVent, 1, SolarPurposes.AirVent, [solar.StandsHot]);
        if (solar.StaysFull)
        {
            needs.Small(SmallPartRole.AntifreezeFluid, solar.LoopLitres * Spill, SolarPurposes.Antifreeze);
            needs.Small(SmallPartRole.CheckValve, 1, SolarPurposes.CheckValve);
        }

        if (solar.ClosedCount == 0)
            return;
        needs.Small(SmallPartRole.ReliefValve, solar.ClosedCount, SolarPurposes.ReliefValve);
        needs.Small(SmallPartRole.ExpansionVessel, solar.ClosedCount, SolarPurposes.ExpansionVessel);
        needs.Small(SmallPartRole.FillSet, 1, SolarPurposes.FillSet);
    }

    private static void PumpAndControl(SolarLoop solar, Needs needs)
    {
        needs.Add(solar.Pump, 1, SolarPurposes.Pump);
        SolarContacts.Controller(solar, needs);
        needs.Small(SmallPartRole.TemperatureSensor, SensorsOfTank, SolarPurposes.Sensors);
        needs.Small(SmallPartRole.BallValve, Valves, SolarPurposes.BallValve);
    }

    private static void Release(SolarLoop solar, Needs needs)
    {
        needs.Add(solar.Pipe, 2 * ReleasePipeM * NeededPart.Cuts, SolarPurposes.ReleasePipe);
        needs.Add(solar.Release, solar.ReleaseCount, SolarPurposes.Release);
        needs.Pick(solar.ReleasePump, SolarWords.ReleasePump(solar.Pump.Volts), 1, SolarPurposes.ReleasePump);
        SolarContacts.Release(solar, needs);
    }
}
