using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Hydraulics;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Works the solar plant of a layout out.</summary>
internal static class SolarSizing
{
    // A flow below this share of what is wanted is refused; heat is reckoned with no less.
    private const double LeastFlowShare = 0.4;

    // The drain-back's vessel hangs this much lower than the fall of the pipe would let it (own choice).
    private const double VesselSpareM = 0.1;
    private const double PercentPerUnit = 100;
    private const double HalfTurnDeg = 180;

    // Bends and valves of so short a way lose as much again as its pipe (common practice, no source).
    private const double ReleaseFittings = 2;
    private const double PaPerKPa = 1000;
    private const double MmPerM = 1000;
    private const double UmPerM = 1e6;
    private const double LPerMinOfM3PerS = 60_000;
    private const double CoolStoreC = 20;

    // A litre of the loop is taken as a kilogram.
    private const double SecondsPerMinute = 60;

    private const double Tiny = 1e-9;

    public static SolarLoop Of(DesignTask task, Collector collector)
    {
        var (layout, site, shelf) = (task.Layout, task.Scenario.Site, SolarShelf.Of(task.Shelf));
        var (mount, drive) = (Needed(layout, SolarChoices.Mount), layout.Get(SolarChoices.Drive));
        var protection = Needed(layout, SolarChoices.Protection);
        var tank = Needed(layout, SolarChoices.Tank);
        var pipe = Needed(layout, SolarChoices.Pipe);
        var pump = Needed(layout, SolarChoices.LoopPump);
        var release = Needed(layout, SolarChoices.Release);
        var (insulation, jacket) = (layout.Get(SolarChoices.Insulation), layout.Get(SolarChoices.Jacket));
        var count = (int)layout.Get(SolarChoices.CollectorCount);
        var area = count * collector.AreaM2;
        var perFrame = Math.Max(1, (int)Math.Floor((mount.MaxAreaM2 / collector.AreaM2) + Tiny));
        var runsEmpty = protection.Method != FreezeMethod.Antifreeze;
        var above = site.CollectorAboveTankM;
        var spare = above - (site.PipeRunM * protection.MinFallPercent / PercentPerUnit) - VesselSpareM;
        var vesselAbove = Math.Clamp(spare, 0, protection.VesselAboveTankM);
        // A turned frame drains where it stands at night, in its place of the morning; its slope sideways is left out.
        var top = above + (collector.HeightM * Math.Sin(layout.Get(SolarChoices.TiltDeg) * Math.PI / HalfTurnDeg));
        var lift = runsEmpty ? Math.Max(0, top - vesselAbove) : 0;
        var first = collector.IsGlazed && !pipe.IsMetal ? shelf.FirstMetres(collector.StagnationC, pipe, protection) : pipe;
        var wanted = layout.Get(SolarChoices.FlowLPerMinM2) / SecondsPerMinute;
        var flow = shelf.Flow(collector, count, pump, pipe, 2 * site.PipeRunM, lift, wanted);
        var loopRelief = runsEmpty ? null : shelf.Relief(collector.MaxBar ?? double.MaxValue);
        var heat = Heat(collector, area, protection, flow, (tank, jacket, release), pump, (pipe, insulation), loopRelief);
        var litres = LoopLitres(collector, area, protection, pipe, site.PipeRunM);
        var releaseCount = layout.Get(SolarChoices.ReleaseCount);
        var (releaseFlow, releaseDrop) = ReleaseFlow(release, releaseCount, pipe);
        var (frames, dials) = ((count + perFrame - 1) / perFrame, Dials(layout, mount));
        return new SolarLoop
        {
            Dials = dials,
            Collector = collector,
            Count = count,
            AreaM2 = area,
            Mount = mount,
            Frames = frames,
            Stand = StandSizing.Of(new(collector, count, frames, mount, drive, dials, site), shelf),
            Drive = drive,
            HasDelayRelay = shelf.HasDelayRelay,
            StopsCutCoils = drive is not null && Reversing.StopsCutCoils(task.Shelf, drive.Volts, SolarContacts.StartA(drive)),
            ShaftSeal = layout.Get(SolarChoices.ShaftSeal),
            Protection = protection,
            Tank = tank,
            TankCount = (int)layout.Get(SolarChoices.TankCount),
            Jacket = jacket,
            Pipe = pipe,
            PipeRunM = site.PipeRunM,
            FirstMetres = first,
            Insulation = insulation,
            FirstInsulation = FirstInsulation(collector, first, insulation, shelf),
            LoopLitres = litres,
            Pump = pump,
            Flow = flow,
            Heat = heat,
            Controller = Controller(shelf, pump, heat),
            Fluid = runsEmpty ? null : shelf.Fluid(protection.ProtectsToC),
            ClosedLoop = runsEmpty ? null : ClosedWater.Loop(litres, count * collector.WaterL, Math.Max(0, top), loopRelief, shelf),
            ClosedTank = tank.IsClosed
                ? ClosedWater.Tank(tank.VolumeL, heat.CeilingC, tank.HeightM, shelf.Relief(tank.MaxBar ?? double.MaxValue), shelf)
                : null,
            VesselAboveTankM = vesselAbove,
            FallM = above - vesselAbove,
            Release = release,
            ReleaseCount = releaseCount,
            ReleaseWPerK = release.WPerK * releaseCount,
            ReleasePump = shelf.Pump(releaseFlow, releaseDrop, heat.CeilingC, pump.Volts),
        };
    }

