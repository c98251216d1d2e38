using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Parts.Solar;
using DesignSearch.Season.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What to dial in on a finished solar plant.</summary>
internal static class SolarSettings
{
    public static IEnumerable<Setting> Of(SolarLoop solar, Scenario scenario)
    {
        var (dials, turning) = (solar.Dials, solar.Mount.Turning);
        yield return SolarSettingWords.Tilt(dials.TiltDeg);
        yield return SolarSettingWords.Direction(dials.AzimuthDeg);
        if (solar.Stand.IsCast)
            yield return SolarSettingWords.Footing(solar.Stand, solar.Mount.Founding == Founding.Post);
        if (solar.Drive is not null)
            yield return SolarSettingWords.LimitSwitches(dials.LimitDeg);
        if (solar.Turns)
            yield return SolarSettingWords.Stops(dials.LimitDeg);
        if (turning == TurningKind.TwoPosition)
            yield return Swing(solar, scenario);
        if (solar.Drive is not null && turning != TurningKind.TwoPosition)
            yield return SolarSettingWords.SunClock;
        if (solar.Drive is not null)
            yield return SolarSettingWords.FrameLight;
        if (solar.Turns)
            yield return SolarSettingWords.Gale(scenario.Site.WorkingWindMPerS, !solar.IsTurnedByHand, solar.Stand.SpringBolt is not null);
        yield return SolarSettingWords.PumpStarts(dials.StartDifferenceK);
        yield return SolarSettingWords.PumpStops(dials.StopDifferenceK);
        yield return SolarSettingWords.LockOut(solar.Heat);
        yield return SolarSettingWords.Flow(solar.Flow.KgPerS);
        if (LostK(solar) is { } lost)
            yield return SolarSettingWords.WarmPipe(lost);
        yield return SolarSettingWords.Fill(solar);
        yield return SolarSettingWords.Ceiling(solar.Heat.CeilingC);
        yield return SolarSettingWords.CutOut(solar.Heat.CutOutC);
        if (solar.ClosedLoop is { } loop)
            yield return SolarSettingWords.Vessel("loop", loop);
        if (solar.ClosedTank is { } tank)
            yield return SolarSettingWords.Vessel("tank", tank);
        if (solar.VesselAboveTankM > 0)
            yield return SolarSettingWords.DrainVessel(solar.VesselAboveTankM);
        if (solar.IsDrainedByValves)
        {
            yield return SolarSettingWords.ValveRelay;
            yield return SolarSettingWords.ValveLight;
            if (!solar.Tank.IsClosed)
                yield return SolarSettingWords.MakeUp;
        }

        yield return SolarSettingWords.Thermostat(dials.ReleaseSetC, scenario.Greenhouse.FrostLimitC);
        yield return SolarSettingWords.Band(dials.ReleaseBandK);
        if (turning == TurningKind.Stepped && solar.Drive is not null)
            yield return SolarSettingWords.Steps(dials.Steps);
        if (solar.Drive is not null && solar.Frames > 1)
            yield return SolarSettingWords.DriveOrder;
        if (solar.Fluid is { } fluid)
            yield return SolarSettingWords.Antifreeze(fluid.GlycolPercent, solar.ProtectsToC);
        if (!solar.StaysFull)
            yield return SolarSettingWords.RunsEmpty(solar.IsDrainedByValves);
        yield return SolarSettingWords.Summer;
    }

    // By hours from dawn where a part on the list can count them or a person may; else by the clock, month by month.
    private static Setting Swing(SolarLoop solar, Scenario scenario)
    {
        if (solar.Drive is not null && solar.HasDelayRelay)
            return SolarSettingWords.Delay(solar.Dials.SwitchHours);
        var times = SwingTimes.Of(scenario.Place, scenario.Season, solar.Dials.SwitchHours);
        return solar.Drive is null ? SolarSettingWords.ByHand(times) : SolarSettingWords.Timer(times);
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
