using DesignSearch.Season.Solar;

namespace DesignSearch.Season.Assumptions;

/// <summary>The numbers an honest modeller could choose otherwise; each is an entry of the scenario's [assumptions].</summary>
public sealed record SeasonAssumptions
{
    private readonly double[] values;

    private SeasonAssumptions(double[] values) => this.values = values;

    /// <summary>Every entry with its unit, default, range and source, in the order of the report.</summary>
    public static IReadOnlyList<AssumptionEntry> Catalogue { get; } =
    [
        new("inside_film_convective_w_per_m2k", "W/(m²K)", 3.6, 1, 10, "EN 673, inner convective part"),
        new("inside_film_radiative_w_per_m2k", "W/(m²K)", 4.1, 0, 6.5, "EN 673, inner radiative part at emissivity 0.837; acts on the floor area"),
        new("floor_film_convective_w_per_m2k", "W/(m²K)", 3.0, 0.5, 10, "own choice between 0.7 (stable air) and 5 (warm floor) of EN ISO 6946"),
        new("bench_area_ratio", "m² of leaves and benches per m² of floor", 0.5, 0, 5, "own choice: what stands in the house at air temperature and sees the cover by long-wave"),
        new("condensation_w_per_m2k", "W/(m²K) of floor", 1, 0, 5, "own choice: a third of what a wet floor near 5 °C evaporates by Lewis's rule, 3 W/(m²K)"),
        new("outside_film_still_w_per_m2k", "W/(m²K)", 2.8, 1, 12, "Watmuff et al. 1977"),
        new("outside_film_wind_j_per_m3k", "W/(m²K) per m/s", 3.0, 0, 8, "Watmuff et al. 1977"),
        new("roof_wind_factor", "share of the wind at 10 m", 0.6, 0.1, 1, "own choice: a garden is rougher and lower than a weather mast"),
        new("cover_emissivity", "1", 0.84, 0.05, 1, "EN 673, uncoated glass 0.837"),
        new("sun_sensible_share", "share of the transmitted sun", 0.7, 0.1, 1, "own choice: the rest is reflected out again or evaporates water"),
        new("sun_floor_share", "share of the sun that stays and misses the barrels", 0.6, 0, 1, "own choice: the rest warms air, plants and benches"),
        new("air_and_bench_capacity_j_per_m2k", "J/(m²K) of floor", 15000, 1000, 200000, "own choice: 2.5 m of air are 3000, pots and benches the rest"),
        new("air_volumetric_capacity_j_per_m3k", "J/(m³K)", 1253, 1000, 1400, "dry air at 10 °C and sea level, 0.348 W h/(m³K)"),
        new("soil_conductivity_w_per_mk", "W/(m·K)", 1.2, 0.2, 3, "moist garden soil, between sand and clay of ISO 13370"),
        new("soil_volumetric_capacity_j_per_m3k", "J/(m³K)", 2.0e6, 0.8e6, 4e6, "ISO 13370, sand or gravel 2.0e6, clay 3.0e6"),
        new("soil_surface_layer_m", "m", 0.05, 0.01, 0.2, "own choice: what follows the air within hours"),
        new("soil_middle_layer_m", "m", 0.20, 0.05, 0.5, "own choice: what follows the air within days"),
        new("soil_deep_layer_m", "m", 0.75, 0.1, 3, "own choice: the undisturbed ground begins below it"),
        new("barrel_film_w_per_m2k", "W/(m²K)", 7, 2, 15, "common practice, no source: convection and radiation of a still surface"),
        new("bench_capacity_j_per_m2k", "J/(m²K) of bench", 125000, 5000, 400000, "own choice: 5 cm of moist pots and trays on average, 2.5e6 J/(m³K)"),
        new(
            "bench_radiant_share", "share of what the fleece lets out", 0.5, 0, 1,
            "own choice: inner films of EN 673 are about half radiation; it goes to the cover, the rest to the air"),
        new("empty_capacity_share", "share of the heat capacity that stays when the water has gone", 0.3, 0.05, 1, "own choice: absorber and pipe wall against their water"),
        new("ground_reflectance", "1", 0.2, 0, 1, "the usual figure for grass and soil, common practice"),
        new("snow_reflectance", "1", 0.6, 0.2, 0.95, "common practice: 0.5 old to 0.85 new snow"),
        new("release_fade_from_k", "K between tank top and set point", 1, 0, 10, "own choice: below it the release rests"),
        new(
            "release_fade_over_k", "K", 1, 0.5, 10,
            "own choice: the difference of the tank thermostat that enables the release; a relay within it loses 3 % of frost "
                + "degree-hours at most"),
        .. PumpAssumptions.All,
        new("compost_start_c", "°C", 45, 5, 70, "40 to 50 °C within two or three days of building: Cornell Composting, compost physics; the heap is built as the warm-up begins"),
        new("compost_rate_factor_most", "rate over that at 20 °C", 5, 1, 18, "own choice: Haug's factor is capped, or a woody heap burns out in weeks"),
        new("compost_steam_from_c", "°C", 55, 40, 75, "own choice: above it steam and rising air cool the core"),
        new("compost_steam_w_per_m3k", "W/(m³K)", 30, 0, 200, "own choice: holds a fresh heap below some 70 °C"),
        new("compost_volumetric_capacity_j_per_m3k", "J/(m³K)", 2.5e6, 0.26e6, 4.1e6, "within 1.4e6 to 4.1e6 of moist sawdust, manure and soil: Ahn et al. 2009, abstract"),
        new("compost_conductivity_w_per_mk", "W/(m·K)", 0.3, 0.03, 0.9, "between wet straw and moist manure: Ahn et al. 2009, abstract"),
        new("compost_shell_m", "m", 0.3, 0.05, 1, "own choice: outer layer of the heap that insulates its core"),
    ];

