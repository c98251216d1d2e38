using DesignSearch.Season.House;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.Sources;

/// <summary>What a block does besides whose source takes heat from the tank, or brings it there.</summary>
/// <typeparam name="T">The lane type.</typeparam>
internal interface ITankBlock<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Sees the tank, before it offers.</summary>
    void See(in LoopBlock<T> loop);

    /// <summary>Adds its heat and its flow to those of the release, once the air is known and before the tank is solved.</summary>
    void Charge(ref HouseBlock<T> house);
}
