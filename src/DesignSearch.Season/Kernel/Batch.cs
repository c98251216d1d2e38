using DesignSearch.Season.House;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.Kernel;

/// <summary>House and solar loop of as many layouts as the lane type is wide, in one winter; other sources stand beside them, see <see cref="Sources.SourceRunner{T}"/>.</summary>
internal struct Batch<T>
    where T : unmanaged, ILane<T>
{
    public HouseBlock<T> House;
    public LoopBlock<T> Loop;
    public TallyBlock<T> Tally;

    public Batch(ReadOnlySpan<HouseTerms<double>> houses, ReadOnlySpan<LoopTerms<double>> loops, WinterForcing forcing, double step)
    {
        var winter = forcing.Winter;
        House = new HouseBlock<T>(houses, step, winter.AirC[0], HouseTerms.SoilStartC(forcing, 1), HouseTerms.SoilStartC(forcing, 2), HouseTerms.SoilStartC(forcing, 3));
        Loop = new LoopBlock<T>(loops, step, winter.AirC[0], forcing.Assumptions);
        Tally = new TallyBlock<T>(houses);
    }
}
