using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Walls;

/// <summary>Base walls of some houses: two masses, implicit with the air. Equations in docs/model.md, "House".</summary>
/// <remarks>Only lanes as fields, so that every one stays aligned.</remarks>
internal struct BaseWallBlock<T> : ISourceBlock<BaseWallBlock<T>, T>
    where T : unmanaged, ILane<T>
{
    private readonly BaseWallTerms<T> terms;
    private readonly T inverseOpen, inverseBuried, toAir;

    // The two masses [°C]; what they would be without the house; sums over the steps of the hour.
    private T open, buried, openRest, buriedRest, outsideW, groundW, sumInside, sumOutside, sumGround;

    private BaseWallBlock(in BaseWallTerms<T> terms)
    {
        this.terms = terms;
        inverseOpen = T.Of(1) / (terms.OpenStore + terms.OpenInside + terms.OpenOutside);
        inverseBuried = T.Of(1) / (terms.BuriedStore + terms.BuriedInside + terms.BuriedGround);
        toAir = terms.OpenInside - terms.OpenInside * terms.OpenInside * inverseOpen
            + (terms.BuriedInside - terms.BuriedInside * terms.BuriedInside * inverseBuried);
        (open, buried) = (terms.OpenStartC, terms.BuriedStartC);
    }

    public static BaseWallBlock<T> Make(in SourceStart start, int first)
    {
        Span<BaseWallTerms<double>> lanes = stackalloc BaseWallTerms<double>[Pack.Widest];
        var groundC = start.Forcing.Hours[0].GroundC;
        for (var i = 0; i < T.Width; i++)
            lanes[i] = start.Find<BaseWallNumbers>(first + i)?.ToTerms(start.StepSeconds, start.FirstAirC, groundC) ?? new() { OpenStore = 1, BuriedStore = 1 };
        return new(Lift.Of<BaseWallTerms<double>, BaseWallTerms<T>, T>(lanes));
    }

    public readonly void Begin()
    {
        // What it holds stands in its temperatures.
    }

    public void Hour(in HourForcing f)
    {
        (outsideW, groundW) = (terms.OpenOutside * T.Of(f.OutsideC), terms.BuriedGround * T.Of(f.GroundC));
        sumInside = sumOutside = sumGround = T.Of(0);
    }

    public readonly void Prepare(ref HouseBlock<T> house)
    {
        // It holds to the air alone.
    }

    public void Offer(ref HouseBlock<T> house, Span<Offer<T>> offers)
    {
        openRest = (terms.OpenStore * open + outsideW) * inverseOpen;
        buriedRest = (terms.BuriedStore * buried + groundW) * inverseBuried;
        house.Add(toAir, terms.OpenInside * openRest + terms.BuriedInside * buriedRest);
    }

    public void Settle(in HouseBlock<T> house, ReadOnlySpan<Offer<T>> offers)
    {
        open = openRest + terms.OpenInside * inverseOpen * house.Air;
        buried = buriedRest + terms.BuriedInside * inverseBuried * house.Air;
        sumInside += terms.OpenInside * (open - house.Air) + terms.BuriedInside * (buried - house.Air);
        sumOutside += terms.OpenOutside * open - outsideW;
        sumGround += terms.BuriedGround * buried - groundW;
    }

    public readonly void Book(ref FlowBook<T> book)
    {
        book.Heat(WallFlows.Inside, sumInside);
        book.Heat(WallFlows.Outside, sumOutside);
        book.HeatBothWays(WallFlows.Ground, sumGround);
    }

    public readonly void Stored(ref LaneWriter<Store, T> stores) => stores.Put(WallFlows.Base, terms.OpenStore * open + terms.BuriedStore * buried);

    public readonly void Tell(ref LaneWriter<Figure, T> figures)
    {
        // What it does stands in the books.
    }

    public readonly void Row(ref LaneWriter<HourColumn, T> columns, double steps) => columns.Put(WallFlows.BaseW, sumInside / T.Of(steps));

    public readonly T PlantsMean(in T house, double steps) => house;

    public readonly T PlantsLowest(in T house) => house;
}
