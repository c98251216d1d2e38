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
    // A plate that stands free: 1.2 to 1.5 both ways; the force acts at least a tenth of the chord off the axis; twice the running
    // friction to start (bearing makers' tables); half as much torque again in hand. Common practice, no source, where none is named.
    private const double ForceCoefficient = 1.5;
    private const double Eccentricity = 0.1;
    private const double StartingFriction = 2;
    private const double TorqueInHand = 1.5;

    // A drive turns in mild air; a storm is reckoned with the air of EN 1991-1-4.
    private const double MildAirKgPerM3 = 1.226;
    private const double GustOverWorking = 1.5;
    private const double MostSeconds = 600;
    private const double MmPerM = 1000;

    public static void Add(SolarLoop solar, SiteLimits site, List<Check> checks)
    {
        checks.Add(SolarRules.Space.Limit(solar.AreaM2, site.CollectorSpaceM2, "m²"));
        var perFrame = (solar.Count + solar.Frames - 1) / solar.Frames * solar.Collector.AreaM2;
        var carried = solar.Mount.Unit == PartUnit.SquareMetre ? solar.AreaM2 : perFrame;
        checks.Add(SolarRules.MountArea.Limit(carried, solar.Mount.MaxAreaM2, "m²"));
        checks.Add(Wind(solar, site.DesignWindMPerS));
        checks.Add(Anchorage(solar, site));
        if (solar.Mount.Turning == TurningKind.Fixed)
            return;
        var (turns, wanted) = (solar.Mount.WorkingWindMPerS, site.WorkingWindMPerS);
        checks.Add(SolarRules.WorkingWind.Found(wanted <= turns, 1 - (wanted / turns), SolarCheckWords.WorkingWind(wanted, turns)));
        checks.Add(SolarRules.TurnLimit.Limit(solar.Dials.LimitDeg, solar.Mount.LimitAngleDeg, "°"));
        if (solar.Drive is { } drive)
            AddDrive(solar, drive, perFrame, site.WorkingWindMPerS, checks);
    }

    /// <summary>Torque at the shaft of one frame: wind, imbalance and starting friction [N·m].</summary>
    internal static double TorqueNm(SolarLoop solar, double areaM2, double windMPerS)
    {
        var mount = solar.Mount;
        var mass = (solar.Collector.WeightKg * areaM2 / solar.Collector.AreaM2) + mount.WeightKg;
        var friction = ShaftMoments.BearingFrictionNm(mount.BearingFriction, mass * Gravity.StandardMPerS2, mount.BearingDiameterMm / MmPerM);
        var imbalance = mount.Axis == TurningAxis.Sloping ? ShaftMoments.ImbalanceNm(mass, mount.ImbalanceM) : 0;
        return WindNm(areaM2, windMPerS) + imbalance + (StartingFriction * friction);
    }

    private static void AddDrive(SolarLoop solar, Drive drive, double frameM2, double workingMPerS, List<Check> checks)
    {
        var locks = drive.IsSelfLocking && drive.GearEfficiency <= WormGear.SlipsAbove;
        checks.Add(SolarRules.DriveLocking.Found(locks, 1 - (drive.GearEfficiency / WormGear.SlipsAbove), SolarCheckWords.Locking(drive)));
        var turn = 2 * solar.Dials.LimitDeg;
        var seconds = turn / drive.SpeedDegPerS;
        checks.Add(SolarRules.TurningTime.Found(
            seconds <= MostSeconds, 1 - (seconds / MostSeconds), SolarCheckWords.TurningTime(turn, seconds, MostSeconds)));
        var needed = TorqueNm(solar, frameM2, workingMPerS) * TorqueInHand;
        checks.Add(SolarRules.DriveTorque.Found(
            needed <= drive.TorqueNm, 1 - (needed / drive.TorqueNm), SolarCheckWords.Torque(workingMPerS, needed, drive.TorqueNm)));
        var storm = WindNm(frameM2, workingMPerS * GustOverWorking);
        checks.Add(SolarRules.DriveHolding.Found(
            storm <= drive.HoldsNm, 1 - (storm / drive.HoldsNm), SolarCheckWords.Holding(storm, drive.HoldsNm)));
    }

    private static double WindNm(double areaM2, double windMPerS)
    {
        var force = WindForce.ForceN(WindForce.PressurePa(windMPerS, MildAirKgPerM3), areaM2, ForceCoefficient);
        return WindForce.MomentNm(force, Eccentricity * Math.Sqrt(areaM2));
    }

    // What lifts is the force on a plate that stands free, less what the collectors weigh; what else weighs the frame down is to spare.
    private static Check Anchorage(SolarLoop solar, SiteLimits site)
    {
        var lift = StormN(solar, site.DesignWindMPerS);
        var weight = solar.Count * solar.Collector.WeightKg * Gravity.StandardMPerS2;
        var each = Math.Max(0, lift - weight) / solar.Anchors;
        var words = SolarCheckWords.Anchorage(site.DesignWindMPerS, lift, weight, solar.Anchors, each, site.AnchorHoldsN);
        return SolarRules.Anchorage.Found(each <= site.AnchorHoldsN, 1 - (each / site.AnchorHoldsN), words);
    }

    private static Check Wind(SolarLoop solar, double designMPerS)
    {
        var holds = solar.Mount.HoldsWindMPerS;
        var words = SolarCheckWords.Storm(designMPerS, StormN(solar, designMPerS), holds);
        return SolarRules.MountWind.Found(holds >= designMPerS, 1 - (designMPerS / holds), words);
    }

    private static double StormN(SolarLoop solar, double designMPerS) =>
        WindForce.ForceN(WindForce.PressurePa(designMPerS), solar.AreaM2, ForceCoefficient);
}
