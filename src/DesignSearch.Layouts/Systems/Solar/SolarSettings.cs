using DesignSearch.Layouts.Design;
using DesignSearch.Parts.Solar;
using DesignSearch.Season.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What to dial in on a finished solar plant.</summary>
internal static class SolarSettings
{
    public static IEnumerable<Setting> Of(SolarLoop solar, double limitC)
    {
        var (dials, turning) = (solar.Dials, solar.Mount.Turning);
        yield return SolarSettingWords.Tilt(dials.TiltDeg);
        yield return SolarSettingWords.Direction(dials.AzimuthDeg);
        if (turning != TurningKind.Fixed)
        {
            yield return solar.Drive is null
                ? SolarSettingWords.ByHand(dials.LimitDeg, dials.SwitchHours)
                : SolarSettingWords.LimitSwitches(dials.LimitDeg);
        }

        if (solar.Drive is not null)
        {
            yield return turning == TurningKind.TwoPosition ? SolarSettingWords.Timer(dials.SwitchHours) : SolarSettingWords.SunClock;
            yield return SolarSettingWords.FrameLight;
        }

        yield return SolarSettingWords.PumpStarts(dials.StartDifferenceK);
        yield return SolarSettingWords.PumpStops(dials.StopDifferenceK);
        if (solar.Heat.LockOutC is { } above)
            yield return SolarSettingWords.LockOut(above, solar.Heat.StandsC);
        yield return SolarSettingWords.Flow(solar.Flow.KgPerS);
        if (LostK(solar) is { } lost)
            yield return SolarSettingWords.WarmPipe(lost);
        yield return SolarSettingWords.Fill(solar);
        yield return SolarSettingWords.Ceiling(solar.Heat.CeilingC);
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

        yield return SolarSettingWords.Thermostat(dials.ReleaseSetC, limitC);
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
