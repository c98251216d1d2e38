using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Design.Plans;

/// <summary>A house as seen from its end, front or right hand to the left, where it is more than a gable house with its cover down to the floor.</summary>
/// <param name="Shape">What it looks like.</param>
/// <param name="Cover">The cover, from its foot over the top: across the floor, and above it [m].</param>
/// <param name="BaseWallM">Height of the base wall above the floor [m]; 0 without one.</param>
/// <param name="FloorBelowM">How far the floor lies below the ground outside [m].</param>
/// <param name="BackWallTopM">Top of the wall it leans on, above the floor [m]; 0 without one.</param>
public sealed record HouseSection(HouseShape Shape, IReadOnlyList<Spot2> Cover, double BaseWallM, double FloorBelowM, double BackWallTopM)
{
    /// <summary>The section of a house; null for a plain one.</summary>
    /// <param name="house">The greenhouse.</param>
    public static HouseSection? Of(Greenhouse house)
    {
        ArgumentNullException.ThrowIfNull(house);
        return house is { Shape: HouseShape.Gable, BaseWall.HeightM: <= 0 }
            ? null
            : new(house.Shape, [.. house.Geometry.Profile.Select(p => new Spot2(p.AcrossM, p.AboveM))], house.BaseWall.HeightM, house.FloorBelowM, house.BackWall?.TopM ?? 0);
    }
}
