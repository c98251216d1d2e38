using System.Collections.Immutable;
using DesignSearch.Season.House;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.Assumptions;

/// <summary>The numbers an honest modeller could choose otherwise; each is an entry of the scenario's [assumptions], and stands with whoever uses it.</summary>
public sealed record SeasonAssumptions
{
    // What was set; all else holds its default.
    private readonly ImmutableSortedDictionary<string, double> changed;

    private SeasonAssumptions(ImmutableSortedDictionary<string, double> changed) => this.changed = changed;

    /// <summary>The entries of house and solar loop, in the order of the report; sources bring their own.</summary>
    public static IReadOnlyList<AssumptionEntry> Catalogue { get; } = [.. HouseAssumptions.All, .. PumpAssumptions.All];

    /// <summary>The values used when the scenario says nothing.</summary>
    public static SeasonAssumptions Default { get; } = new(ImmutableSortedDictionary<string, double>.Empty.WithComparers(StringComparer.Ordinal));

    /// <summary>Long-wave exchange between floor and cover, per floor area [W/(m²K)].</summary>
    public double InsideFilmRadiativeWPerM2K => this[HouseAssumptions.InsideFilmRadiativeWPerM2K];

    /// <summary>Latent heat that water evaporating from the floor carries to a colder cover [W/(m²K) of floor].</summary>
    public double CondensationWPerM2K => this[HouseAssumptions.CondensationWPerM2K];

    /// <summary>Convective film outside in still air [W/(m²K)].</summary>
    public double OutsideFilmStillWPerM2K => this[HouseAssumptions.OutsideFilmStillWPerM2K];

    /// <summary>What each metre per second at the roof adds to the outside film [J/(m³K)].</summary>
    public double OutsideFilmWindJPerM3K => this[HouseAssumptions.OutsideFilmWindJPerM3K];

    /// <summary>Wind at the roof as a share of the wind at 10 m.</summary>
    public double RoofWindFactor => this[HouseAssumptions.RoofWindFactor];

    /// <summary>Long-wave emissivity of the cover's outside.</summary>
    public double CoverEmissivity => this[HouseAssumptions.CoverEmissivity];

    /// <summary>Share of the transmitted sun that stays as sensible heat.</summary>
    public double SunSensibleShare => this[HouseAssumptions.SunSensibleShare];

    /// <summary>Share of that sun, barrels taken off, that strikes the floor.</summary>
    public double SunFloorShare => this[HouseAssumptions.SunFloorShare];

    /// <summary>Volumetric heat capacity of leaking air [J/(m³K)].</summary>
    public double AirVolumetricCapacityJPerM3K => this[HouseAssumptions.AirVolumetricCapacityJPerM3K];

    /// <summary>Conductivity of the soil [W/(m·K)].</summary>
    public double SoilConductivityWPerMK => this[HouseAssumptions.SoilConductivityWPerMK];

    /// <summary>Volumetric heat capacity of the soil [J/(m³K)].</summary>
    public double SoilVolumetricCapacityJPerM3K => this[HouseAssumptions.SoilVolumetricCapacityJPerM3K];

    /// <summary>Thickness of the middle soil layer [m].</summary>
    public double SoilMiddleLayerM => this[HouseAssumptions.SoilMiddleLayerM];

    /// <summary>Thickness of the deepest soil layer [m].</summary>
    public double SoilDeepLayerM => this[HouseAssumptions.SoilDeepLayerM];

    /// <summary>Film on the barrels [W/(m²K)].</summary>
    public double BarrelFilmWPerM2K => this[HouseAssumptions.BarrelFilmWPerM2K];

    /// <summary>Share of the capacity of collector and pipes that stays when they stand empty at rest.</summary>
    public double EmptyCapacityShare => this[HouseAssumptions.EmptyCapacityShare];

    /// <summary>Reflectance of the ground without snow.</summary>
    public double GroundReflectance => this[HouseAssumptions.GroundReflectance];

    /// <summary>Reflectance of the ground under snow.</summary>
    public double SnowReflectance => this[HouseAssumptions.SnowReflectance];

    /// <summary>The value of an entry.</summary>
    /// <param name="entry">The entry.</param>
    public double this[AssumptionEntry entry]
    {
        get
        {
            ArgumentNullException.ThrowIfNull(entry);
            return changed.IsEmpty ? entry.Default : changed.GetValueOrDefault(entry.Key, entry.Default);
        }
    }

    /// <summary>A copy with one entry changed.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="value">New value, within the entry's range.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public SeasonAssumptions With(AssumptionEntry entry, double value)
    {
        ArgumentNullException.ThrowIfNull(entry);
        if (!(value >= entry.Min && value <= entry.Max))
            throw new ArgumentOutOfRangeException(nameof(value), value, FormattableString.Invariant($"{entry.Key} must lie from {entry.Min} to {entry.Max} {entry.Unit}"));
        return new(value == entry.Default ? changed.Remove(entry.Key) : changed.SetItem(entry.Key, value));
    }

    /// <summary>True when every value is the same.</summary>
    /// <param name="other">The other set.</param>
    public bool Equals(SeasonAssumptions? other) => other is not null && changed.SequenceEqual(other.changed);

    /// <inheritdoc/>
    public override int GetHashCode() => changed.Aggregate(17, (sum, pair) => HashCode.Combine(sum, pair.Value));
}
