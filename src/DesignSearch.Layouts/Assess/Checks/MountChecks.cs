using DesignSearch.Layouts.Design.Sizing;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Mechanics;
using DesignSearch.Parts.Solar;
using DesignSearch.Physics;

namespace DesignSearch.Layouts.Assess.Checks;

/// <summary>Checks of stand, frame and drive.</summary>
internal static class MountChecks
{
    // A plate that stands free: 1.2 to 1.5 both ways; the force acts at least a tenth of the chord off the axis; twice the running
    // friction to start (bearing makers' tables); half as much torque again in hand. Common practice, no source, where none is named.
    private const double ForceCoefficient = 1.5;
    private const double Eccentricity = 0.1;
    private const double StartingFriction = 2;
    private const double TorqueInHand = 1.5;
    private const double MostSeconds = 600;

    public static IEnumerable<Check> Of(Scenario scenario, SolarLoop solar)
    {
        var site = scenario.Site;
        yield return CheckList.Limit("collector-space", "space for collectors", solar.AreaM2, site.CollectorSpaceM2, "m²", "The site's own limit");
        var perFrame = (solar.Count + solar.Frames - 1) / solar.Frames * solar.Collector.AreaM2;
        var carried = solar.Mount.Unit == PartUnit.SquareMetre ? solar.AreaM2 : perFrame;
        yield return CheckList.Limit("mount-area", "area that one frame carries", carried, solar.Mount.MaxAreaM2, "m²", "The catalogue's figure for the mount");
        yield return Wind(solar, site.DesignWindMPerS);
        yield return Anchorage(solar, site);
        if (solar.Mount.Turning == TurningKind.Fixed)
            yield break;
        yield return CheckList.Limit("turn-limit", "turn to either side", solar.LimitDeg, solar.Mount.LimitAngleDeg, "°", "The catalogue's figure for the mount");
        if (solar.Drive is not { } drive)
            yield break;
        yield return Check.Of("drive-locking", "holding without current", drive.IsSelfLocking && drive.GearEfficiency <= WormGear.SlipsAbove, 1 - drive.GearEfficiency / WormGear.SlipsAbove, $"The drive's gear passes on {100 * drive.GearEfficiency:0} % and is {(drive.IsSelfLocking ? "" : "not ")}sold as self-locking; below {100 * WormGear.LocksBelow:0} % a worm gear holds by itself, above {100 * WormGear.SlipsAbove:0} % it does not. Vibration defeats both: stops or a bolt take the storm.", "A gearbox maker's published advice");
        var seconds = 2 * solar.LimitDeg / drive.SpeedDegPerS;
        yield return Check.Of("turning-time", "time for the whole turn", seconds <= MostSeconds, 1 - seconds / MostSeconds, $"From stop to stop, {2 * solar.LimitDeg:0}°, the frame takes {seconds:0} of at most {MostSeconds:0} s.", "The catalogue's speed; ten minutes, so that a rising wind does not catch it half way: own choice");
        var needed = TorqueNm(solar, perFrame, site.WorkingWindMPerS) * TorqueInHand;
        yield return Check.Of("drive-torque", "torque of the drive", needed <= drive.TorqueNm, 1 - needed / drive.TorqueNm, $"Turning in {site.WorkingWindMPerS:0} m/s of wind, with half as much again in hand, takes {needed:0.0} of the drive's {drive.TorqueNm:0.0} N·m.", "Wind pressure ρv²/2 (ρ 1.226 kg/m³), force coefficient 1.5 and a tenth of the chord off the axis: common practice, no source; friction µPd/2 (bearing makers' tables)");
        var storm = WindNm(perFrame, site.WorkingWindMPerS * 1.5);
        yield return Check.Of("drive-holding", "holding until the stops take the load", storm <= drive.HoldsNm, 1 - storm / drive.HoldsNm, $"A gust half as fast again as the working wind pulls with {storm:0} N·m; the drive holds {drive.HoldsNm:0} N·m. In a storm end stops or a bolt must take the load, never the gear.", "Common practice, no source");
    }

    /// <summary>Torque at the shaft of one frame: wind, imbalance and starting friction [N·m].</summary>
    internal static double TorqueNm(SolarLoop solar, double areaM2, double windMPerS)
    {
        var mass = solar.Collector.WeightKg * areaM2 / solar.Collector.AreaM2 + solar.Mount.WeightKg;
        return WindNm(areaM2, windMPerS)
            + (solar.Mount.Axis == TurningAxis.Sloping ? ShaftMoments.ImbalanceNm(mass, solar.Mount.ImbalanceM) : 0)
            + StartingFriction * ShaftMoments.BearingFrictionNm(solar.Mount.BearingFriction, mass * Gravity.StandardMPerS2,
                solar.Mount.BearingDiameterMm / 1000);
    }

    private static double WindNm(double areaM2, double windMPerS) =>
        WindForce.MomentNm(WindForce.ForceN(WindForce.PressurePa(windMPerS, Air.WindLoadDensityKgPerM3), areaM2, ForceCoefficient),
            Eccentricity * Math.Sqrt(areaM2));

    // What lifts is the force on a plate that stands free, less what the collectors weigh; what else weighs the frame down is to spare.
    private static Check Anchorage(SolarLoop solar, SiteLimits site)
    {
        var lift = WindForce.ForceN(WindForce.PressurePa(site.DesignWindMPerS), solar.AreaM2, ForceCoefficient);
        var weight = solar.Count * solar.Collector.WeightKg * Gravity.StandardMPerS2;
        var each = Math.Max(0, lift - weight) / solar.Anchors;
        return Check.Of("anchorage", "feet in a storm", each <= site.AnchorHoldsN, 1 - each / site.AnchorHoldsN, $"A gust of {site.DesignWindMPerS:0} m/s may lift with {lift / 1000:0.0} kN, the collectors weigh {weight / 1000:0.0} kN: each of {solar.Anchors} anchors must stand {each:0} N of the {site.AnchorHoldsN:0} N it holds. Test one by pulling.", "Wind pressure ρv²/2 (EN 1991-1-4 form, ρ 1.25 kg/m³), force coefficient 1.5 up as well as sideways: common practice, no source; the anchor's pull is the builder's figure, 1000 N where none is given (common practice, no source)");
    }

    private static Check Wind(SolarLoop solar, double designMPerS)
    {
        var holds = solar.Mount.HoldsWindMPerS;
        var force = WindForce.ForceN(WindForce.PressurePa(designMPerS), solar.AreaM2, ForceCoefficient);
        return Check.Of("mount-wind", "storm on the stand", holds >= designMPerS, 1 - designMPerS / holds, $"A gust of {designMPerS:0} m/s pulls at the collectors with {force / 1000:0.0} kN, up as well as sideways; the stand is good for {holds:0} m/s if its feet hold.", "Wind pressure ρv²/2 (EN 1991-1-4 form, ρ 1.25 kg/m³); force coefficient 1.5, common practice, no source");
    }
}
