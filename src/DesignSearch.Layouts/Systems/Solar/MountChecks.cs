using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Mechanics;
using DesignSearch.Parts.Solar;
using DesignSearch.Physics;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Checks of stand, frame and drive.</summary>
internal static class MountChecks
{
    // Twice the running friction to start (bearing makers' tables); half as much torque again in hand (common practice, no source).
    private const double StartingFriction = 2;
    private const double TorqueInHand = 1.5;
    private const double GustOverWorking = 1.5;
    private const double MostSeconds = 600;
    private const double MmPerM = 1000;

    // What is bought comes in tenths, so that a sum of it may round by a hair.
    private const double Hair = 1e-6;

    public static void Add(SolarLoop solar, SiteLimits site, List<Check> checks)
    {
        checks.Add(SolarRules.Space.Limit(solar.AreaM2, site.CollectorSpaceM2, "m²"));
        var (mount, stand) = (solar.Mount, solar.Stand);
        var carries = mount.Unit == PartUnit.SquareMetre ? solar.AreaM2 : stand.AreaM2;
        checks.Add(SolarRules.MountArea.Within(carries, mount.MaxAreaM2, SolarCheckWords.MountArea(mount, carries)));
        checks.Add(Wind(stand, mount));
        if (mount.Founding is Founding.Feet or Founding.Wall)
            checks.Add(Anchorage(stand, site));
        if (!solar.Turns)
            return;
        var (turns, wanted) = (mount.WorkingWindMPerS, site.WorkingWindMPerS);
        checks.Add(SolarRules.WorkingWind.Found(wanted <= turns, 1 - (wanted / turns), SolarCheckWords.WorkingWind(wanted, mount)));
        var turn = solar.Dials.LimitDeg;
        checks.Add(SolarRules.TurnLimit.Within(turn, mount.LimitAngleDeg, SolarCheckWords.TurnLimit(mount, turn)));
        if (solar.Drive is { } drive)
            AddDrive(solar, drive, site.WorkingWindMPerS, checks);
    }

    /// <summary>What holds the stand down and the frame where it stands, looked for among what is bought.</summary>
    public static IEnumerable<Check> OfList(SolarLoop solar, IReadOnlyList<NeededPart> parts)
    {
        if (solar.Stand.HeavyN > 0)
            yield return Overturning(solar, parts);
        if (solar.Turns)
            yield return StormLock(solar, parts);
    }

    // Torque at the shaft of one frame: wind, imbalance and starting friction [N·m].
    private static double TorqueNm(SolarLoop solar, double windMPerS)
    {
        var (mount, stand) = (solar.Mount, solar.Stand);
        var friction = ShaftMoments.BearingFrictionNm(mount.BearingFriction, stand.WeightN, mount.BearingDiameterMm / MmPerM);
        var mass = stand.WeightN / Gravity.StandardMPerS2;
        var imbalance = mount.Axis == TurningAxis.Sloping ? ShaftMoments.ImbalanceNm(mass, mount.ImbalanceM) : 0;
        return stand.GustNm(windMPerS) + imbalance + (StartingFriction * friction);
    }

    private static void AddDrive(SolarLoop solar, Drive drive, double workingMPerS, List<Check> checks)
    {
        var bolt = solar.Stand.SpringBolt;
        var locks = StandSizing.Locks(drive);
        checks.Add(SolarRules.DriveLocking.Found(
            locks || bolt is not null,
            bolt is null ? 1 - (drive.GearEfficiency / WormGear.SlipsAbove) : 0,
            SolarCheckWords.Locking(drive, bolt)));
        var turn = 2 * solar.Dials.LimitDeg;
        var seconds = turn / drive.SpeedDegPerS;
        checks.Add(SolarRules.TurningTime.Found(
            seconds <= MostSeconds, 1 - (seconds / MostSeconds), SolarCheckWords.TurningTime(turn, seconds, MostSeconds)));
        var needed = TorqueNm(solar, workingMPerS) * TorqueInHand;
        checks.Add(SolarRules.DriveTorque.Found(
            needed <= drive.TorqueNm, 1 - (needed / drive.TorqueNm), SolarCheckWords.Torque(workingMPerS, needed, drive)));
        var (gust, holds) = (solar.Stand.GustNm(workingMPerS * GustOverWorking), Math.Max(drive.HoldsNm, bolt?.HoldsNm ?? 0));
        checks.Add(SolarRules.DriveHolding.Found(
            gust <= holds, 1 - (gust / holds), SolarCheckWords.Holding(gust, holds, bolt?.Name ?? drive.Name)));
    }

    private static Check Anchorage(Stand stand, SiteLimits site)
    {
        var (pull, holds) = (stand.PullN, stand.HoldsN);
        var words = SolarCheckWords.Anchorage(stand, site.AnchorHoldsN is not null);
        return SolarRules.Anchorage.Found(pull <= holds, holds > 0 ? 1 - (pull / holds) : -1, words);
    }

    private static Check Wind(Stand stand, CollectorMount mount)
    {
        var (holds, gust) = (mount.HoldsWindMPerS, stand.GustMPerS);
        return SolarRules.MountWind.Found(holds >= gust - Hair, 1 - (gust / holds), SolarCheckWords.Storm(stand, mount));
    }

    // What is short of the weight that it wants is missed by that share; what is over is to spare.
    private static Check Overturning(SolarLoop solar, IReadOnlyList<NeededPart> parts)
    {
        var (stand, bought) = (solar.Stand, 0m);
        var purpose = stand.IsCast ? SolarPurposes.Footing : SolarPurposes.Ballast;
        foreach (var needed in parts)
            bought += needed.Purpose == purpose ? needed.Quantity : 0;
        var eachN = (double)bought / solar.Frames * (stand.IsCast ? Concrete.NPerM3 : Gravity.StandardMPerS2);
        var words = stand.IsCast
            ? SolarCheckWords.Footing(stand, eachN / Concrete.NPerM3)
            : SolarCheckWords.Ballast(stand, eachN / Gravity.StandardMPerS2);
        return SolarRules.Overturning.Found(eachN >= stand.HeavyN - Hair, 1 - (stand.HeavyN / Math.Max(eachN, Hair)), words);
    }

    // The stops take the storm one way, the bolt both; each frame has its own.
    private static Check StormLock(SolarLoop solar, IReadOnlyList<NeededPart> parts)
    {
        var (stand, stops, bolts) = (solar.Stand, 0m, 0m);
        foreach (var needed in parts)
        {
            if (needed.Part is not Holdfast fast || fast.HoldsNm < stand.TurnsNm)
                continue;
            stops += fast.Form == HoldfastForm.Stops ? needed.Quantity : 0;
            bolts += fast.Form is HoldfastForm.HandBolt or HoldfastForm.SpringBolt ? needed.Quantity : 0;
        }

        var passed = stops >= solar.Frames && bolts >= solar.Frames;
        var holds = Math.Min(stand.Stops?.HoldsNm ?? 0, stand.Bolt?.HoldsNm ?? 0);
        var words = SolarCheckWords.StormLock(stand, stops, bolts, solar.Frames);
        return SolarRules.StormLock.Found(passed, passed ? 1 - (stand.TurnsNm / holds) : -1, words);
    }
}
