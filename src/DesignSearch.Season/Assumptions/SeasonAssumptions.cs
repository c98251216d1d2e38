namespace DesignSearch.Season;

/// <summary>The numbers an honest modeller could choose otherwise; each is an entry of the scenario's [assumptions].</summary>
public sealed class SeasonAssumptions
{
    private readonly double[] values;

    private SeasonAssumptions(double[] values) => this.values = values;

    /// <summary>Every entry with its default, range and source.</summary>
    public static IReadOnlyList<AssumptionEntry> Catalogue { get; } =
    [
        new("inside_convection_w_per_m2k", "W/(m²K)", 3.5, 0.5, 10, "free convection in a greenhouse 2 to 5; common practice, no source"),
        new("inside_radiation_w_per_m2k", "W/(m²K)", 4.5, 0, 8, "4εσT³ at 5 °C with emissivity 0.9: 4.4; analytic"),
        new("outside_convection_w_per_m2k", "W/(m²K)", 2.8, 0.5, 15, "Watmuff, Charters and Proctor 1977"),
        new("outside_convection_per_wind_j_per_m3k", "W/(m²K) per m/s", 3.0, 0, 10, "Watmuff, Charters and Proctor 1977"),
        new("outside_emissivity", "", 0.9, 0, 1, "glass 0.9, clear polyethylene far less; common practice, no source"),
        new("roof_wind_factor", "", 0.6, 0.1, 1.2, "wind at a sheltered roof of 2 m over wind at 10 m: 0.3 to 0.75; common practice, no source"),
        new("sun_kept_share", "", 0.7, 0.2, 1, "the rest is reflected out again or evaporates water; common practice, no source"),
        new("sun_on_floor_share", "", 0.6, 0, 1, "the rest warms plants, benches and air; common practice, no source"),
        new("air_and_bench_capacity_j_per_m2k", "J/(m²K) of floor", 30000, 1200, 300000, "plants, pots, benches and frame; common practice, no source"),
        new("soil_conductivity_w_per_mk", "W/(m·K)", 1.2, 0.2, 3, "moist loam; dry sand 0.3, wet clay 1.5 to 2: ISO 13370"),
        new("soil_capacity_j_per_m3k", "J/(m³K)", 2.0e6, 8e5, 4e6, "ISO 13370: clay or silt 3.0e6, sand or gravel 2.0e6"),
        new("barrel_film_w_per_m2k", "W/(m²K)", 7, 2, 15, "Verlodt and Mougou 1990: 7 to 8, 6 where barrels touch"),
        new("air_changes_volume_factor", "", 1, 0.2, 5, "for trying how much leakage matters; 1 leaves the scenario's figure"),
    ];

    private static readonly Dictionary<string, int> Index = Catalogue.Select((e, i) => (e.Key, i)).ToDictionary(p => p.Key, p => p.i, StringComparer.Ordinal);

    /// <summary>The values used when the scenario says nothing.</summary>
    public static SeasonAssumptions Default { get; } = new([.. Catalogue.Select(e => e.Default)]);

    /// <summary>The value of an entry.</summary>
    /// <param name="key">Its key.</param>
    /// <exception cref="KeyNotFoundException">There is no such entry.</exception>
    public double Value(string key) => values[Index[key]];

    /// <summary>The same assumptions with one entry changed.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="value">Its new value, in the entry's range.</param>
    /// <exception cref="KeyNotFoundException">There is no such entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the entry's range.</exception>
    public SeasonAssumptions With(string key, double value)
    {
        var entry = Catalogue[Index[key]];
        if (!(value >= entry.Min && value <= entry.Max))
            throw new ArgumentOutOfRangeException(nameof(value), value, FormattableString.Invariant($"'{key}' must lie in [{entry.Min}, {entry.Max}] {entry.Unit}"));
        var changed = (double[])values.Clone();
        changed[Index[key]] = value;
        return new(changed);
    }
}
