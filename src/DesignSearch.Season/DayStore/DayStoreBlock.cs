using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Sources;
using N = DesignSearch.Season.DayStore.DayStoreNumbers;

namespace DesignSearch.Season.DayStore;

/// <summary>
/// Day-heat stores of some layouts: implicit to the air, explicit to the soil, for a ring is slow. Equations in docs/model.md, "Day-heat
/// store".
/// </summary>
/// <remarks>Only lanes as fields, so that every one stays aligned.</remarks>
internal struct DayStoreBlock<T> : ISourceBlock<DayStoreBlock<T>, T>
    where T : unmanaged, ILane<T>
{
    private const double FadeK = 1;

    private readonly T air, store, ringSoil, share1, share2, share3, fan, chargeAbove, set;
    private readonly T start, latent, kept, vapour, filmMost, stepSeconds;

    // Soil at the pipes' face [°C], heat of the water on their walls over the step [W].
    private T ring, film;
    private T power, toSoil, chargeAll, chargePart, back, fanDown, fanBack;

    // Sums over the steps of the hour [W]; share of the time that the fan ran.
    private T sumCharge, sumReturn, sumCondensed, sumEvaporated, sumSoil, sumFan, sumShare;

    // Over the season, in steps.
    private T charged, returned, blown, ran;

    public DayStoreBlock(ReadOnlySpan<N> stores, double step, double soil1C, double soil2C, double soil3C, SeasonAssumptions assumptions)
    {
        air = Pack.Of<T, N>(stores, x => x.AirWPerK);
        store = Pack.Of<T, N>(stores, x => x.RingStoreJPerK / step);
        ringSoil = Pack.Of<T, N>(stores, x => x.RingSoilWPerK);
        share1 = Pack.Of<T, N>(stores, x => x.Share1);
        share2 = Pack.Of<T, N>(stores, x => x.Share2);
        share3 = Pack.Of<T, N>(stores, x => x.Share3);
        fan = Pack.Of<T, N>(stores, x => x.FanW);
        chargeAbove = Pack.Of<T, N>(stores, x => x.ChargeAboveC);
        set = Pack.Of<T, N>(stores, x => x.SetPointC);
        filmMost = Pack.Of<T, N>(stores, x => x.FilmMostJ / step);
        start = T.Of(assumptions[DayStoreAssumptions.StartK]);
        latent = T.Of(assumptions[DayStoreAssumptions.LatentShare]);
        kept = T.Of(assumptions[DayStoreAssumptions.WaterKept]);
        vapour = T.Of(assumptions[DayStoreAssumptions.VapourOfSun]);
        stepSeconds = T.Of(step);
        ring = share1 * T.Of(soil1C) + share2 * T.Of(soil2C) + share3 * T.Of(soil3C);
        Begin();
    }

    public static DayStoreBlock<T> Make(in SourceStart start, int first)
    {
        var stores = new N[T.Width];
        for (var i = 0; i < stores.Length; i++)
            stores[i] = start.Find<N>(first + i) ?? N.None;
        var forcing = start.Forcing;
        double Soil(int layer) => HouseTerms.SoilStartC(forcing, layer);
        return new(stores, start.StepSeconds, Soil(1), Soil(2), Soil(3), forcing.Assumptions);
    }

    public void Begin() => charged = returned = blown = ran = T.Of(0);

    public void Hour(in HourForcing f)
    {
        power = T.Of(f.Power);
        sumCharge = sumReturn = sumCondensed = sumEvaporated = sumSoil = sumFan = sumShare = T.Of(0);
    }

    /// <summary>What the ring gives to the layers of soil in this step, by the temperatures of its beginning.</summary>
    public void Prepare(ref HouseBlock<T> house)
    {
        toSoil = ringSoil * (ring - (share1 * house.Soil1 + share2 * house.Soil2 + share3 * house.Soil3));
        var none = T.Of(0);
        house.Doors.Soil1.Add(none, share1 * toSoil);
        house.Doors.Soil2.Add(none, share2 * toSoil);
        house.Doors.Soil3.Add(none, share3 * toSoil);
    }

    /// <summary>
    /// Carries down what would warm the air beyond the upper set point, before the vents let it out; offers what it can bring back at the
    /// lower one. Air against soil, with the air of the beginning of the step, tells that the fan may run; the set points, whether it must.
    /// </summary>
    public void Offer(ref HouseBlock<T> house, Span<Offer<T>> offers)
    {
        var (one, zero, before) = (T.Of(1), T.Of(0), house.Air);

        // Down: what the fan heats itself counts against it.
        var down = air * power * T.Min(T.Max((T.Max(chargeAbove, before) - ring - start) * T.Of(1 / FadeK), zero), one);
        var downFan = T.IfGreater(down, zero, fan * power, zero);
        var surplus = zero - house.Need(chargeAbove);
        var cooling = T.Max(down * (chargeAbove - ring) - downFan, zero);
        var duty = T.IfGreater(cooling, zero, T.Min(T.Max(surplus, zero) / T.Max(cooling, T.Of(1e-9)), one), zero);
        chargeAll = T.IfGreater(surplus, cooling, T.IfGreater(cooling, zero, down, zero), zero);
        chargePart = T.IfGreater(chargeAll, zero, zero, duty * down * (chargeAbove - ring));
        fanDown = duty * downFan;
        house.Add(chargeAll, chargeAll * ring - chargePart + fanDown);
        sumShare += duty;

        // Back: soil that is colder than the set point still helps a colder house.
        back = air * power * T.Min(T.Max((ring - T.Min(set, before) - start) * T.Of(1 / FadeK), zero), one);
        fanBack = T.IfGreater(back, zero, fan * power, zero);
        ref var offer = ref offers[0];
        (offer.SetC, offer.Source, offer.Conductance) = (set, back * ring + fanBack, back);
    }

    /// <summary>Soil and water film at the end of the step.</summary>
    public void Settle(in HouseBlock<T> house, ReadOnlySpan<Offer<T>> offers)
    {
        var (one, zero) = (T.Of(1), T.Of(0));
        var (offer, now) = (offers[0], ring);
        // In full, or for a part of the step in which air is at the set point.
        var duty = T.IfGreater(offer.TakenConductance, zero, one, offer.Duty);
        var blowing = fanDown + duty * fanBack;
        var charge = chargeAll * (house.Air - now) + chargePart;
        var brought = offer.Given(house.Air) - duty * fanBack;
        var condensed = T.Min(latent * charge, vapour * house.Sun);
        var evaporated = T.Min(latent * brought, film);
        film = T.Min(film + kept * condensed - evaporated, filmMost);
        ring = now + (charge + condensed - brought - evaporated - toSoil) / store;
        sumCharge += charge;
        sumReturn += brought;
        sumCondensed += condensed;
        sumEvaporated += evaporated;
        sumSoil += toSoil;
        sumFan += blowing;
        sumShare += duty;
    }

    public void Book(ref FlowBook<T> book)
    {
        book.Heat(DayStoreFlows.Charge, sumCharge);
        book.Heat(DayStoreFlows.Return, sumReturn);
        book.Heat(DayStoreFlows.Soil, sumSoil);
        book.Heat(DayStoreFlows.Condensed, sumCondensed);
        book.Heat(DayStoreFlows.Evaporated, sumEvaporated);
        book.Heat(DayStoreFlows.FanHeat, sumFan);
        book.Electricity(DayStoreFlows.Fan, sumFan);
        charged += sumCharge;
        returned += sumReturn;
        blown += sumFan;
        ran += sumShare;
    }

    public readonly void Stored(ref LaneWriter<Store, T> stores) => stores.Put(DayStoreFlows.Ring, store * ring);

    public readonly void Tell(ref LaneWriter<Figure, T> figures)
    {
        figures.Put(DayStoreFlows.Cop, returned / blown);
        figures.Put(DayStoreFlows.GroundShare, T.Max(T.Of(1) - charged / returned, T.Of(0)));
        figures.Put(DayStoreFlows.Hours, ran * stepSeconds / T.Of(3600));
    }

    public readonly void Row(ref LaneWriter<HourColumn, T> columns, double steps)
    {
        columns.Put(DayStoreFlows.RingC, ring);
        columns.Put(DayStoreFlows.ReturnW, (sumReturn - sumCharge) / T.Of(steps));
    }

    public readonly T PlantsMean(in T house, double steps) => house;

    public readonly T PlantsLowest(in T house) => house;
}