    /// <summary>The values used when the scenario says nothing.</summary>
    public static SeasonAssumptions Default { get; } = new([.. Catalogue.Select(e => e.Default)]);

    /// <summary>Leaves, pots and benches at air temperature that radiate to the cover, per floor area [m²/m²].</summary>
    public double BenchAreaRatio => Value("bench_area_ratio");

    /// <summary>Heat capacity under the fleece of a bench, pots and trays included, per area of the bench [J/(m²K)].</summary>
    public double BenchCapacityJPerM2K => Value("bench_capacity_j_per_m2k");

    /// <summary>Share of the heat through a bench's fleece that radiates to the cover.</summary>
    public double BenchRadiantShare => Value("bench_radiant_share");

    /// <summary>Latent heat that water evaporating from the floor carries to a colder cover [W/(m²K) of floor].</summary>
    public double CondensationWPerM2K => Value("condensation_w_per_m2k");

    /// <summary>Convective film inside the cover [W/(m²K)].</summary>
    public double InsideFilmConvectiveWPerM2K => Value("inside_film_convective_w_per_m2k");

    /// <summary>Long-wave exchange between floor and cover, per floor area [W/(m²K)].</summary>
    public double InsideFilmRadiativeWPerM2K => Value("inside_film_radiative_w_per_m2k");

    /// <summary>Convective film on the floor [W/(m²K)].</summary>
    public double FloorFilmConvectiveWPerM2K => Value("floor_film_convective_w_per_m2k");

    /// <summary>Convective film outside in still air [W/(m²K)].</summary>
    public double OutsideFilmStillWPerM2K => Value("outside_film_still_w_per_m2k");

    /// <summary>What each metre per second at the roof adds to the outside film [J/(m³K)].</summary>
    public double OutsideFilmWindJPerM3K => Value("outside_film_wind_j_per_m3k");

    /// <summary>Wind at the roof as a share of the wind at 10 m.</summary>
    public double RoofWindFactor => Value("roof_wind_factor");

    /// <summary>Long-wave emissivity of the cover's outside.</summary>
    public double CoverEmissivity => Value("cover_emissivity");

    /// <summary>Share of the transmitted sun that stays as sensible heat.</summary>
    public double SunSensibleShare => Value("sun_sensible_share");

    /// <summary>Share of that sun, barrels taken off, that strikes the floor.</summary>
    public double SunFloorShare => Value("sun_floor_share");

    /// <summary>Heat capacity of air, plants and benches per floor area [J/(m²K)].</summary>
    public double AirAndBenchCapacityJPerM2K => Value("air_and_bench_capacity_j_per_m2k");

    /// <summary>Volumetric heat capacity of leaking air [J/(m³K)].</summary>
    public double AirVolumetricCapacityJPerM3K => Value("air_volumetric_capacity_j_per_m3k");

