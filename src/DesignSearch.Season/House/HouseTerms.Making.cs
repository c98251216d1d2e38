using DesignSearch.Physics;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Season.House;

/// <summary>Makes the terms of a house from its numbers.</summary>
internal static class HouseTerms
{
    private const double LeastResistance = 0.002;

    // What follows the air within hours; a width of the grid, no figure of the soil.
    private const double SurfaceLayerM = 0.05;

    /// <summary>Nothing at all, yet no pivot is zero: what a test builds its own house on.</summary>
    public static HouseTerms<double> Nothing { get; } = new()
    {
        CoverStore = 1,
        Soil1Store = 1,
        Soil2Store = 1,
        Soil3Store = 1,
        BarrelStore = 1,
        BarrelIce = 1,
        ContentsStore = 1,
        WallStore = 1,
        LinkOpen = 1,
        LinkClosed = 1,
        WallMass = 1,
        VentAboveC = 1e6,
        ReleaseStartC = 1,
    };

    /// <summary>Depth of all the soil that is simulated [m].</summary>
    public static double SoilDepthM(SeasonAssumptions a) => SurfaceLayerM + a.SoilMiddleLayerM + a.SoilDeepLayerM;

    /// <summary>Thickness of the floor's surface (0) and of the three layers below it [m]; the deep layer is parted so that its upper third follows the weeks.</summary>
    public static double SoilLayerM(SeasonAssumptions a, int layer) => layer switch
    {
        0 => SurfaceLayerM,
        1 => a.SoilMiddleLayerM,
        2 => a.SoilDeepLayerM / 3,
        _ => a.SoilDeepLayerM * 2 / 3,
    };

    /// <summary>Undisturbed ground in the middle of a layer when the winter begins [°C].</summary>
    public static double SoilStartC(WinterForcing forcing, int layer)
    {
        var depth = forcing.FloorBelowM + SoilLayerM(forcing.Assumptions, layer) / 2;
        for (var above = 0; above < layer; above++)
            depth += SoilLayerM(forcing.Assumptions, above);
        return WinterForcing.GroundAtC(forcing.Winter, 0, depth, forcing.Assumptions);
    }

