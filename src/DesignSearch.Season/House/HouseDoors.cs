using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.House;

/// <summary>A door to every node of the house but the air, which has <see cref="HouseBlock{T}.Add"/> for the same once the others are eliminated.</summary>
internal struct HouseDoors<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Inner and outer surface of the cover.</summary>
    public Door<T> Inner, Cover;

    /// <summary>Floor's surface, and the layers of soil from the top.</summary>
    public Door<T> Floor, Soil1, Soil2, Soil3;

    /// <summary>Barrels, and the mass of a solid back wall.</summary>
    public Door<T> Barrels, WallMass;
}
