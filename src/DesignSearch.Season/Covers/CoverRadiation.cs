namespace DesignSearch.Season.Covers;

/// <summary>Heat radiation at a cover and through it, as far as it is not that of an opaque sheet.</summary>
/// <param name="FloorToInner">Exchange of floor and innermost layer, over that with an opaque sheet.</param>
/// <param name="FloorToCover">From the floor through the inner layers to the outermost [W/(m²K) of floor].</param>
/// <param name="FloorToOutside">From the floor to the sky through all layers, over that of a black floor without a cover [0…1].</param>
/// <param name="InnerToOutside">Likewise from the innermost layer through the outer ones, of a m² of cover [0…1].</param>
/// <param name="CoverToOutside">Exchange of the outermost layer with the sky, over that of a black one [0…1]; null takes the entry of the assumptions.</param>
public sealed record CoverRadiation(double FloorToInner, double FloorToCover, double FloorToOutside, double InnerToOutside, double? CoverToOutside)
{
    /// <summary>A sheet that no heat radiation passes.</summary>
    public static CoverRadiation Opaque { get; } = new(1, 0, 0, 0, null);
}
