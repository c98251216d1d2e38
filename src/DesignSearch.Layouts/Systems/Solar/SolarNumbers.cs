using DesignSearch.Climate.Plane;
using DesignSearch.Parts.Solar;
using DesignSearch.Physics;
using DesignSearch.Season;
using DesignSearch.Season.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What the season model needs to know of a solar plant.</summary>
internal static class SolarNumbers
{
    // Water at some 45 °C, as a tank in use holds it, weighs 0.99 kg a litre.
    private const double WarmWaterKgPerL = 0.99;

    // Film on a pipe in the open, wind and radiation included; clips, bends and valves lose a fifth more (estimates, no source).
    private const double OutsideFilmWPerM2K = 20;
    private const double FittingsLoss = 1.2;

    // A bare pipe has a sleeve of no thickness: any conductivity will do.
    private const double AnyConductivity = 0.04;
    private const double M2PerMm2 = 1e-6;
    private const double MmPerM = 1000;
    private const double SecondsPerMinute = 60;

    public static Installation Install(Installation plant, SolarLoop solar) => Gathering.Install(
        plant with
        {
            Tank = TankOf(solar),
            Collector = CollectorOf(solar),
            PipeRun = PipeRunOf(solar),
            Release = ReleaseOf(solar),
        },
        solar);

    public static PipeRunNumbers PipeRunOf(SolarLoop solar)
    {
        if (solar.PipeRunM <= 0)
            return PipeRunNumbers.None;
        var (pipe, insulation) = (solar.Pipe, solar.Insulation);
        var outer = pipe.OuterMm / MmPerM;
        var sleeved = outer + (2 * (insulation?.ThicknessMm ?? 0) / MmPerM);
        var lossPerM = PipeLoss.PerMetreK(insulation?.ConductivityWPerMK ?? AnyConductivity, outer, sleeved, OutsideFilmWPerM2K);
        var loss = lossPerM * solar.PipeRunM * FittingsLoss;
        var water = Math.PI / 4 * pipe.BoreMm * pipe.BoreMm * M2PerMm2 * Water.DensityKgPerM3 * solar.Protection.FluidJPerKgK;
        var capacity = (water + pipe.WallCapacityJPerMK) * solar.PipeRunM;
        return new PipeRunNumbers(loss, loss, capacity, capacity);
    }

    public static Mount MountOf(SolarLoop solar) => new(
        solar.Mount.Turning switch
        {
            TurningKind.TwoPosition => MountKind.TwoPosition,
            TurningKind.Stepped => MountKind.Stepped,
            TurningKind.Continuous => MountKind.Continuous,
            _ => MountKind.Fixed,
        },
        solar.Mount.Axis == TurningAxis.Sloping ? MountAxis.Sloping : MountAxis.Vertical,
        solar.Dials.TiltDeg,
        solar.Dials.AzimuthDeg,
        solar.Dials.LimitDeg,
        solar.Dials.SwitchHours,
        solar.Dials.Steps);

    private static CollectorNumbers CollectorOf(SolarLoop solar) => new()
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
        EmptyAtRest = !solar.StaysFull,
        PumpW = solar.Pump.Watts + (solar.StaysFull ? solar.Protection.Watts : 0),
        StartDifferenceK = solar.Dials.StartDifferenceK,
        StopDifferenceK = solar.Dials.StopDifferenceK,
        LockOutC = solar.Heat.LockOutC,
    };

    private static TankNumbers TankOf(SolarLoop solar)
    {
        var (tank, jacket) = (solar.Tank, solar.Jacket);
        var loss = tank.LossWPerK;
        if (jacket is not null)
            loss = tank.SurfaceM2 / ((tank.SurfaceM2 / tank.LossWPerK) + (jacket.ThicknessMm / MmPerM / jacket.ConductivityWPerMK));
        return new TankNumbers(tank.VolumeL * WarmWaterKgPerL * solar.TankCount, loss * solar.TankCount, solar.Heat.CeilingC);
    }

    private static ReleaseNumbers ReleaseOf(SolarLoop solar)
    {
        var (release, pieces) = (solar.Release, solar.ReleasePieces);
        var flow = release.FlowLPerMin / SecondsPerMinute * pieces;
        var watts = (release.FanWatts * pieces) + (solar.ReleasePump?.Watts ?? 0);
        var dials = solar.Dials;
        return new ReleaseNumbers(solar.ReleaseWPerK, flow, watts, dials.ReleaseSetC, dials.ReleaseBandK)
        {
            RadiantShare = release.RadiantShare,
            StopAboveSetK = dials.ReleaseStopK,
        };
    }
}
