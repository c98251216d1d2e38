using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Parts.Solar;
using DesignSearch.Season.House;
using DesignSearch.Season.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What to dial in on a finished solar plant.</summary>
internal static class SolarSettings
{
    public static IEnumerable<Dial> Of(SolarLoop solar, Scenario scenario)
    {
        foreach (var dial in OfFrame(solar, scenario))
            yield return dial;
        foreach (var dial in OfLoop(solar))
            yield return dial;
        yield return new(SolarPurposes.Thermostat, SolarSettingWords.Thermostat(solar.Dials.ReleaseSetC, scenario.Greenhouse.FrostLimitC));
        yield return new(SolarPurposes.Thermostat, SolarSettingWords.Band(solar.Dials.ReleaseBandK));
        var stopC = solar.Dials.ReleaseSetC + solar.Dials.ReleaseStopK;
        yield return new(SolarPurposes.TankThermostat, SolarSettingWords.ReleaseStops(stopC, scenario.Assumptions[HouseAssumptions.ReleaseRestartK]));
        foreach (var dial in Gathering.Dials(solar, scenario))
            yield return dial;
        if (solar.Fluid is { } fluid)
            yield return new(SolarPurposes.Antifreeze, SolarSettingWords.Antifreeze(fluid.GlycolPercent, solar.ProtectsToC));
        if (!solar.StaysFull)
            yield return new(SolarPurposes.Protection, SolarSettingWords.RunsEmpty(solar.IsDrainedByValves));
        yield return new(SolarPurposes.Collector, SolarSettingWords.Summer);
    }

    private static IEnumerable<Dial> OfFrame(SolarLoop solar, Scenario scenario)
    {
        var (dials, turning, mount) = (solar.Dials, solar.Mount.Turning, SolarListing.MountPurpose(solar));
        yield return new(mount, SolarSettingWords.Tilt(dials.TiltDeg));
        yield return new(mount, SolarSettingWords.Direction(dials.AzimuthDeg));
        yield return new(SolarPurposes.Footing, SolarSettingWords.Footing(solar.Stand, solar.Mount.Founding == Founding.Post));
        yield return new(SolarPurposes.LimitSwitch, SolarSettingWords.LimitSwitches(dials.LimitDeg));
        yield return new(SolarPurposes.Stops, SolarSettingWords.Stops(dials.LimitDeg));
        if (turning == TurningKind.TwoPosition)
            yield return Swing(solar, scenario, mount);
        yield return new(SolarPurposes.SunClock, SolarSettingWords.SunClock);
        yield return new(SolarPurposes.LightSensor, SolarSettingWords.FrameLight);
        if (solar.Turns)
        {
            var gale = SolarSettingWords.Gale(scenario.Site.WorkingWindMPerS, !solar.IsTurnedByHand, solar.Stand.SpringBolt is not null);
            yield return new(solar.Stand.SpringBolt is null ? SolarPurposes.HandBolt : SolarPurposes.SpringBolt, gale);
        }

        if (turning == TurningKind.Stepped)
            yield return new(SolarPurposes.SunClock, SolarSettingWords.Steps(dials.Steps));
        if (solar.Frames > 1)
            yield return new(SolarPurposes.Interlock, SolarSettingWords.DriveOrder);
    }

    private static IEnumerable<Dial> OfLoop(SolarLoop solar)
    {
        var (dials, heat) = (solar.Dials, solar.Heat);
        yield return new(SolarPurposes.Controller, SolarSettingWords.PumpStarts(dials.StartDifferenceK));
        yield return new(SolarPurposes.Controller, SolarSettingWords.PumpStops(dials.StopDifferenceK));
        yield return new(SolarPurposes.Controller, SolarSettingWords.LockOut(heat));
        yield return new(SolarPurposes.Throttle, SolarSettingWords.Flow(solar.Flow.KgPerS));
        if (LostK(solar) is { } lost)
            yield return new(SolarPurposes.LongPipe, SolarSettingWords.WarmPipe(lost));
        yield return new(SolarPurposes.Protection, SolarSettingWords.Fill(solar));
        yield return new(SolarPurposes.TankSensors, SolarSettingWords.Ceiling(heat.CeilingC));
        yield return new(SolarPurposes.TankCutOut, SolarSettingWords.CutOut(heat.CutOutC));
        if (solar.ClosedLoop is { } loop)
            yield return new(SolarPurposes.LoopVessel, SolarSettingWords.Vessel("loop", loop));
        if (solar.ClosedTank is { } tank)
            yield return new(SolarPurposes.TankVessel, SolarSettingWords.Vessel("tank", tank));
        if (solar.VesselAboveTankM > 0)
            yield return new(SolarPurposes.Protection, SolarSettingWords.DrainVessel(solar.VesselAboveTankM));
        yield return new(SolarPurposes.ValveRelay, SolarSettingWords.ValveRelay);
        yield return new(SolarPurposes.ValveLight, SolarSettingWords.ValveLight);
        yield return new(SolarPurposes.MakeUp, SolarSettingWords.MakeUp);
    }

    // By hours from dawn where a part on the list can count them or a person may; else by the clock, month by month.
    private static Dial Swing(SolarLoop solar, Scenario scenario, Purpose mount)
    {
        if (solar.Drive is not null && solar.HasDelayRelay)
            return new(SolarPurposes.DelayRelay, SolarSettingWords.Delay(solar.Dials.SwitchHours));
        var times = SwingTimes.Of(scenario.Place, scenario.Season, solar.Dials.SwitchHours);
        return solar.Drive is null
            ? new(mount, SolarSettingWords.ByHand(times))
            : new(SolarPurposes.Timer, SolarSettingWords.Timer(times));
    }

    // What the warm pipe should lose on the day that the words tell of; null where there is no pipe to feel or no flow.
    private static double? LostK(SolarLoop solar)
    {
        const double FreezingDayC = 0;
        var loss = SolarNumbers.PipeRunOf(solar).OutLossWPerK;
        if (loss <= 0 || solar.Flow.KgPerS <= 0)
            return null;
        var end = PipeLoss.EndC(SolarSettingWords.HotC, FreezingDayC, loss, solar.Flow.KgPerS * solar.Protection.FluidJPerKgK);
        return SolarSettingWords.HotC - end;
    }
}