    // Metres of pipe stand one behind the other, pieces side by side. Cold water rubs most.
    private static (double LPerMin, double DropPa) ReleaseFlow(HeatRelease release, double count, Pipe pipe)
    {
        var inSeries = release.Unit == PartUnit.Metre;
        var flow = inSeries ? release.FlowLPerMin : release.FlowLPerMin * count;
        var (length, bore) = (2 * SolarListing.ReleasePipeM * ReleaseFittings, pipe.BoreMm / MmPerM);
        var rubs = PipeFriction.DropPa(flow / LPerMinOfM3PerS, bore, length, pipe.RoughnessUm / UmPerM, CoolStoreC);
        return (flow, rubs + (release.DropKPaAtFlow * PaPerKPa * (inSeries ? count : 1)));
    }

    private static SolarDials Dials(Layout layout, CollectorMount mount) => new()
    {
        TiltDeg = layout.Get(SolarChoices.TiltDeg),
        AzimuthDeg = layout.Get(SolarChoices.AzimuthDeg),
        LimitDeg = layout.Get(SolarChoices.LimitDeg),
        SwitchHours = mount.Turning == TurningKind.TwoPosition ? layout.Get(SolarChoices.SwitchHours) : SolarDials.UsualSwitchHours,
        Steps = mount.Turning == TurningKind.Stepped ? (int)layout.Get(SolarChoices.Steps) : SolarDials.UsualSteps,
        StartDifferenceK = layout.Get(SolarChoices.StartDifferenceK),
        StopDifferenceK = layout.Get(SolarChoices.StopDifferenceK),
        ReleaseSetC = layout.Get(SolarChoices.ReleaseSetC),
        ReleaseBandK = layout.Get(SolarChoices.ReleaseBandK),
        ReleaseStopK = layout.Get(SolarChoices.ReleaseStopK),
        GatherAboveC = layout.Get(SolarChoices.GatherAboveC),
    };

    private static LoopHeat Heat(
        Collector collector,
        double areaM2,
        FreezeProtection protection,
        LoopFlow flow,
        (Tank Tank, TankJacket? Jacket, HeatRelease Release) store,
        Pump pump,
        (Pipe Pipe, PipeInsulation? Sleeve) warm,
        ReliefValve? relief)
    {
        var kgPerS = Math.Max(flow.KgPerS, LeastFlowShare * flow.WantedKgPerS);
        var jacketC = store.Jacket?.MaxTemperatureC ?? double.MaxValue;
        var storeC = Math.Min(Math.Min(store.Tank.MaxTemperatureC, jacketC), store.Release.MaxTemperatureC);
        var warmC = Math.Min(warm.Pipe.MaxTemperatureC, warm.Sleeve?.MaxTemperatureC ?? double.MaxValue);
        return LoopHeat.Of(
            collector, kgPerS * protection.FluidJPerKgK / areaM2, protection.ExchangerEffectiveness, storeC, pump, warmC, relief);
    }

    private static SolarController? Controller(SolarShelf shelf, Pump pump, in LoopHeat heat)
    {
        var volts = pump.Volts >= SupplyPlan.MainsVolts ? SupplyPlan.MainsVolts : SupplyPlan.ControlVolts;
        return shelf.Controller(volts, Circuit.OfPump("", pump.Volts, pump.Watts, 0, "").StartA, heat.LockOutC);
    }

    private static PipeInsulation? FirstInsulation(Collector collector, Pipe? first, PipeInsulation? insulation, SolarShelf shelf)
    {
        if (first is null || insulation is null)
            return null;
        var bears = !collector.IsGlazed || insulation.MaxTemperatureC >= collector.StagnationC;
        return bears ? insulation : shelf.Sleeve(collector.StagnationC, first);
    }

    // In collectors by what they hold, or by what the antifreeze's maker counts where that is more; in the pipe out and back.
    private static double LoopLitres(Collector collector, double areaM2, FreezeProtection protection, Pipe pipe, double runM)
    {
        const double LitresPerMetreOfMm2 = 1e-3;
        var inCollectors = areaM2 * Math.Max(protection.FluidLPerM2, collector.WaterL / collector.AreaM2);
        return inCollectors + (Math.PI / 4 * pipe.BoreMm * pipe.BoreMm * LitresPerMetreOfMm2 * 2 * runM);
    }

    private static T Needed<T>(Layout layout, PartChoice<T> choice)
        where T : class, IPart =>
        layout.Get(choice) ?? throw new ArgumentException($"A layout with a collector needs a part for '{choice.Key}'.", nameof(layout));
}
