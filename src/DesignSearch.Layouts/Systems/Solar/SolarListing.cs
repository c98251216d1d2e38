using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Lists what a solar plant needs.</summary>
internal static class SolarListing
{
    /// <summary>From the tank to the heat release, one way [m] (common practice, no source).</summary>
    public const double ReleasePipeM = 2;

    private const int HosesPerFrame = 2;

    public static void List(SolarLoop solar, Needs needs)
    {
        Collector(solar, needs);
        if (solar.Turns)
            Held(solar, needs);
        if (solar.Drive is { } drive)
            Turning(solar, drive, needs);
        LoopListing.PipeRun(solar, needs);
        LoopListing.Tank(solar, needs);
        LoopListing.Protection(solar, needs);
        LoopListing.PumpAndControl(solar, needs);
        Release(solar, needs);
        Upkeep(solar, needs);
    }

    private static void Upkeep(SolarLoop solar, Needs needs)
    {
        if (solar.StaysFull)
            needs.Small(SmallPartRole.FluidTest, 1, SolarPurposes.FluidTest);
        if (solar.Mount.Turning != TurningKind.Fixed)
            needs.Small(SmallPartRole.Grease, 1, SolarPurposes.Grease);
        needs.Small(SmallPartRole.Anode, solar.Tank.IsClosed ? solar.TankCount : 0, SolarPurposes.Anode, [solar.Heat.Store]);
    }

    private static void Collector(SolarLoop solar, Needs needs)
    {
        if (solar.ClosedLoop is { Relief: { } relief })
            needs.Add(solar.Collector, solar.Count, SolarPurposes.Collector, Duty.Pressure(PlantState.Running, relief.OpensAtBar));
        else
            needs.Add(solar.Collector, solar.Count, SolarPurposes.Collector);
        var byArea = solar.Mount.Unit == PartUnit.SquareMetre;
        needs.Add(solar.Mount, byArea ? solar.AreaM2 : solar.Frames, MountPurpose(solar));
        Founded(solar, needs);
        needs.Small(SmallPartRole.Fittings, solar.Count, SolarPurposes.CollectorFittings, [solar.Heat.AtCollector]);
    }

    /// <summary>What its mount is listed for.</summary>
    public static Purpose MountPurpose(SolarLoop solar) => solar.Turns ? SolarPurposes.TurningMount : solar.Mount.Founding switch
    {
        Founding.Wall => SolarPurposes.WallMount,
        Founding.Ballast => SolarPurposes.BallastMount,
        _ => SolarPurposes.FixedMount,
    };

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
        var storm = Duty.Moment(PlantState.Gale, stand.TurnsNm);
        var stall = StandSizing.StallNm(solar.Drive);
        var stops = SolarWords.Stops(Math.Max(stand.TurnsNm, stall));
        needs.Pick(stand.Stops, stops, solar.Frames, SolarPurposes.Stops, storm, Duty.Moment(PlantState.DeadSensor, stall));
        var bolt = stand.SpringBolt is null ? SolarPurposes.HandBolt : SolarPurposes.SpringBolt;
        if (stand.SpringBolt is null)
            needs.Pick(stand.Bolt, SolarWords.Bolt(stand.TurnsNm), solar.Frames, bolt, storm);
        else
            needs.Pick(stand.Bolt, SolarWords.Bolt(stand.TurnsNm), solar.Frames, bolt, storm, Duty.Moment(PlantState.PowerCut, stand.TurnsNm));
        needs.Small(SmallPartRole.HoseLoop, HosesPerFrame * solar.Frames, SolarPurposes.HoseLoop, [solar.Heat.AtCollector]);
    }

    private static void Turning(SolarLoop solar, Drive drive, Needs needs)
    {
        needs.Add(drive, solar.Frames, SolarPurposes.Drive);
        SolarContacts.Turning(solar, drive, needs);
        needs.Chosen(solar.ShaftSeal, SmallPartRole.ShaftSeal, solar.Frames, SolarPurposes.ShaftSeal);
    }

    private static void Release(SolarLoop solar, Needs needs)
    {
        var (store, unseen) = (solar.Heat.Store, solar.Heat.StoreUnseen);
        needs.Add(solar.Pipe, 2 * ReleasePipeM * NeededPart.Cuts, SolarPurposes.ReleasePipe, store, unseen);
        needs.Add(solar.Release, solar.ReleaseCount, SolarPurposes.Release, store, unseen);
        needs.Pick(solar.ReleasePump, SolarWords.ReleasePump(solar.Pump.Volts), 1, SolarPurposes.ReleasePump, store);
        if (solar.ReleasePump is { NeedsStrainer: true })
            needs.Small(SmallPartRole.Strainer, 1, SolarPurposes.ReleaseStrainer, [store]);
        SolarContacts.Release(solar, needs);
    }
}
