using DesignSearch.Climate.Winters;
using DesignSearch.Season.Assumptions;

namespace DesignSearch.Season.House;

/// <summary>What an honest modeller could choose otherwise about house, air, ground, barrels and release.</summary>
public static class HouseAssumptions
{
    /// <summary>Natural convection at the inside of the cover, over the cube root of the difference of air and surface [W/(m²K^(4/3))].</summary>
    public static AssumptionEntry InsideConvectionWPerM2K43 { get; } = new(
        "inside_convection_w_per_m2k43",
        "W/(m²K) at a difference of 1 K, growing by its cube root",
        1.4,
        0.5,
        4,
        "between 1.31 of an upright surface and 1.51 under a colder roof, the usual correlations of turbulent natural convection; a fan that stirs the air gives more");

    /// <summary>Convective film on a solid wall [W/(m²K)].</summary>
    public static AssumptionEntry WallFilmConvectiveWPerM2K { get; } = new(
        "wall_film_convective_w_per_m2k",
        "W/(m²K)",
        2.5,
        0.5,
        10,
        "EN ISO 6946, heat flow level");

    /// <summary>Long-wave exchange between floor and cover, per floor area [W/(m²K)].</summary>
    public static AssumptionEntry InsideFilmRadiativeWPerM2K { get; } = new(
        "inside_film_radiative_w_per_m2k",
        "W/(m²K)",
        4.1,
        0,
        6.5,
        "EN 673, inner radiative part at emissivity 0.837; acts on the floor area");

    /// <summary>Convective film on a floor that is warmer than the air [W/(m²K)].</summary>
    public static AssumptionEntry FloorFilmUpWPerM2K { get; } = new(
        "floor_film_up_w_per_m2k",
        "W/(m²K)",
        5.0,
        0.5,
        10,
        "EN ISO 6946, heat flow upward");

    /// <summary>Convective film on a floor that is colder than the air [W/(m²K)].</summary>
    public static AssumptionEntry FloorFilmDownWPerM2K { get; } = new(
        "floor_film_down_w_per_m2k",
        "W/(m²K)",
        0.7,
        0.2,
        10,
        "EN ISO 6946, heat flow downward; a fan that stirs the air gives 2 to 4 (from memory)");

    /// <summary>Leaves, pots and benches at air temperature that radiate to the cover, per floor area [m²/m²].</summary>
    public static AssumptionEntry BenchAreaRatio { get; } = new(
        "bench_area_ratio",
        "m² of leaves and benches per m² of floor",
        0.5,
        0,
        5,
        "own choice: what stands in the house at air temperature and sees the cover by long-wave");

    /// <summary>Latent heat that water evaporating from the floor carries to a colder cover [W/(m²K) of floor].</summary>
    public static AssumptionEntry CondensationWPerM2K { get; } = new(
        "condensation_w_per_m2k",
        "W/(m²K) of floor",
        1,
        0,
        5,
        "own choice: a third of what a wet floor near 5 °C evaporates by Lewis's rule, 3 W/(m²K)");

    /// <summary>Convective film outside in still air [W/(m²K)].</summary>
    public static AssumptionEntry OutsideFilmStillWPerM2K { get; } = new(
        "outside_film_still_w_per_m2k",
        "W/(m²K)",
        2.8,
        1,
        12,
        "Watmuff et al. 1977");

    /// <summary>What each metre per second at the roof adds to the outside film [J/(m³K)].</summary>
    public static AssumptionEntry OutsideFilmWindJPerM3K { get; } = new(
        "outside_film_wind_j_per_m3k",
        "W/(m²K) per m/s",
        3.0,
        0,
        8,
        "Watmuff et al. 1977");

    /// <summary>Wind at the roof as a share of the wind at 10 m.</summary>
    public static AssumptionEntry RoofWindFactor { get; } = new(
        "roof_wind_factor",
        "share of the wind at 10 m",
        0.6,
        0.1,
        1,
        "own choice: a garden is rougher and lower than a weather mast");

    /// <summary>Long-wave emissivity of the cover's outside.</summary>
    public static AssumptionEntry CoverEmissivity { get; } = new("cover_emissivity", "1", 0.84, 0.05, 1, "EN 673, uncoated glass 0.837");

    /// <summary>Share of the transmitted sun that stays as sensible heat.</summary>
    public static AssumptionEntry SunSensibleShare { get; } = new(
        "sun_sensible_share",
        "share of the transmitted sun",
        0.7,
        0.1,
        1,
        "own choice: the rest is reflected out again or evaporates water");

    /// <summary>Share of that sun, barrels taken off, that strikes the floor.</summary>
    public static AssumptionEntry SunFloorShare { get; } = new(
        "sun_floor_share",
        "share of the sun that stays and misses the barrels",
        0.6,
        0,
        1,
        "own choice: the rest warms air, plants and benches");

    /// <summary>Heat capacity of air and leaves per floor area [J/(m²K)].</summary>
    public static AssumptionEntry AirAndLeafCapacityJPerM2K { get; } = new(
        "air_and_leaf_capacity_j_per_m2k",
        "J/(m²K) of floor",
        15000,
        1000,
        200000,
        "own choice: 2.5 m of air are 3000, leaves and thin sheets the rest; pots, beds and paving are a store of their own");