    public static HouseTerms<double> From(Installation installation, SeasonAssumptions a)
    {
        var (house, wall, barrels, release, heater) = (installation.House, installation.House.Wall, installation.Barrels, installation.Release, installation.Heater);
        var (cover, floor, contents) = (house.CoverAreaM2, house.FloorAreaM2, house.Contents);
        var hasBarrels = barrels.WaterKg > 0;
        var hasWall = wall.AreaM2 > 0;
        var resistance = Math.Max(LeastResistance, house.CoverResistanceM2KPerW) + house.LiningResistanceM2KPerW;
        double Soil(int layer) => a.SoilVolumetricCapacityJPerM3K * floor * SoilLayerM(a, layer);
        double Below(int upper) => a.SoilConductivityWPerMK * floor / ((SoilLayerM(a, upper) + (upper < 3 ? SoilLayerM(a, upper + 1) : 0)) / 2);
        // A lining is wet underneath on the nights that count, and nothing passes a film of water (from memory).
        var (views, exchange) = (house.CoverRadiation, house.CoverExchange);
        var (emits, through) = (views.CoverToOutside ?? a.CoverEmissivity, house.LiningResistanceM2KPerW > 0 ? 0 : 1);
        const double Sigma = Radiation.StefanBoltzmannWPerM2K4;
        var kept = a.SunSensibleShare * house.LiningTransmittance;
        var onBarrels = hasBarrels ? barrels.SunShare : 0;
        var onWall = hasWall ? (1 - onBarrels) * wall.SunShare : 0;
        var onFloor = (1 - onBarrels - onWall) * a.SunFloorShare;
        // What is not on the floor falls on leaves, which are at the air's temperature, and on what stands in the house, in halves (estimate, no source).
        var onContents = contents.CapacityJPerM2K > 0 ? (1 - onBarrels - onWall - onFloor) / 2 : 0;
        var (rising, sinking) = (a[HouseAssumptions.FloorFilmUpWPerM2K] * floor, a[HouseAssumptions.FloorFilmDownWPerM2K] * floor);
        var hasRelease = installation.Tank.WaterKg > 0 && release.ConductanceWPerK > 0 && release.FlowKgPerS > 0;
        var flowHeat = release.FlowKgPerS * Water.HeatJPerKgK;
        // Floor, leaves and contents to the innermost layer of the cover [W/K].
        var radiant = a.InsideFilmRadiativeWPerM2K * views.FloorToInner * floor * exchange;
        // Wall and floor see each other as perpendicular neighbours, about a fifth of the wall's view (estimate); the rest of its view is cover.
        var wallToFloor = hasWall ? 0.2 * wall.AreaM2 * a.InsideFilmRadiativeWPerM2K : 0;
        var wallToCover = hasWall ? 0.8 * wall.AreaM2 * a.InsideFilmRadiativeWPerM2K : 0;
        return new HouseTerms<double>
        {
            AirStore = a[HouseAssumptions.AirAndLeafCapacityJPerM2K] * floor,
            CoverStore = house.CoverCapacityJPerM2K * cover,
            FloorStore = Soil(0),
            Soil1Store = Soil(1),
            Soil2Store = Soil(2),
            Soil3Store = Soil(3),
            BarrelStore = hasBarrels ? barrels.WaterKg * Water.HeatJPerKgK : 1,
            BarrelIce = hasBarrels ? barrels.WaterKg * Ice.HeatJPerKgK : 1,
            BarrelMelts = hasBarrels ? barrels.WaterKg * Ice.MeltingJPerKg : 0,
            WallStore = hasWall ? wall.CapacityJPerM2K * wall.AreaM2 : 1,
            ContentsStore = contents.CapacityJPerM2K > 0 ? contents.CapacityJPerM2K * floor : 1,
            ContentsAir = contents.AirWPerM2K * floor,
            ContentsInner = radiant * contents.FloorShare,
            InnerAir = radiant * a[HouseAssumptions.BenchAreaRatio],
            InnerAirPerRoot = a[HouseAssumptions.InsideConvectionWPerM2K43] * cover * exchange,
            // What stands on the floor hides it from the cover.
            InnerFloor = radiant * (1 - contents.FloorShare) - wallToFloor,
            FloorCover = views.FloorToCover * floor * through * exchange,
            FloorOutWPerK4 = 4 * Sigma * views.FloorToOutside * floor * through * exchange,
            AirOutWPerK4 = 4 * Sigma * views.FloorToOutside * floor * a[HouseAssumptions.BenchAreaRatio] * through * exchange,
            InnerOutWPerK4 = 4 * Sigma * views.InnerToOutside * cover * through * exchange,
            SkyView = house.SkyViewFactor,
            CoverByHand = house.NightCoverDrawnBy.HasFlag(CoverDrawing.Hand) ? 1 : 0,
            CoverBySensor = house.NightCoverDrawnBy.HasFlag(CoverDrawing.Sensor) ? 1 : 0,
            CoverByClock = house.NightCoverDrawnBy.HasFlag(CoverDrawing.Clock) ? 1 : 0,
            CoverBlocks = house.NightCoverResistanceM2KPerW > 0 ? 1 : 0,
            Latent = a.CondensationWPerM2K * floor,
            InnerWall = wallToCover,
            LinkOpen = cover * exchange / resistance,
            LinkClosed = cover * exchange / (resistance + house.NightCoverResistanceM2KPerW),
            OuterStill = a.OutsideFilmStillWPerM2K * cover * exchange,
            OuterPerWind = a.OutsideFilmWindJPerM3K * cover * exchange,
            SkyWPerK4 = emits * Sigma * cover * house.SkyViewFactor * exchange,
            AroundWPerK4 = 4 * emits * Sigma * cover * (1 - house.SkyViewFactor) * exchange,
            FloorAir = (rising + sinking) / 2,
            FloorAirSwing = (rising - sinking) / 2,
            FloorWall = wallToFloor,
            WallAir = hasWall ? a[HouseAssumptions.WallFilmConvectiveWPerM2K] * wall.AreaM2 : 0,
            WallMass = hasWall ? wall.AreaM2 / wall.InnerResistanceM2KPerW : 1,
            MassOutside = hasWall && !wall.HasRoomBehind ? wall.AreaM2 / wall.OuterResistanceM2KPerW : 0,
            MassRoom = hasWall && wall.HasRoomBehind ? wall.AreaM2 / wall.OuterResistanceM2KPerW : 0,
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
            SunContents = kept * onContents,
            SunAir = kept * (1 - onBarrels - onWall - onFloor - onContents),
            Vent = house.VentWPerK,
            VentAboveC = house.VentAboveC,
            // No exchanger takes more out of the water than its flow carries.
            Release = hasRelease ? Math.Min(release.ConductanceWPerK, flowHeat) : 0,
            ReleaseSetC = release.SetPointC,
            ReleaseStopC = release.SetPointC + release.StopAboveSetK,
            ReleaseStartC = release.SetPointC + release.StopAboveSetK + a[HouseAssumptions.ReleaseRestartK],
            FanW = hasRelease ? release.ElectricW : 0,
            ReleaseRadiates = release.RadiantShare,
            HeaterW = heater.PowerW,
            HeaterRadiates = heater.RadiantShare,
            HeaterSetC = heater.SetPointC,
            FrostLimitC = house.FrostLimitC,
        };
    }

    /// <summary>The same house with its stores over a step: what a step of that length keeps of each, [W/K] instead of [J/K].</summary>
    /// <param name="house">The house.</param>
    /// <param name="stepSeconds">The step [s].</param>
    public static HouseTerms<double> Over(HouseTerms<double> house, double stepSeconds)
    {
        var perStep = 1 / stepSeconds;
        house.AirStore *= perStep;
        house.CoverStore *= perStep;
        house.FloorStore *= perStep;
        house.Soil1Store *= perStep;
        house.Soil2Store *= perStep;
        house.Soil3Store *= perStep;
        house.BarrelStore *= perStep;
        house.BarrelIce *= perStep;
        house.BarrelMelts *= perStep;
        house.ContentsStore *= perStep;
        house.WallStore *= perStep;
        return house;
    }
}
