using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;
using DesignSearch.Physics;
using DesignSearch.Season.Solar;

namespace DesignSearch.Layouts.Design.Sizing;

/// <summary>Collector, mount, tank, pipe run, pump and heat release.</summary>
internal static class SolarBuilding
{
    private const double FirstMetresM = 3;
    private const double ReleasePipeM = 2;
    private const double OutsideFilm = 20;
    private const double FittingsLoss = 1.2;
    // A corrugated pipe keeps water in its folds and never drains quite empty.
    private const double Corrugated = 50;
    private const double CeilingMarginK = 5;
    private const double Spill = 1.1;

    // A litre of the loop is taken as a kilogram.
    private const double SecondsPerMinute = 60;

    public static SolarLoop? Build(Scenario scenario, Layout layout, Needs needs)
    {
        var parts = needs.Catalogue;
        if (!parts.TryFind<Collector>(layout["collector"].Id, out var collector))
            return null;
        var mount = Find<CollectorMount>(parts, layout, "mount");
        var protection = Find<FreezeProtection>(parts, layout, "freeze_protection");
        var tank = Find<Tank>(parts, layout, "tank");
        var pipe = Find<Pipe>(parts, layout, "pipe");
        var pump = Find<Pump>(parts, layout, "pump");
        var release = Find<HeatRelease>(parts, layout, "release");
        parts.TryFind<Drive>(layout["drive"].Id, out var drive);
        parts.TryFind<PipeInsulation>(layout["pipe_insulation"].Id, out var insulation);
        parts.TryFind<TankJacket>(layout["tank_jacket"].Id, out var jacket);

        var count = (int)layout["collector_count"].Number;
        var area = count * collector.AreaM2;
        var perFrame = Math.Max(1, (int)Math.Floor(mount.MaxAreaM2 / collector.AreaM2 + 1e-9));
        var empty = protection.Method != FreezeMethod.Antifreeze;
        var lift = empty ? Math.Max(0, scenario.Site.CollectorAboveTankM) : 0;
        var hot = collector.IsGlazed && !pipe.IsMetal;
        var first = hot ? needs.Shelf.MetalPipes.FirstOrDefault(p => p.MaxTemperatureC >= collector.StagnationC && p.BoreMm >= pipe.BoreMm * 0.75 && (!empty || p.RoughnessUm < Corrugated)) : pipe;
        var near = first is null || insulation is null ? null : insulation.MaxTemperatureC >= collector.StagnationC || !collector.IsGlazed ? insulation
            : needs.Shelf.PipeInsulations.FirstOrDefault(i => i.MaxTemperatureC >= collector.StagnationC && first.OuterMm >= i.InnerFromMm && first.OuterMm <= i.InnerToMm);
        var weakest = Math.Min(Math.Min(Math.Min(tank.MaxTemperatureC, pipe.MaxTemperatureC), Math.Min(pump.MaxTemperatureC, release.MaxTemperatureC)), jacket?.MaxTemperatureC ?? double.MaxValue);
        var ceiling = weakest - CeilingMarginK;
        var releaseCount = layout["release_count"].Number;
        var releaseFlow = release.Unit == PartUnit.Metre ? release.FlowLPerMin : release.FlowLPerMin * releaseCount;
        return new SolarLoop
        {
            Collector = collector,
            Count = count,
            AreaM2 = area,
            Mount = mount,
            Frames = (count + perFrame - 1) / perFrame,
            LimitDeg = layout["limit_deg"].Number,
            Drive = drive,
            Protection = protection,
            Tank = tank,
            TankCount = (int)layout["tank_count"].Number,
            Jacket = jacket,
            Pipe = pipe,
            FirstMetres = first,
            Insulation = insulation,
            FirstInsulation = near,
            LoopLitres = area * Math.Max(protection.FluidLPerM2, collector.WaterL / collector.AreaM2) + Math.PI / 4 * pipe.BoreMm * pipe.BoreMm * 1e-3 * 2 * scenario.Site.PipeRunM,
            Pump = pump,
            Flow = needs.Shelf.Flow(collector, count, pump, pipe, 2 * scenario.Site.PipeRunM, lift, layout["flow_l_per_min_m2"].Number / SecondsPerMinute),
            CeilingC = ceiling,
            Release = release,
            ReleaseCount = releaseCount,
            ReleaseWPerK = release.WPerK * releaseCount,
            // The thriftiest that serves, the cheapest of these: a cheap strong one would want a larger supply and thicker cables.
            ReleasePump = needs.Shelf.Pumps.FirstOrDefault(p => p.FlowAtNoHeadLPerMin >= releaseFlow * 1.5 && p.MaxTemperatureC >= ceiling && p.Volts == pump.Volts),
        };
    }

