using DesignSearch.Physics;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Season.House;

/// <summary>A house as stores, conductances and shares; equations in docs/model.md, "House". Every field is of the same type: one house's number, or a lane of them.</summary>
/// <remarks>
/// The one description of these numbers: <see cref="HouseTerms.From"/> makes them, <see cref="Lanes.Lift"/> lays several houses
/// side by side, the block reads them.
/// </remarks>
internal struct HouseTerms<TNumber>
    where TNumber : unmanaged
{
    /// <summary>Heat capacity of air and leaves [J/K].</summary>
    public TNumber AirStore;

    /// <summary>Heat capacity of the cover's outer surface, c [J/K].</summary>
    public TNumber CoverStore;

    /// <summary>Heat capacity of the floor's surface layer, f [J/K].</summary>
    public TNumber FloorStore;

    /// <summary>Heat capacity of the first layer of soil, s₁ [J/K].</summary>
    public TNumber Soil1Store;

    /// <summary>Heat capacity of the second, s₂ [J/K].</summary>
    public TNumber Soil2Store;

    /// <summary>Heat capacity of the third, s₃ [J/K].</summary>
    public TNumber Soil3Store;

    /// <summary>Heat capacity of the barrels' water, w [J/K].</summary>
    public TNumber BarrelStore;

    /// <summary>The same of their ice [J/K].</summary>
    public TNumber BarrelIce;

    /// <summary>Heat that they give while all of it freezes [J].</summary>
    public TNumber BarrelMelts;

    /// <summary>Heat capacity of the back wall's mass, m [J/K].</summary>
    public TNumber WallStore;

    /// <summary>Leaves and benches at the air's temperature to the cover's inner surface, long-wave [W/K].</summary>
    public TNumber InnerAir;

    /// <summary>Air to the cover's inner surface, by convection, over the cube root of their difference [W/K^(4/3)].</summary>
    public TNumber InnerAirPerRoot;

    /// <summary>Floor to the cover's inner surface, long-wave [W/K].</summary>
    public TNumber InnerFloor;

    /// <summary>Heat capacity of what stands in the house, k [J/K].</summary>
    public TNumber ContentsStore;

    /// <summary>Contents to air [W/K].</summary>
    public TNumber ContentsAir;

    /// <summary>Contents to the cover's inner surface, long-wave [W/K].</summary>
    public TNumber ContentsInner;

    /// <summary>Floor to a colder inner surface as vapour [W/K].</summary>
    public TNumber Latent;

    /// <summary>Wall face to the cover's inner surface, long-wave [W/K].</summary>
    public TNumber InnerWall;

    /// <summary>Floor through the cover's inner layers to its outer surface, long-wave [W/K].</summary>
    public TNumber FloorCover;

    /// <summary>4 σ A and a share: floor through the cover to what lies outside [W/K⁴].</summary>
    public TNumber FloorOutWPerK4;

    /// <summary>The same from leaves and benches at the air's temperature [W/K⁴].</summary>
    public TNumber AirOutWPerK4;

    /// <summary>The same from the cover's inner surface [W/K⁴].</summary>
    public TNumber InnerOutWPerK4;

    /// <summary>Share of the sky in what the cover sees [0…1].</summary>
    public TNumber SkyView;

    /// <summary>1 where a light sensor closes the night cover, 0 where the sun's set does.</summary>
    public TNumber CoverBySensor;

    /// <summary>1 where a night cover ends all radiation through the cover while it is closed, 0 without one.</summary>
    public TNumber CoverBlocks;

    /// <summary>ε σ F A: outer surface to the sky [W/K⁴].</summary>
    public TNumber SkyWPerK4;

    /// <summary>Floor to air, the mean of what rises from a warmer floor and sinks to a colder one [W/K].</summary>
    public TNumber FloorAir;

    /// <summary>Half of the difference of the two [W/K].</summary>
    public TNumber FloorAirSwing;

    /// <summary>Floor to wall face, long-wave [W/K].</summary>
    public TNumber FloorWall;

    /// <summary>Wall face to air [W/K].</summary>
    public TNumber WallAir;

    /// <summary>Wall face to the wall's mass [W/K].</summary>
    public TNumber WallMass;

    /// <summary>Floor to the first layer of soil [W/K].</summary>
    public TNumber FloorSoil;

    /// <summary>First to second layer [W/K].</summary>
    public TNumber Soil12;

    /// <summary>Second to third layer [W/K].</summary>
    public TNumber Soil23;

    /// <summary>Barrels to air [W/K].</summary>
    public TNumber BarrelAir;

    // From here on, what is read once an hour or once a winter.

    /// <summary>Inner to outer surface of the cover with the night cover open [W/K].</summary>
    public TNumber LinkOpen;

    /// <summary>The same with it closed [W/K].</summary>
    public TNumber LinkClosed;

    /// <summary>Outer surface to the air outside in still air [W/K].</summary>
    public TNumber OuterStill;

    /// <summary>What each metre per second at the roof adds to it [W/K per m/s].</summary>
    public TNumber OuterPerWind;

    /// <summary>4 ε σ (1 − F) A: outer surface to what else it sees [W/K⁴].</summary>
    public TNumber AroundWPerK4;

    /// <summary>The wall's mass to the air outside [W/K].</summary>
    public TNumber MassOutside;

    /// <summary>Wall mass to a heated room behind it, whose heat is a source's [W/K].</summary>
    public TNumber MassRoom;

    /// <summary>Third layer to the undisturbed ground [W/K].</summary>
    public TNumber SoilDeep;

    /// <summary>Floor to the air outside, round the edge [W/K].</summary>
    public TNumber Edge;

    /// <summary>Air that leaks without wind [m³/s].</summary>
    public TNumber LeakM3PerS;

    /// <summary>What each metre per second at the roof adds to it [m³/s per m/s].</summary>
    public TNumber LeakM3PerSPerWind;

    /// <summary>Share of the sun through the bare cover that warms the air [0…1].</summary>
    public TNumber SunAir;

    /// <summary>Share that the floor takes [0…1].</summary>
    public TNumber SunFloor;

    /// <summary>Share that the contents take [0…1].</summary>
    public TNumber SunContents;

    /// <summary>Share that the barrels take [0…1].</summary>
    public TNumber SunBarrels;

    /// <summary>Share that the wall's face takes [0…1].</summary>
    public TNumber SunWall;

    /// <summary>Largest loss through opened vents [W/K].</summary>
    public TNumber Vent;

    /// <summary>Air at which the vents begin to open [°C].</summary>
    public TNumber VentAboveC;

    /// <summary>Release: tank's top to air, no more than its water carries [W/K].</summary>
    public TNumber Release;

    /// <summary>Release: air that its thermostat holds [°C].</summary>
    public TNumber ReleaseSetC;

    /// <summary>Release: electricity of pump and fan while it runs in full; all of it warms the air [W].</summary>
    public TNumber FanW;

    /// <summary>Release: share of its heat that it radiates [0…1].</summary>
    public TNumber ReleaseRadiates;

    /// <summary>Heater: largest power [W].</summary>
    public TNumber HeaterW;

    /// <summary>Heater: air that its thermostat holds [°C].</summary>
    public TNumber HeaterSetC;

    /// <summary>Heater: share of its heat that it radiates [0…1].</summary>
    public TNumber HeaterRadiates;

    /// <summary>An hour whose mean of the plants' air lies below it is a frost hour [°C].</summary>
    public TNumber FrostLimitC;

    /// <summary>Release: tank's top at which its thermostat stops it [°C].</summary>
    public TNumber ReleaseStopC;

    /// <summary>Release: tank's top at which that lets it run again [°C].</summary>
    public TNumber ReleaseStartC;
}

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
        var (views, exchange) = (house.CoverRadiation, house.CoverExchange);
        var (emits, through) = (views.CoverToOutside ?? a.CoverEmissivity, house.LiningResistanceM2KPerW > 0 ? house.LiningLongWave : 1);
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
            CoverBySensor = house.NightCoverBySensor ? 1 : 0,
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