    /// <summary>Volumetric heat capacity of leaking air [J/(m³K)].</summary>
    public static AssumptionEntry AirVolumetricCapacityJPerM3K { get; } = new(
        "air_volumetric_capacity_j_per_m3k",
        "J/(m³K)",
        1253,
        1000,
        1400,
        "dry air at 10 °C and sea level, 0.348 W h/(m³K)");

    /// <summary>Conductivity of the soil [W/(m·K)].</summary>
    public static AssumptionEntry SoilConductivityWPerMK { get; } = new(
        "soil_conductivity_w_per_mk",
        "W/(m·K)",
        1.2,
        0.2,
        3,
        "moist garden soil, between sand and clay of ISO 13370");

    /// <summary>Volumetric heat capacity of the soil [J/(m³K)].</summary>
    public static AssumptionEntry SoilVolumetricCapacityJPerM3K { get; } = new(
        "soil_volumetric_capacity_j_per_m3k",
        "J/(m³K)",
        2.0e6,
        0.8e6,
        4e6,
        "ISO 13370, sand or gravel 2.0e6, clay 3.0e6");

    /// <summary>Thickness of the middle soil layer [m].</summary>
    public static AssumptionEntry SoilMiddleLayerM { get; } = new(
        "soil_middle_layer_m",
        "m",
        0.20,
        0.05,
        0.5,
        "own choice: what follows the air within days");

    /// <summary>Thickness of the deepest soil layer [m].</summary>
    public static AssumptionEntry SoilDeepLayerM { get; } = new(
        "soil_deep_layer_m",
        "m",
        0.75,
        0.1,
        3,
        "own choice: the undisturbed ground begins below it");

    /// <summary>Film on the barrels [W/(m²K)].</summary>
    public static AssumptionEntry BarrelFilmWPerM2K { get; } = new(
        "barrel_film_w_per_m2k",
        "W/(m²K)",
        7,
        2,
        15,
        "common practice, no source: convection and radiation of a still surface");

    /// <summary>Share of the capacity of collector and pipes that stays when they stand empty at rest.</summary>
    public static AssumptionEntry EmptyCapacityShare { get; } = new(
        "empty_capacity_share",
        "share of the heat capacity that stays when the water has gone",
        0.3,
        0.05,
        1,
        "own choice: absorber and pipe wall against their water");

    /// <summary>Heat that comes up to the ground outside at night [W/m²].</summary>
    public static AssumptionEntry GroundOutsideWPerM2 { get; } = new(
        "ground_outside_w_per_m2",
        "W/m²",
        30,
        0,
        150,
        "20 to 40 on a clear night, from memory; grass then lies 4 to 5 K below the air when it is calm; 150 keeps it as warm as the air");

    /// <summary>Reflectance of the ground without snow.</summary>
    public static AssumptionEntry GroundReflectance { get; } = new(
        "ground_reflectance",
        "1",
        0.2,
        0,
        1,
        "the usual figure for grass and soil, common practice");

    /// <summary>Reflectance of the ground under snow.</summary>
    public static AssumptionEntry SnowReflectance { get; } = new(
        "snow_reflectance",
        "1",
        0.6,
        0.2,
        0.95,
        "common practice: 0.5 old to 0.85 new snow");

    /// <summary>Mean air of a dull, damp day up to which it snows [°C].</summary>
    public static AssumptionEntry SnowBelowC { get; } = new(
        "snow_below_c",
        "°C",
        LyingSnow.UsualBelowC,
        -30,
        5,
        "half of what falls is snow at 1 °C, Jennings et al. 2018, from −0.4 by the sea to 2.4 inland; read where snow is reckoned");

    /// <summary>Share of the light that passes the snow on a cover.</summary>
    public static AssumptionEntry SnowLightShare { get; } = new(
        "snow_light_share",
        "1",
        0.1,
        0,
        0.8,
        "e^(-46 z) of 5 cm, within extinctions of dry snow from 37 to 97 1/m: 0.16 to 0.01; read where snow is reckoned");

    /// <summary>Kelvins above the stop of the release at which the tank's thermostat lets it run again [K].</summary>
    public static AssumptionEntry ReleaseRestartK { get; } = new(
        "release_restart_k",
        "K",
        1,
        0.1,
        10,
        "own choice: the difference of the tank thermostat that enables the release");

    /// <summary>All of them, in the order of the report.</summary>
    public static IReadOnlyList<AssumptionEntry> All { get; } =
    [
        InsideConvectionWPerM2K43, WallFilmConvectiveWPerM2K, InsideFilmRadiativeWPerM2K, FloorFilmUpWPerM2K, FloorFilmDownWPerM2K, BenchAreaRatio, CondensationWPerM2K,
        OutsideFilmStillWPerM2K, OutsideFilmWindJPerM3K, RoofWindFactor, CoverEmissivity, SunSensibleShare, SunFloorShare,
        AirAndLeafCapacityJPerM2K, AirVolumetricCapacityJPerM3K, SoilConductivityWPerMK, SoilVolumetricCapacityJPerM3K,
        SoilMiddleLayerM, SoilDeepLayerM, BarrelFilmWPerM2K, EmptyCapacityShare, GroundOutsideWPerM2, GroundReflectance, SnowReflectance,
        SnowBelowC, SnowLightShare, ReleaseRestartK,
    ];
}
