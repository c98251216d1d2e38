using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Parts.Mechanics;
using DesignSearch.Parts.Solar;
using DesignSearch.Physics;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Works out what the storm does to the fullest frame, and what holds it.</summary>
internal static class StandSizing
{
    // Each foot's block is at least so wide, and there are four of them (own choice).
    private const double PadM = 0.3;
    private const int Pads = 4;

    // Concrete on gravel or grass; 0.4 to 0.5 on gravel (from memory), the lower end taken.
    private const double Grip = 0.4;

    // A stand against a wall is never reckoned flatter than this sine of its tilt: its brackets must have some height between them.
    private const double LeastSine = 0.2;
    private const double RadPerDeg = Math.PI / 180;

    public static Stand Of(StandTask task, SolarShelf shelf)
    {
        var (mount, collector, count, site) = (task.Mount, task.Collector, task.Together, task.Site);
        var (width, chord, area) = (count * collector.WidthM, collector.HeightM, count * collector.AreaM2);
        var tilt = SteepestDeg(task);
        var wind = PlateWind.Of(tilt, width, chord, mount.ClearanceM);
        var pressure = site.StormPa(mount.ClearanceM + (chord / 2 * Math.Sin(tilt * RadPerDeg)));
        var plate = new Plate(area, chord, tilt, mount.ClearanceM, wind, pressure);
        var stand = new Stand
        {
            AreaM2 = area,
            WidthM = width,
            Wind = wind,
            StormPa = pressure,
            FrostGivenM = site.FrostDepthM,
            WeightN = task.WeightKg * Gravity.StandardMPerS2,
            TipsNm = 0,
            BaseM = 0,
            DepthM = 0,
            HeavyN = 0,
            Anchor = null,
            Anchors = 0,
            PullN = 0,
            HoldsN = 0,
            Stops = null,
            Bolt = null,
        };
        stand = mount.Founding switch
        {
            Founding.Feet => OnFeet(stand, plate, task, shelf),
            Founding.Post => OnPost(stand, plate, site.FootingDepthM),
            Founding.Wall => OnWall(stand, plate, task, shelf),
            _ => OnBallast(stand, plate, mount.FeetApartM),
        };
        return mount.Turning == TurningKind.Fixed ? stand : Locked(stand, task, shelf);
    }

    /// <summary>Moment of a drive that runs against a stop because its end switch is dead [N·m]: it grows as the current does.</summary>
    public static double StallNm(Drive? drive) => drive is { Volts: > 0, Watts: > 0 }
        ? drive.TorqueNm * SolarContacts.StartA(drive) / (drive.Watts / drive.Volts)
        : 0;

    /// <summary>Whether a drive holds without current.</summary>
    public static bool Locks(Drive drive) => drive.IsSelfLocking && drive.GearEfficiency <= WormGear.SlipsAbove;

    // Screws or bolts in concrete, whichever is cheaper and stands the pull; a screw must reach below the frost.
    private static Stand OnFeet(Stand stand, Plate plate, StandTask task, SolarShelf shelf)
    {
        var (site, apart, anchors) = (task.Site, task.Mount.FeetApartM, (double)task.Anchors / task.Frames);
        var atGround = plate.TipsNm(0, apart);
        var byMoment = (Standing.Tips(atGround) - Standing.Rights(stand.WeightN * apart / 2)) / apart / (anchors / 2);
        var byLift = (Standing.Tips(plate.LiftN) - Standing.Rights(stand.WeightN)) / anchors;
        var pull = Math.Max(0, Math.Max(byMoment, byLift));
        var (depth, feet) = (site.FootingDepthM, apart + PadM);
        var tips = plate.TipsNm(depth, feet);
        var least = Pads * PadM * PadM * depth * Concrete.NPerM3;
        var heavy = Math.Max(least, Standing.WeightN(tips, plate.LiftN, feet) - stand.WeightN);
        var screw = shelf.Anchor(HoldfastForm.GroundScrew, pull, site.AnchorHoldsN, depth);
        var bolt = shelf.Anchor(HoldfastForm.CastBolt, pull, site.AnchorHoldsN, 0);
        var concreteM3 = heavy / Concrete.NPerM3 * task.Frames;
        var screwed = screw is not null
            && (bolt is null || shelf.PriceOf(screw, task.Anchors, 0) <= shelf.PriceOf(bolt, task.Anchors, concreteM3));
        var anchor = screwed ? screw : bolt ?? shelf.Strongest(HoldfastForm.CastBolt);
        stand = stand with { Anchor = anchor, Anchors = task.Anchors, PullN = pull, HoldsN = Held(anchor, site) };
        return screwed
            ? stand with { TipsNm = atGround, BaseM = apart }
            : stand with { TipsNm = tips, BaseM = feet, DepthM = depth, HeavyN = heavy };
    }

