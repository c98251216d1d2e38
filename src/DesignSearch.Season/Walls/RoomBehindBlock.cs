using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Walls;

/// <summary>
/// Heated rooms behind the back walls of some houses. How the wall holds to them stands in the house's own terms; what they give at 0 °C of wall comes by its door.
/// </summary>
/// <remarks>Only lanes as fields, so that every one stays aligned.</remarks>
internal struct RoomBehindBlock<T> : ISourceBlock<RoomBehindBlock<T>, T>
    where T : unmanaged, ILane<T>
{
    private readonly T conductance, source;
    private T sum;

    private RoomBehindBlock(T conductance, T source) => (this.conductance, this.source, sum) = (conductance, source, T.Of(0));

    public static RoomBehindBlock<T> Make(in SourceStart start, int first)
    {
        Span<double> conductance = stackalloc double[Pack.Widest], source = stackalloc double[Pack.Widest];
        conductance.Clear();
        source.Clear();
        for (var i = 0; i < T.Width; i++)
        {
            if (start.Find<RoomBehindNumbers>(first + i) is not { } room)
                continue;
            conductance[i] = start.House(first + i).MassRoom;
            source[i] = conductance[i] * room.RoomC;
        }

        return new(T.Load(conductance), T.Load(source));
    }

    public readonly void Begin()
    {
        // It has no past.
    }

    public void Hour(in HourForcing f) => sum = T.Of(0);

    public readonly void Prepare(ref HouseBlock<T> house) => house.Doors.WallMass.Add(T.Of(0), source);

    public readonly void Offer(ref HouseBlock<T> house, Span<Offer<T>> offers)
    {
        // Its heat goes through the wall.
    }

    public void Settle(in HouseBlock<T> house, ReadOnlySpan<Offer<T>> offers) => sum += source - conductance * house.WallMass;

    public readonly void Book(ref FlowBook<T> book) => book.Heat(WallFlows.Room, sum);

    public readonly void Stored(ref LaneWriter<Store, T> stores)
    {
        // The room is held: it stores nothing that counts.
    }

    public readonly void Tell(ref LaneWriter<Figure, T> figures)
    {
        // What it gives stands in the books.
    }

    public readonly void Row(ref LaneWriter<HourColumn, T> columns, double steps) => columns.Put(WallFlows.RoomW, sum / T.Of(steps));

    public readonly T PlantsMean(in T house, double steps) => house;

    public readonly T PlantsLowest(in T house) => house;
}
