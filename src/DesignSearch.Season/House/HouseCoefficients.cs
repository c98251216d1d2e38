using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Season.House;

/// <summary>A house as stores and conductances [J/K, W/K]; names and equations in docs/model.md, "House".</summary>
internal readonly record struct HouseCoefficients()
{
    private const double StefanBoltzmann = 5.670374419e-8;
    private const double WaterJPerKgK = 4186;
    private const double LeastResistance = 0.002;

    public double AirStore { get; init; }

    public double CoverStore { get; init; } = 1;

    public double FloorStore { get; init; }

    public double Soil1Store { get; init; } = 1;

    public double Soil2Store { get; init; } = 1;

    public double Soil3Store { get; init; } = 1;

    public double BarrelStore { get; init; } = 1;

    public double WallStore { get; init; } = 1;

    public double InnerAir { get; init; }

    public double InnerFloor { get; init; }

    public double Latent { get; init; }

    public double InnerWall { get; init; }

    public double LinkOpen { get; init; } = 1;

    public double LinkClosed { get; init; } = 1;

    public double OuterStill { get; init; }

    public double OuterPerWind { get; init; }

    /// <summary>ε σ A Fsky [W/K⁴].</summary>
    public double SkyWPerK4 { get; init; }

    /// <summary>4 ε σ A (1 − Fsky) [W/K⁴].</summary>
    public double AroundWPerK4 { get; init; }

    public double FloorAir { get; init; }

    public double FloorWall { get; init; }

    public double WallAir { get; init; }

    public double WallMass { get; init; } = 1;

    public double MassOutside { get; init; }

    public double FloorSoil { get; init; }

    public double Soil12 { get; init; }

    public double Soil23 { get; init; }

    public double SoilDeep { get; init; }

    public double Edge { get; init; }

    public double BarrelAir { get; init; }

    public double LeakM3PerS { get; init; }

    public double LeakM3PerSPerWind { get; init; }

    public double SunAir { get; init; }

    public double SunFloor { get; init; }

    public double SunBarrels { get; init; }

    public double SunWall { get; init; }

    public double Vent { get; init; }

    public double VentAboveC { get; init; } = 1e6;

    public double Release { get; init; }

    public double ReleaseSetC { get; init; }

    public double FanW { get; init; }

    public double HeaterW { get; init; }

    public double HeaterSetC { get; init; }

    public double FrostLimitC { get; init; }

    public double FadeFromK { get; init; }

    public double FadeOverK { get; init; } = 1;

    /// <summary>What of the heater has come on before another source with a thermostat of its own does: all of it when it is set higher, for then its relay clicks first [W].</summary>
    /// <param name="setC">That thermostat's middle [°C].</param>
    public double HeaterBeforeW(double setC) => HeaterSetC > setC ? HeaterW : 0;

    /// <summary>Thickness of the floor's surface (0) and of the three layers below it [m]; the deep layer is parted so that its upper third follows the weeks.</summary>
    public static double SoilLayerM(SeasonAssumptions a, int layer) => layer switch
    {
        0 => a.SoilSurfaceLayerM,
        1 => a.SoilMiddleLayerM,
        2 => a.SoilDeepLayerM / 3,
        _ => a.SoilDeepLayerM * 2 / 3,
    };

    /// <summary>Undisturbed ground in the middle of a layer when the winter begins [°C].</summary>
    public static double SoilStartC(WinterForcing forcing, int layer)
    {
        var depth = SoilLayerM(forcing.Assumptions, layer) / 2;
        for (var above = 0; above < layer; above++)
            depth += SoilLayerM(forcing.Assumptions, above);
        return WinterForcing.GroundAtC(forcing.Winter, 0, depth, forcing.Assumptions);
    }

    public static HouseCoefficients From(Installation installation, SeasonAssumptions a)
    {
        var (house, wall, barrels, release, heater) = (installation.House, installation.House.Wall, installation.Barrels, installation.Release, installation.Heater);
        var (cover, floor) = (house.CoverAreaM2, house.FloorAreaM2);
        var hasBarrels = barrels.WaterKg > 0;
        var hasWall = wall.AreaM2 > 0;
        var resistance = Math.Max(LeastResistance, house.CoverResistanceM2KPerW) + house.LiningResistanceM2KPerW;
        double Soil(int layer) => a.SoilVolumetricCapacityJPerM3K * floor * SoilLayerM(a, layer);
        double Below(int upper) => a.SoilConductivityWPerMK * floor / ((SoilLayerM(a, upper) + (upper < 3 ? SoilLayerM(a, upper + 1) : 0)) / 2);
        var kept = a.SunSensibleShare * house.LiningTransmittance;
        var onBarrels = hasBarrels ? barrels.SunShare : 0;
        var onWall = hasWall ? (1 - onBarrels) * wall.SunShare : 0;
        var onFloor = (1 - onBarrels - onWall) * a.SunFloorShare;
        var hasRelease = installation.Tank.WaterKg > 0 && release.ConductanceWPerK > 0 && release.FlowKgPerS > 0;
        var flowHeat = release.FlowKgPerS * WaterJPerKgK;
        // Wall and floor see each other as perpendicular neighbours, about a fifth of the wall's view (estimate); the rest of its view is cover.
        var wallToFloor = hasWall ? 0.2 * wall.AreaM2 * a.InsideFilmRadiativeWPerM2K : 0;
        var wallToCover = hasWall ? 0.8 * wall.AreaM2 * a.InsideFilmRadiativeWPerM2K : 0;
        return new HouseCoefficients
        {
            AirStore = a.AirAndBenchCapacityJPerM2K * floor,
            CoverStore = house.CoverCapacityJPerM2K * cover,
            FloorStore = Soil(0),
            Soil1Store = Soil(1),
            Soil2Store = Soil(2),
            Soil3Store = Soil(3),
            BarrelStore = hasBarrels ? barrels.WaterKg * WaterJPerKgK : 1,
            WallStore = hasWall ? wall.CapacityJPerM2K * wall.AreaM2 : 1,
            InnerAir = a.InsideFilmConvectiveWPerM2K * cover + a.InsideFilmRadiativeWPerM2K * a.BenchAreaRatio * floor,
            InnerFloor = a.InsideFilmRadiativeWPerM2K * floor - wallToFloor,
            Latent = a.CondensationWPerM2K * floor,
            InnerWall = wallToCover,
            LinkOpen = cover / resistance,
            LinkClosed = cover / (resistance + house.NightCoverResistanceM2KPerW),
            OuterStill = a.OutsideFilmStillWPerM2K * cover,
            OuterPerWind = a.OutsideFilmWindJPerM3K * cover,
            SkyWPerK4 = a.CoverEmissivity * StefanBoltzmann * cover * house.SkyViewFactor,
            AroundWPerK4 = 4 * a.CoverEmissivity * StefanBoltzmann * cover * (1 - house.SkyViewFactor),
            FloorAir = a.FloorFilmConvectiveWPerM2K * floor,
            FloorWall = wallToFloor,
            WallAir = hasWall ? a.InsideFilmConvectiveWPerM2K * wall.AreaM2 : 0,
            WallMass = hasWall ? wall.AreaM2 / wall.InnerResistanceM2KPerW : 1,
            MassOutside = hasWall ? wall.AreaM2 / wall.OuterResistanceM2KPerW : 0,
            FloorSoil = Below(0),
            Soil12 = Below(1),
            Soil23 = Below(2),
            SoilDeep = Below(3),
            Edge = house.EdgeLossWPerMK * house.PerimeterM,
            BarrelAir = hasBarrels ? barrels.SurfaceM2 * a.BarrelFilmWPerM2K : 0,
            LeakM3PerS = house.VolumeM3 / 3600 * house.AirChangesPerHour,
            LeakM3PerSPerWind = house.VolumeM3 / 3600 * house.AirChangesPerHourPerMPerS,
            SunBarrels = kept * onBarrels,
            SunWall = kept * onWall,
            SunFloor = kept * onFloor,
            SunAir = kept * (1 - onBarrels - onWall - onFloor),
            Vent = house.VentWPerK,
            VentAboveC = house.VentAboveC,
            // No exchanger takes more out of the water than its flow carries.
            Release = hasRelease ? Math.Min(release.ConductanceWPerK, flowHeat) : 0,
            ReleaseSetC = release.SetPointC,
            FadeFromK = a.ReleaseFadeFromK,
            FadeOverK = a.ReleaseFadeOverK,
            FanW = hasRelease ? release.ElectricW : 0,
            HeaterW = heater.PowerW,
            HeaterSetC = heater.SetPointC,
            FrostLimitC = house.FrostLimitC,
        };
    }
}