    // One square block that stands by its weight alone.
    private static Stand OnPost(Stand stand, Plate plate, double depthM)
    {
        var (none, one) = (plate.TipsNm(depthM, 0), plate.TipsNm(depthM, 1));
        var tips = Standing.Tips(none);
        var side = Concrete.SideM(tips, Standing.Tips(one) - tips, depthM, stand.WeightN);
        var byLift = (Standing.Tips(plate.LiftN) / Standing.Righting) - stand.WeightN;
        return stand with
        {
            TipsNm = plate.TipsNm(depthM, side),
            BaseM = side,
            DepthM = depthM,
            HeavyN = Math.Max(byLift, Concrete.NPerM3 * side * side * depthM),
        };
    }

    // The upper bolts are pulled by the wind and by the weight in front of the wall, both about the lower ones.
    private static Stand OnWall(Stand stand, Plate plate, StandTask task, SolarShelf shelf)
    {
        var (site, anchors) = (task.Site, (double)task.Anchors / task.Frames);
        var (sin, cos) = Math.SinCos(plate.TiltDeg * RadPerDeg);
        var turns = plate.LiftsN * plate.ChordM * (0.5 + plate.Wind.OffMiddle);
        var hangs = stand.WeightN * plate.ChordM / 2 * cos;
        var pull = Standing.Tips(turns, hangs) / (plate.ChordM * Math.Max(LeastSine, sin)) / (anchors / 2);
        var bolt = shelf.Anchor(HoldfastForm.WallBolt, pull, site.AnchorHoldsN, 0) ?? shelf.Strongest(HoldfastForm.WallBolt);
        return stand with { TipsNm = turns, Anchor = bolt, Anchors = task.Anchors, PullN = pull, HoldsN = Held(bolt, site) };
    }

    // Neither tips nor slides nor lifts.
    private static Stand OnBallast(Stand stand, Plate plate, double trayM)
    {
        var tips = plate.TipsNm(0, trayM);
        var pushes = plate.WorstN * Math.Sin(plate.TiltDeg * RadPerDeg);
        var slides = ((Standing.Tips(pushes) / Grip) + Standing.Tips(plate.LiftN)) / Standing.Righting;
        var heavy = Math.Max(slides, Standing.WeightN(tips, plate.LiftN, trayM)) - stand.WeightN;
        return stand with { TipsNm = tips, BaseM = trayM, HeavyN = Math.Max(0, heavy) };
    }

    // A gear that slips stands by a bolt that falls home itself; what follows the sun all day has no place for one.
    private static Stand Locked(Stand stand, StandTask task, SolarShelf shelf)
    {
        var (storm, slips) = (stand.TurnsNm, task.Drive is { } drive && !Locks(drive) && task.Mount.Turning != TurningKind.Continuous);
        var spring = slips ? shelf.Lock(HoldfastForm.SpringBolt, storm, task.Drive!.Volts) : null;
        return stand with
        {
            Stops = shelf.Lock(HoldfastForm.Stops, Math.Max(storm, StallNm(task.Drive)), 0),
            Bolt = spring ?? shelf.Lock(HoldfastForm.HandBolt, storm, 0),
        };
    }

    // The builder's own test counts before the catalogue.
    private static double Held(Holdfast? anchor, SiteLimits site) => site.AnchorHoldsN ?? anchor?.HoldsN ?? 0;

    // A rocker stands steepest at the end of its turn.
    private static double SteepestDeg(StandTask task)
    {
        var tilt = task.Dials.TiltDeg;
        return task.Mount.Axis == TurningAxis.Sloping
            ? Math.Acos(Math.Cos(tilt * RadPerDeg) * Math.Cos(task.Dials.LimitDeg * RadPerDeg)) / RadPerDeg
            : tilt;
    }

    private readonly record struct Plate(double AreaM2, double ChordM, double TiltDeg, double ClearanceM, PlateWind Wind, double StormPa)
    {
        public double LiftsN => WindForce.ForceN(StormPa, AreaM2, Wind.Up);

        public double WorstN => WindForce.ForceN(StormPa, AreaM2, Wind.Worst);

        /// <summary>The upright part of what lifts [N].</summary>
        public double LiftN => LiftsN * Math.Cos(TiltDeg * RadPerDeg);

        /// <summary>The worse of both winds about the edge of a base under the middle of the plate [N·m]; each where it is worst.</summary>
        public double TipsNm(double depthM, double baseM)
        {
            var (sin, cos) = Math.SinCos(TiltDeg * RadPerDeg);
            var off = Wind.OffMiddle * ChordM;
            var height = ClearanceM + (((ChordM / 2) + off) * sin);
            var lifts = Standing.MomentNm(LiftsN, TiltDeg, height, depthM, (baseM / 2) + (off * cos));
            var pressed = -WindForce.ForceN(StormPa, AreaM2, Wind.Down);
            return Math.Max(lifts, Standing.MomentNm(pressed, TiltDeg, height, depthM, (baseM / 2) - (off * cos)));
        }
    }
}
