using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;

namespace DesignSearch.Season.Sources;

/// <summary>
/// One kind of source in some layouts, as many as the lane type is wide; a lane whose layout has none must add nothing but zeros.
/// Only lanes as fields, so that every one stays aligned.
/// </summary>
/// <typeparam name="TSelf">The block itself.</typeparam>
/// <typeparam name="T">The lane type.</typeparam>
internal interface ISourceBlock<TSelf, T>
    where TSelf : unmanaged, ISourceBlock<TSelf, T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Makes the block of the lanes from <paramref name="first"/> on.</summary>
    static abstract TSelf Make(in SourceStart start, int first);

    /// <summary>Forgets the warm-up.</summary>
    void Begin();

    /// <summary>Takes one hour's weather, and empties the hour's sums.</summary>
    void Hour(in HourForcing f);

    /// <summary>
    /// First part of a step, before the house is eliminated: what goes through its doors; called only where
    /// <see cref="SourceKind.Doors"/> says that the kind uses them.
    /// </summary>
    void Prepare(ref HouseBlock<T> house);

    /// <summary>
    /// Second part, with the house reduced to the row of the air: joins it (<see cref="HouseBlock{T}.Add"/>), or writes set point
    /// and line of its own offers, as many as <see cref="SourceKind.Offers"/>.
    /// </summary>
    void Offer(ref HouseBlock<T> house, Span<Offer<T>> offers);

    /// <summary>Last part: every temperature of the house stands at the end of the step, and its own offers say what the air took.</summary>
    void Settle(in HouseBlock<T> house, ReadOnlySpan<Offer<T>> offers);

    /// <summary>Books the hour, in the order of the kind's flows and uses.</summary>
    void Book(ref FlowBook<T> book);

    /// <summary>Heat in the kind's stores against 0 °C, divided by the step [W], in their order.</summary>
    void Stored(ref LaneWriter<Store, T> stores);

    /// <summary>The kind's figures of the season, in their order.</summary>
    void Tell(ref LaneWriter<Figure, T> figures);

    /// <summary>The kind's columns of the hour just booked, in their order.</summary>
    void Row(ref LaneWriter<HourColumn, T> columns, double steps);

    /// <summary>Mean of the plants' air in the hour, where the kind holds plants; asked only then [°C].</summary>
    T PlantsMean(in T house, double steps);

    /// <summary>Lowest of the plants' air at the end of any step since <see cref="Begin"/>, likewise [°C].</summary>
    T PlantsLowest(in T house);
}
