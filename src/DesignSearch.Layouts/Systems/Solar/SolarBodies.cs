using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What of a solar plant has a size: tanks, collectors, and the frame with its footing.</summary>
internal static class SolarBodies
{
    public static IEnumerable<Body> Of(SolarLoop solar)
    {
        var side = Math.Sqrt(solar.Tank.FootprintM2);
        var frame = Plan(solar, []);
        yield return new(SolarSchemeWords.Tank, BodyShape.Square, solar.TankCount, side, side, solar.Tank.HeightM) { IsOnlyArea = true };
        yield return new(SolarSchemeWords.Collectors, BodyShape.Frame, solar.Frames, frame.WidthM, frame.ReachM, frame.RiseM)
        {
            LiftM = frame.ClearanceM,
        };
    }

    /// <summary>The frame, with the ids of what was listed to hold it.</summary>
    public static StandPlan Frame(SolarLoop solar, IReadOnlyList<NeededPart> parts)
    {
        Purpose[] holds =
        [
            SolarPurposes.Anchor, SolarPurposes.WallBolt, SolarPurposes.Footing, SolarPurposes.Ballast, SolarPurposes.Stops,
            SolarPurposes.HandBolt, SolarPurposes.SpringBolt,
        ];
        return Plan(solar, [.. parts.Where(p => holds.Contains(p.Purpose)).Select(p => p.Part.Id).Distinct()]);
    }

    private static StandPlan Plan(SolarLoop solar, IReadOnlyList<string> heldBy)
    {
        var (stand, mount) = (solar.Stand, solar.Mount);
        var isHeld = mount.Founding is Founding.Feet or Founding.Wall;
        return new()
        {
            MountId = mount.Id,
            MountIsByArea = mount.Unit == PartUnit.SquareMetre,
            HeldBy = heldBy,
            Frames = solar.Frames,
            Collectors = (solar.Count + solar.Frames - 1) / solar.Frames,
            Founding = mount.Founding,
            Axis = mount.Axis,
            LimitDeg = solar.Dials.LimitDeg,
            WidthM = stand.WidthM,
            ChordM = solar.Collector.HeightM,
            TiltDeg = solar.Dials.TiltDeg,
            AzimuthDeg = solar.Dials.AzimuthDeg,
            ClearanceM = mount.ClearanceM,
            FeetApartM = mount.FeetApartM,
            AnchorsEach = isHeld ? (double)stand.Anchors / solar.Frames : 0,
            DepthM = stand.DepthM,
            BaseM = stand.BaseM,
            ConcreteM3 = stand.ConcreteM3,
            BallastKg = stand.BallastKg,
        };
    }
}