    public static CollectorNumbers Collector(SolarLoop solar, Layout layout) => new()
    {
        AreaM2 = solar.AreaM2,
        Eta0Beam = solar.Collector.Eta0Beam,
        A1WPerM2K = solar.Collector.A1WPerM2K,
        A2WPerM2K2 = solar.Collector.A2WPerM2K2,
        WindLossJPerM3K = solar.Collector.WindLossJPerM3K,
        IncidenceB0 = solar.Collector.IncidenceB0,
        DiffuseModifier = solar.Collector.DiffuseModifier,
        CapacityJPerM2K = solar.Collector.CapacityJPerM2K,
        FlowKgPerS = solar.Flow.KgPerS,
        FluidJPerKgK = solar.Protection.FluidJPerKgK,
        ExchangerEffectiveness = solar.Protection.ExchangerEffectiveness,
        EmptyAtRest = solar.Protection.Method != FreezeMethod.Antifreeze,
        PumpW = solar.Pump.Watts + (solar.Protection.Method == FreezeMethod.Antifreeze ? solar.Protection.Watts : 0),
        StartDifferenceK = layout["start_difference_k"].Number,
        StopDifferenceK = layout["stop_difference_k"].Number,
    };

    public static TankNumbers Tank(SolarLoop solar)
    {
        var (tank, jacket) = (solar.Tank, solar.Jacket);
        var loss = jacket is null ? tank.LossWPerK : tank.SurfaceM2 / (tank.SurfaceM2 / tank.LossWPerK + jacket.ThicknessMm / 1000 / jacket.ConductivityWPerMK);
        return new TankNumbers(tank.VolumeL * 0.99 * solar.TankCount, loss * solar.TankCount, solar.CeilingC);
    }

    public static PipeRunNumbers PipeRun(SolarLoop solar, double lengthM)
    {
        if (lengthM <= 0)
            return PipeRunNumbers.None;
        var (pipe, insulation) = (solar.Pipe, solar.Insulation);
        var outer = pipe.OuterMm / 1000;
        var loss = PipeLoss.PerMetreK(insulation?.ConductivityWPerMK ?? 0.04, outer, outer + 2 * (insulation?.ThicknessMm ?? 0) / 1000, OutsideFilm) * lengthM * FittingsLoss;
        var water = Math.PI / 4 * pipe.BoreMm * pipe.BoreMm * 1e-6 * Water.DensityKgPerM3 * solar.Protection.FluidJPerKgK;
        var capacity = (water + pipe.WallCapacityJPerMK) * lengthM;
        return new PipeRunNumbers(loss, loss, capacity, capacity);
    }

    public static ReleaseNumbers Release(SolarLoop solar, Layout layout)
    {
        var release = solar.Release;
        var pieces = release.Unit == PartUnit.Metre ? 1 : solar.ReleaseCount;
        var flow = release.FlowLPerMin / 60 * pieces;
        return new ReleaseNumbers(solar.ReleaseWPerK, flow, release.FanWatts * pieces + (solar.ReleasePump?.Watts ?? 0), layout["release_set_c"].Number, layout["release_band_k"].Number);
    }

    public static Climate.Plane.Mount MountOf(SolarLoop solar, Layout layout) => new(
        solar.Mount.Turning switch
        {
            TurningKind.TwoPosition => Climate.Plane.MountKind.TwoPosition,
            TurningKind.Stepped => Climate.Plane.MountKind.Stepped,
            TurningKind.Continuous => Climate.Plane.MountKind.Continuous,
            _ => Climate.Plane.MountKind.Fixed,
        },
        solar.Mount.Axis == TurningAxis.Sloping ? Climate.Plane.MountAxis.Sloping : Climate.Plane.MountAxis.Vertical,
        layout["tilt_deg"].Number,
        layout["azimuth_deg"].Number,
        layout["limit_deg"].Number,
        solar.Mount.Turning == TurningKind.TwoPosition ? layout["switch_hours"].Number : UsualSwitchHours,
        solar.Mount.Turning == TurningKind.Stepped ? (int)layout["steps"].Number : UsualSteps);

    /// <summary>Hours from dawn to the swing where nothing else is said (five to six is common practice, no source).</summary>
    private const double UsualSwitchHours = 5.5;

    private const int UsualSteps = 5;