    /// <summary>Conductivity of the soil [W/(m·K)].</summary>
    public double SoilConductivityWPerMK => Value("soil_conductivity_w_per_mk");

    /// <summary>Volumetric heat capacity of the soil [J/(m³K)].</summary>
    public double SoilVolumetricCapacityJPerM3K => Value("soil_volumetric_capacity_j_per_m3k");

    /// <summary>Thickness of the topmost soil layer [m].</summary>
    public double SoilSurfaceLayerM => Value("soil_surface_layer_m");

    /// <summary>Thickness of the middle soil layer [m].</summary>
    public double SoilMiddleLayerM => Value("soil_middle_layer_m");

    /// <summary>Thickness of the deepest soil layer [m].</summary>
    public double SoilDeepLayerM => Value("soil_deep_layer_m");

    /// <summary>Film on the barrels [W/(m²K)].</summary>
    public double BarrelFilmWPerM2K => Value("barrel_film_w_per_m2k");

    /// <summary>Share of the capacity of collector and pipes that stays when they stand empty at rest.</summary>
    public double EmptyCapacityShare => Value("empty_capacity_share");

    /// <summary>Reflectance of the ground without snow.</summary>
    public double GroundReflectance => Value("ground_reflectance");

    /// <summary>Reflectance of the ground under snow.</summary>
    public double SnowReflectance => Value("snow_reflectance");

    /// <summary>Core of a compost heap when the warm-up begins [°C].</summary>
    public double CompostStartC => Value("compost_start_c");

    /// <summary>Most that heat speeds rotting up, over the rate at 20 °C.</summary>
    public double CompostRateFactorMost => Value("compost_rate_factor_most");

    /// <summary>Core above which steam leaves the heap [°C].</summary>
    public double CompostSteamFromC => Value("compost_steam_from_c");

    /// <summary>Heat that steam takes, per volume and kelvin above that [W/(m³K)].</summary>
    public double CompostSteamWPerM3K => Value("compost_steam_w_per_m3k");

    /// <summary>Heat capacity of moist compost [J/(m³K)].</summary>
    public double CompostVolumetricCapacityJPerM3K => Value("compost_volumetric_capacity_j_per_m3k");

    /// <summary>Conductivity of moist compost [W/(m·K)].</summary>
    public double CompostConductivityWPerMK => Value("compost_conductivity_w_per_mk");

    /// <summary>Outer layer that insulates the core [m].</summary>
    public double CompostShellM => Value("compost_shell_m");

    /// <summary>Tank top above the set point at which the release begins to run [K].</summary>
    public double ReleaseFadeFromK => Value("release_fade_from_k");

    /// <summary>Further kelvins until it runs in full [K].</summary>
    public double ReleaseFadeOverK => Value("release_fade_over_k");

    /// <summary>The value of one entry.</summary>
    /// <param name="key">A key of <see cref="Catalogue"/>.</param>
    public double this[string key] => Value(key);

    /// <inheritdoc cref="this[string]"/>
    /// <exception cref="ArgumentException">The key is not in the catalogue.</exception>
    public double Value(string key) => values[IndexOf(key)];

    /// <summary>A copy with one entry changed.</summary>
    /// <param name="key">A key of <see cref="Catalogue"/>.</param>
    /// <param name="value">New value, within the entry's range.</param>
    /// <exception cref="ArgumentException">The key is not in the catalogue.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public SeasonAssumptions With(string key, double value)
    {
        var index = IndexOf(key);
        var entry = Catalogue[index];
        if (!(value >= entry.Min && value <= entry.Max))
            throw new ArgumentOutOfRangeException(nameof(value), value, FormattableString.Invariant($"{key} must lie from {entry.Min} to {entry.Max} {entry.Unit}"));
        var copy = (double[])values.Clone();
        copy[index] = value;
        return new(copy);
    }

    /// <summary>True when every value is the same.</summary>
    /// <param name="other">The other set.</param>
    public bool Equals(SeasonAssumptions? other) => other is not null && values.AsSpan().SequenceEqual(other.values);

    /// <inheritdoc/>
    public override int GetHashCode() => values.Aggregate(17, HashCode.Combine);

    private static int IndexOf(string key)
    {
        for (var i = 0; i < Catalogue.Count; i++)
        {
            if (Catalogue[i].Key == key)
                return i;
        }

        throw new ArgumentException($"There is no assumption named {key}.", nameof(key));
    }
}
