using System.Text.Json.Serialization;
using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Design.Plans;

/// <summary>Sizes of the greenhouse.</summary>
/// <param name="LengthM">Along the ridge [m].</param>
/// <param name="WidthM">Across the ridge [m].</param>
/// <param name="EavesM">Height of the eaves [m].</param>
/// <param name="RidgeM">Height of the ridge [m].</param>
/// <param name="RidgeAzimuthDeg">Where the ridge runs to, clockwise from true north [°].</param>
public sealed record HouseSize(double LengthM, double WidthM, double EavesM, double RidgeM, double RidgeAzimuthDeg)
{
    /// <summary>Its section, where it is more than a plain gable house; null for that.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public HouseSection? Section { get; init; }

    /// <summary>The sizes of a greenhouse.</summary>
    /// <param name="house">The greenhouse.</param>
    public static HouseSize Of(Greenhouse house)
    {
        ArgumentNullException.ThrowIfNull(house);
        return new(house.LengthM, house.WidthM, house.EavesM, house.RidgeM, house.RidgeAzimuthDeg) { Section = HouseSection.Of(house) };
    }
}