    public static void List(SolarLoop solar, Scenario scenario, Layout layout, Needs needs)
    {
        var run = scenario.Site.PipeRunM;
        var first = solar.FirstMetres is { } metal && metal != solar.Pipe ? Math.Min(FirstMetresM, run) : 0;
        needs.Add(solar.Collector, solar.Count, "collector", "Turns sun into warm water.", "on its stand, free of shade at noon in midwinter");
        var byArea = solar.Mount.Unit == PartUnit.SquareMetre;
        needs.Add(solar.Mount, byArea ? solar.AreaM2 : solar.Frames, "mount", solar.Mount.Turning == TurningKind.Fixed ? "Holds the collectors at their tilt against wind and snow." : "Turns the collectors after the sun.", "on footings");
        needs.Small(SmallPartRole.Anchor, solar.Anchors, "mount", "Holds the frame down in a storm.", "under the frame's feet");
        if (solar.Mount.Turning != TurningKind.Fixed)
            needs.Small(SmallPartRole.Cement, 2 * solar.Frames, "mount", "A footing under the post, which takes the wind from every side.", "in the ground under the frame");
        needs.Small(SmallPartRole.Fittings, solar.Count, "collector", "Joins collector and pipe in metal.", "at the collectors");
        if (solar.Drive is { } drive)
            Turning(solar, drive, layout, needs);
        if (solar.Collector.IsGlazed && solar.FirstMetres is null)
            needs.Pick(null, $"a metal pipe for the first metres that bears {solar.Collector.StagnationC:0} °C", 1, "pipe run", "", "");
        if (first > 0)
            needs.Add(solar.FirstMetres!, 2 * first * HouseBuilding.Cuts, "pipe run", "Bears the heat of a collector that stands dry in the sun, as plastic would not; 5 % for cuts included.", "the first metres from the collector, both ways");
        needs.Add(solar.Pipe, 2 * (run - first) * HouseBuilding.Cuts, "pipe run", "Brings the warmth to the tank and the cool water back; 5 % for cuts included.", "from the collector to the tank, out and back");
        if (solar.Insulation is { } insulation)
            Insulate(solar, insulation, run, needs);
        needs.Small(SmallPartRole.PipeClip, 2 * run, "pipe run", "Holds the pipe and lets it grow when it warms.", "one a metre");
        needs.Add(solar.Tank, solar.TankCount, "tank", "Keeps the day's heat for the night; what it loses warms the house.", "inside the greenhouse, on firm ground");
        if (solar.Jacket is { } jacket)
            needs.Add(jacket, solar.TankCount * solar.Tank.SurfaceM2 * HouseBuilding.Cuts, "tank", "Keeps the tank's heat for the cold nights; 5 % for cuts included.", "all round the tank, under it too");
        needs.Small(SmallPartRole.Strap, solar.TankCount, "tank", "Holds the tank against tipping.", "round the tank, to the frame");
        needs.Small(SmallPartRole.WarningLabel, 1, "tank", "Says what is hot, what may not be drunk and what may not be shut.", "on tank, taps and boxes");
        if (!solar.Tank.IsClosed)
            needs.Small(SmallPartRole.Lid, solar.TankCount, "tank", "Children and animals drown in open water.", "on the tank");
        if (solar.TankCount > 1)
            needs.Small(SmallPartRole.Fittings, solar.TankCount - 1, "tank", "Joins the tanks side by side, top to top and bottom to bottom.", "between the tanks");
        Protection(solar, needs);
        needs.Add(solar.Pump, 1, "pump and control", "Moves the water between collector and tank.", "at the lowest place beside the tank");
        needs.Small(SmallPartRole.DifferenceController, 1, "pump and control", "Runs the pump only while the collector is warmer than the tank.", "in the control box", solar.Pump.Volts == 230 ? 230 : 24);
        needs.Small(SmallPartRole.TemperatureSensor, 2, "pump and control", "Tell collector and tank apart.", "on the metal at the collector's outlet and at the tank's bottom");
        needs.Small(SmallPartRole.BallValve, 2, "pump and control", "To fill and to drain.", "beside the tank; never between collector and relief");
        needs.Add(solar.Pipe, 2 * ReleasePipeM * HouseBuilding.Cuts, "heat release", "Joins tank and heat release; 5 % for cuts included.", "inside the greenhouse, out and back");
        needs.Add(solar.Release, solar.ReleaseCount, "heat release", "Gives the tank's heat to the air.", "low down, where the cold air lies");
        needs.Pick(solar.ReleasePump, $"a pump of {solar.Pump.Volts:0} V for the heat release", 1, "heat release", "Moves the tank's water through the heat release.", "beside the tank");
        needs.Small(SmallPartRole.Thermostat, 1, "heat release", "Starts the heat release when the air falls to its setting.", "at plant height, out of the sun", solar.Release.Volts >= SupplyPlan.MainsVolts || (solar.Release.FanWatts == 0 && solar.Pump.Volts >= SupplyPlan.MainsVolts) ? SupplyPlan.MainsVolts : 24);
        if (CircuitBuilding.Relayed(solar))
            needs.Small(SmallPartRole.Relay, 1, "heat release", "Lets one thermostat switch a fan and a pump of different voltage and keeps the two apart.", "in the control box");
    }

    // Plastic foam beside a dry collector melts: there the sleeve must bear its heat, and where none does the pipe stays bare.
    private static void Insulate(SolarLoop solar, PipeInsulation insulation, double run, Needs needs)
    {
        var own = solar.FirstInsulation == insulation ? 0 : Math.Min(FirstMetresM, run);
        if (own > 0 && solar.FirstInsulation is { } near)
            needs.Add(near, 2 * own * HouseBuilding.Cuts, "pipe run", "Bears the heat of a collector that stands dry; 5 % for cuts included.", "on the first metres from the collector, both ways");
        needs.Add(insulation, 2 * (run - own) * HouseBuilding.Cuts, "pipe run", "Keeps the warmth in the pipe; 5 % for cuts included.", "over the pipe run, jacketed where sun or beaks reach it");
    }

    private static void Turning(SolarLoop solar, Drive drive, Layout layout, Needs needs)
    {
        needs.Add(drive, solar.Frames, "drive", "Turns the frame.", "at the frame's axis, under a rain hood");
        if (solar.Mount.Turning == TurningKind.TwoPosition)
            needs.Small(SmallPartRole.Timer, 1, "drive", "Swings the frame over some hours after dawn.", "in the control box", 24);
        else
            needs.Small(SmallPartRole.SunClock, 1, "drive", "Sends the frame after the sun.", "in the control box", 24);
        needs.Small(SmallPartRole.LightSensor, 1, "drive", "Tells dawn from dusk and brings the frame home.", "facing the open sky");
        needs.Small(SmallPartRole.LimitSwitch, 2 * solar.Frames, "drive", "Cuts the motor at either end of the turn.", "one at each stop");
        needs.Small(SmallPartRole.ReversingInterlock, solar.Frames, "drive", "Keeps both directions from ever being on together.", "in the control box", 24);
        needs.Chosen(layout["shaft_seal"], SmallPartRole.ShaftSeal, solar.Frames, "drive", "Keeps rain and grit out of the bearing.", "on the shaft");
        needs.Small(SmallPartRole.HoseLoop, 2 * solar.Frames, "drive", "Lets the pipes follow the frame.", "between pipe and collector, with a slack loop");
    }

    private static void Protection(SolarLoop solar, Needs needs)
    {
        const string system = "freeze protection";
        needs.Add(solar.Protection, 1, system, "Keeps the collector from freezing and bursting.", "between collector and tank");
        needs.Small(SmallPartRole.AirVent, 1, system, "Lets air in, so that the pipes run empty, and steam out.", "at the highest place");
        if (solar.Protection.Method == FreezeMethod.Antifreeze)
        {
            needs.Small(SmallPartRole.AntifreezeFluid, solar.LoopLitres * Spill, system, "Fills the closed loop, a tenth more for spills and topping up.", "in collector and pipes");
            needs.Small(SmallPartRole.CheckValve, 1, system, "Stops the tank from warming the collector at night.", "on the warm pipe");
        }

        if (solar.Protection.Method == FreezeMethod.Antifreeze || solar.Tank.IsClosed)
        {
            var closed = (solar.Protection.Method == FreezeMethod.Antifreeze ? 1 : 0) + (solar.Tank.IsClosed ? solar.TankCount : 0);
            needs.Small(SmallPartRole.ReliefValve, closed, system, "Opens before pressure becomes dangerous.", "one at all that is closed, loop and tank; the outlet led down to a safe place");
            needs.Small(SmallPartRole.ExpansionVessel, closed, system, "Takes up the growth of what is warmed.", "on the cool side of all that is closed, nothing to shut before it");
            needs.Small(SmallPartRole.FillSet, 1, system, "Fills the loop and keeps it apart from drinking water.", "at the fill point");
        }
    }

    private static T Find<T>(Catalogue parts, Layout layout, string key) where T : class, IPart =>
        parts.TryFind<T>(layout[key].Id, out var part) ? part : throw new ArgumentException($"A layout with a collector needs a part for '{key}'.", nameof(layout));
}
