using System.Runtime.CompilerServices;
using DesignSearch.Physics;
using DesignSearch.Season.Controls;
using DesignSearch.Season.Flows;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.House;

/// <summary>Air, cover, floor, soil, barrels and back wall of some houses: one implicit step, air eliminated last. Equations in docs/model.md, "House".</summary>
/// <remarks>Only lanes as fields, so that every one stays aligned.</remarks>
internal struct HouseBlock<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Offers of the house itself: release and heater.</summary>
    public const int OwnOffers = 2;

    // What a house in winter radiates from, for the linear part of what passes its cover [°C].
    private const double CoolHouseC = 5;

    // Below it convection is taken as it is there [K].
    private const double LeastDifferenceK = 0.001;

    public T Air, Cover, Inner, Floor, Soil1, Soil2, Soil3, WallMass;

    /// <summary>What the step released [W], and the share of it that the release ran.</summary>
    public T ReleaseW, ReleaseShare;

    /// <summary>Sums over the steps of the hour: temperatures at the ends of the steps, two flows.</summary>
    public T SumAir, SumCover, SumInner, SumFloor, SumSoil3, SumMass, SumSky, SumVent, SumRelease, SumHeater, SumShare, LowestAir;

    /// <summary>This hour's conductances [W/K] and sources [W].</summary>
    public T Outer, Leak, Sun;

    /// <summary>The heater, whose set point a clock may move.</summary>
    public HeaterControl<T> Heater;

    private readonly HouseTerms<T> terms;
    private VentControl<T> vents;
    private ReleaseControl<T> release;
    private ContentsBlock<T> contents;
    private BarrelsBlock<T> barrels;

    // What each node keeps of the others once it is eliminated; only open doors change it through a winter.
    private T inverse1, inverse2, inverse3, inverseMass, massPivot, floorPivot, toSoil1, toSoil2, toSoil3, toMass;

    // What the rows of cover, inner surface and air hold in every step of the hour; conductances that doors open join the first two.
    private T coverHold, innerHold, airHold, floorHold;

    // Cube root of the difference of air and inner surface.
    private T root;

    private T outside, skyC, skyK, skyK2, link, floorCover, floorOut, airOut, innerOut, outC, contentsIn, airIn, innerIn, floorIn, deepIn, barrelIn, wallIn, massIn, outerIn;
    private T innerNow, outerNow, floorNow, soil1Now, soil2Now, soil3Now, barrelNow, massNow;
    private T innerAirNow, airNow, contentsToAir, floorAirNow, floorPivotNow, floorSource, innerWallShare, floorFromWall, floorFromInner, heaterWeight, releaseWeight, radiantW;
    private T skyG, inverseC, restC, inverseI, restI, innerFloorNow, fromFloor, fromAir, inverseV, restV, wallFloorG, wallAirG, inverseF, restF, floorAirG;
    private T rest1, rest2, rest3, restMass, pivot, rest;

    /// <summary>What goes to the nodes from elsewhere in this step; see <see cref="CloseDoors"/>.</summary>
    public HouseDoors<T> Doors;

    /// <summary>The barrels [°C].</summary>
    public readonly T Barrels => barrels.Now;

    /// <summary>Houses at the beginning of a winter.</summary>
    /// <param name="houses">One a lane.</param>
    /// <param name="step">Step [s].</param>
    /// <param name="airC">Everything above the soil [°C].</param>
    /// <param name="soil1C">The first layer of soil [°C].</param>
    /// <param name="soil2C">The second.</param>
    /// <param name="soil3C">The third.</param>
    public HouseBlock(ReadOnlySpan<HouseTerms<double>> houses, double step, double airC, double soil1C, double soil2C, double soil3C)
    {
        Span<HouseTerms<double>> lanes = stackalloc HouseTerms<double>[Pack.Widest];
        for (var i = 0; i < T.Width; i++)
            lanes[i] = HouseTerms.Over(houses[i], step);
        terms = Lift.Of<HouseTerms<double>, HouseTerms<T>, T>(lanes);
        vents = new(terms.Vent, terms.VentAboveC);
        release = new(terms);
        Heater = new(terms.HeaterW, terms.HeaterSetC);
        Air = Cover = Inner = Floor = WallMass = T.Of(airC);
        contents = new(terms, Air);
        barrels = new(terms, Air);
        root = T.Of(1);
        (Soil1, Soil2, Soil3) = (T.Of(soil1C), T.Of(soil2C), T.Of(soil3C));
        FindPivots();
    }

    /// <summary>Heat in all stores, divided by the step, against 0 °C [W].</summary>
    public readonly T Stored => terms.AirStore * Air
        + terms.CoverStore * Cover
        + terms.FloorStore * Floor
        + terms.Soil1Store * Soil1
        + terms.Soil2Store * Soil2
        + terms.Soil3Store * Soil3
        + barrels.Stored
        + contents.Stored
        + terms.WallStore * WallMass;

    /// <summary>Folds one hour's weather into conductances and sources, and empties the hour's sums.</summary>
    public void Hour(in HourForcing f)
    {
        var (te, wind, sun) = (T.Of(f.OutsideC), T.Of(f.RoofWindMPerS), T.Of(f.SunW));
        var (aroundC, seen) = (T.Of(f.OutsideC - f.AroundBelowK), terms.SkyView);
        var around = f.OutsideC - f.AroundBelowK + Temperature.ZeroCelsiusK;
        outside = te;
        vents.Hour(te);
        (skyC, skyK) = (T.Of(f.SkyC), T.Of(f.SkyC + Temperature.ZeroCelsiusK));
        skyK2 = skyK * skyK;
        var closed = T.Max(terms.CoverByHand * T.Of(f.Dark), T.Max(terms.CoverBySensor * T.Of(f.Dim), terms.CoverByClock * T.Of(f.Clock)));
        link = terms.LinkOpen + closed * (terms.LinkClosed - terms.LinkOpen);
        // Without mains neither heater nor the pump and fan of the release run; vents open by wax, a night cover stays as it is.
        Heater.Hour(f.Power);
        release.Hour(f.Power);
        Leak = (terms.LeakM3PerS + terms.LeakM3PerSPerWind * wind) * T.Of(f.AirJPerM3K);
        var (toAir, toAround) = (terms.OuterStill + terms.OuterPerWind * wind, terms.AroundWPerK4 * T.Of(around * around * around));
        Outer = toAir + toAround;
        // What passes the cover as radiation goes to sky and surroundings by their shares, linear about the mean of a cool house and those.
        outC = aroundC + seen * (skyC - aroundC);
        var middle = (outC + T.Of(CoolHouseC)) * T.Of(0.5) + T.Of(Temperature.ZeroCelsiusK);
        var passes = T.Of(1) - terms.CoverBlocks * closed;
        var each = passes * (middle * middle * middle);
        (floorCover, floorOut, airOut, innerOut) = (terms.FloorCover * passes, terms.FloorOutWPerK4 * each, terms.AirOutWPerK4 * each, terms.InnerOutWPerK4 * each);
        Sun = (terms.SunAir + terms.SunContents + terms.SunFloor + terms.SunBarrels + terms.SunWall) * sun;
        contentsIn = terms.SunContents * sun;
        airIn = Leak * te + airOut * outC + terms.SunAir * sun;
        innerIn = innerOut * outC;
        floorIn = terms.Edge * te + floorOut * outC + terms.SunFloor * sun;
        deepIn = terms.SoilDeep * T.Of(f.GroundC);
        barrelIn = terms.SunBarrels * sun;
        wallIn = terms.SunWall * sun;
        massIn = terms.MassOutside * te;
        outerIn = toAir * te + toAround * aroundC;
        airHold = terms.AirStore + terms.WallAir + terms.BarrelAir + contents.AirHold + Leak + airOut;
        floorHold = floorCover + floorOut;
        HoldCover();
        soil1Now = soil2Now = T.Of(0);
        (innerNow, outerNow, floorNow, soil3Now, barrelNow, massNow) = (innerIn, outerIn, floorIn, deepIn, barrelIn, massIn);
        SumAir = SumCover = SumInner = SumFloor = SumSoil3 = SumMass = SumSky = SumVent = SumRelease = SumHeater = SumShare = T.Of(0);
    }

    /// <summary>Shuts every door: the first thing in a step that has any. Sources then open theirs, and <see cref="TakeDoors"/> comes before <see cref="Eliminate"/>.</summary>
    /// <param name="use">What the sources do with them.</param>
    public void CloseDoors(DoorUse use)
    {
        innerNow = innerIn;
        if (use > DoorUse.InnerSource)
            Doors = default;
    }

    /// <summary>Gives heat to the inner surface of the cover in this step: the short way for those who need no other door.</summary>
    /// <param name="watts">Heat that does not hang on its temperature at the end of the step [W].</param>
    public void GiveToInner(T watts) => innerNow += watts;

    /// <summary>Folds what goes through the doors into the step.</summary>
    /// <param name="use">What the sources do with them; conductances make every pivot anew.</param>
    public void TakeDoors(DoorUse use)
    {
        innerNow += Doors.Inner.Source;
        outerNow = outerIn + Doors.Cover.Source;
        floorNow = floorIn + Doors.Floor.Source;
        soil1Now = Doors.Soil1.Source;
        soil2Now = Doors.Soil2.Source;
        soil3Now = deepIn + Doors.Soil3.Source;
        barrelNow = barrelIn + Doors.Barrels.Source;
        massNow = massIn + Doors.WallMass.Source;
        if (use == DoorUse.Conductances)
            FindPivots();
    }

    /// <summary>Eliminates cover, wall, soil and barrels: what is left are the rows of floor and air.</summary>
    public void Eliminate()
    {
        var (one, zero) = (T.Of(1), T.Of(0));

        // Long-wave as the exact secant at the old cover: no power function, and the balance closes.
        var cover = Cover;
        var coverK = cover + T.Of(Temperature.ZeroCelsiusK);
        var sky = terms.SkyWPerK4 * (coverK * coverK + skyK2) * (coverK + skyK);

        // Natural convection by the difference at the end of the last step: one step of Halley's for its cube root, which never overshoots.
        var difference = T.Max(T.Max(Air - Inner, Inner - Air), T.Of(LeastDifferenceK));
        var cube = root * root * root;
        root = root * (cube + difference + difference) / (cube + cube + difference);
        var innerAir = terms.InnerAir + terms.InnerAirPerRoot * root;
        contents.Eliminate(contentsIn, out var contentsToInner, out contentsToAir);

        // Vapour travels only from a warmer floor to a colder cover; it sets in over 2 K.
        var floorToInner = terms.InnerFloor + terms.Latent * T.Min(T.Max((Floor - Inner) * T.Of(0.5), zero), one);

        var throughCover = one / (coverHold + sky);
        var coverRest = terms.CoverStore * cover + outerNow + sky * skyC;
        var inner = link * throughCover;
        var floorToCover = floorCover * throughCover;
        floorPivotNow = floorHold + floorToInner - floorCover * floorToCover;
        floorSource = floorToCover * coverRest;
        var innerFloor = floorToInner;
        floorToInner += link * floorToCover;
        var coupled = innerAir + contents.InnerAir;
        var throughInner = one / (innerHold + innerAir + innerFloor - link * inner);
        var innerRest = inner * coverRest + innerNow + contentsToInner;
        var (floorShare, airShare, wallShare) = (floorToInner * throughInner, coupled * throughInner, terms.InnerWall * throughInner);
        (innerAirNow, airNow, innerWallShare) = (coupled, innerAir, wallShare);

        // Air lies still on a colder floor and rises from a warmer one; what lies between sets in over 2 K.
        floorAirNow = terms.FloorAir + terms.FloorAirSwing * T.Min(T.Max(Floor - Air, T.Of(-1)), one);

        var mass = (terms.WallStore * WallMass + massNow) * inverseMass;
        inverseV = one / (massPivot - terms.InnerWall * wallShare);
        restV = wallIn + terms.WallMass * mass + wallShare * innerRest;
        wallFloorG = terms.FloorWall + terms.InnerWall * floorShare;
        wallAirG = terms.WallAir + terms.InnerWall * airShare;
        (skyG, inverseC, restC, inverseI, restI) = (sky, throughCover, coverRest, throughInner, innerRest);
        (innerFloorNow, fromFloor, fromAir, restMass) = (floorToInner, floorShare, airShare, mass);
    }

    /// <summary>Goes on to the row of the air alone.</summary>
    /// <param name="tankLossW">Heat the tank gives to the air [W].</param>
    public void Reduce(in T tankLossW)
    {
        var soil3 = (terms.Soil3Store * Soil3 + soil3Now) * inverse3;
        var soil2 = (terms.Soil2Store * Soil2 + terms.Soil23 * soil3 + soil2Now) * inverse2;
        var soil1 = (terms.Soil1Store * Soil1 + terms.Soil12 * soil2 + soil1Now) * inverse1;
        barrels.Eliminate(barrelNow);

        var (floorToInner, floorFirst, airFirst, inner) = (innerFloorNow, fromFloor, fromAir, restI);
        var (throughWall, wallFloor, wallToAir, wall) = (inverseV, wallFloorG, wallAirG, restV);
        var wallShare = wallFloor * throughWall;
        var throughFloor = T.Of(1) / (floorPivot + floorAirNow + floorPivotNow - floorToInner * floorFirst - wallFloor * wallShare);
        var floor = terms.FloorStore * Floor + floorNow + floorSource + terms.FloorSoil * soil1 + floorFirst * inner + wallShare * wall;
        var floorToAir = floorAirNow + floorToInner * airFirst + wallToAir * wallShare;
        var floorShare = floorToAir * throughFloor;
        var wallAirShare = wallToAir * throughWall;
        pivot = airHold + airNow + floorAirNow - barrels.FromAir - innerAirNow * airFirst - wallToAir * wallAirShare - floorToAir * floorShare;
        rest = terms.AirStore * Air + airIn + contentsToAir + tankLossW + barrels.ToAirW + airFirst * inner + wallAirShare * wall + floorShare * floor;
        (rest1, rest2, rest3) = (soil1, soil2, soil3);
        (inverseF, restF, floorAirG, floorFromWall) = (throughFloor, floor, floorToAir, wallShare);

        // What of a watt that is radiated, half to the inner surface, half to the floor, the row of the air sees.
        floorFromInner = floorFirst + wallShare * innerWallShare;
        var innerWeight = airFirst + wallAirShare * innerWallShare + floorShare * floorFromInner;
        var unseen = T.Of(1) - T.Of(0.5) * (innerWeight + floorShare);
        (heaterWeight, releaseWeight) = (T.Of(1) - terms.HeaterRadiates * unseen, T.Of(1) - terms.ReleaseRadiates * unseen);
    }

    /// <summary>A door to the air, once every other node is eliminated and before <see cref="Decide"/>.</summary>
    /// <param name="conductance">What hangs on the air's temperature [W/K].</param>
    /// <param name="source">What does not [W].</param>
    public void Add(T conductance, T source)
    {
        pivot += conductance;
        rest += source;
    }

    /// <summary>
    /// Heat that would hold the air at a temperature, by all that has joined it so far and with the vents shut; below 0 what would have to
    /// be taken from it [W].
    /// </summary>
    /// <param name="setC">The temperature [°C].</param>
    public readonly T Need(in T setC) => setC * pivot - rest;

    /// <summary>Vents, then every offer of heat in closed form: the air at the end of the step.</summary>
    /// <param name="tankTopC">Top layer of the tank half-way through the step [°C].</param>
    /// <param name="offers">Those of the sources, and room for <see cref="OwnOffers"/> at the end.</param>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void Decide(in T tankTopC, Span<Offer<T>> offers)
    {
        var top = tankTopC;
        var vent = vents.Conductance(pivot, rest);
        var p = pivot + vent;
        var r = rest + vent * outside;
        var enabled = release.Enabled(top, Air);
        var conductance = release.Conductance(enabled);
        var source = release.Source(top, enabled, conductance);
        (source, conductance) = (source * releaseWeight, conductance * releaseWeight);
        if (offers.Length > OwnOffers)
        {
            DecideAmong(offers, p, r, vent, enabled, source, conductance);
            return;
        }

        OfferDecision.Decide(
            p, r, release.SetC, source, conductance, Heater.SetC, Heater.NowW * heaterWeight,
            out var need, out var atSet, out var taken, out var takenConductance, out var heat);
        var air = (r + taken + heat) / (p + takenConductance);
        End(air, vent, heat, enabled * Offer<T>.DutyOf(need, atSet), taken - takenConductance * air);
    }

    /// <summary>Every other temperature, backwards from the air.</summary>
    public void Settle()
    {
        var air = Air;
        // The radiated heat goes to inner surface and floor, and from there through the same elimination.
        var half = radiantW * T.Of(0.5);
        restI += half;
        restV += innerWallShare * half;
        restF += half + floorFromInner * half;
        var floor = (restF + floorAirG * air) * inverseF;
        var wall = (restV + wallFloorG * floor + wallAirG * air) * inverseV;
        var inner = (restI + innerFloorNow * floor + innerAirNow * air + terms.InnerWall * wall) * inverseI;
        var cover = (restC + link * inner + floorCover * floor) * inverseC;
        var soil1 = rest1 + toSoil1 * floor;
        var soil2 = rest2 + toSoil2 * soil1;
        var soil3 = rest3 + toSoil3 * soil2;
        var mass = restMass + toMass * wall;
        barrels.Settle(air);
        contents.Settle(inner, air);
        (Floor, Inner, Cover, Soil1, Soil2, Soil3, WallMass) = (floor, inner, cover, soil1, soil2, soil3, mass);
        SumSky += skyG * (cover - skyC);
        SumCover += cover;
        SumInner += inner;
        SumFloor += floor;
        SumSoil3 += soil3;
        SumMass += mass;
    }

    /// <summary>What cover and leaking air gave to the outside in the steps of this hour [W times steps].</summary>
    public readonly T Given(double outsideC, double steps) =>
        Outer * SumCover - outerIn * T.Of(steps) + ToSky(steps) + Leak * (SumAir - T.Of(outsideC * steps));

    /// <summary>What went to the sky, and past the cover to whatever lies outside, in the steps of this hour [W times steps].</summary>
    public readonly T ToSky(double steps) =>
        SumSky + floorOut * SumFloor + airOut * SumAir + innerOut * SumInner - (floorOut + airOut + innerOut) * outC * T.Of(steps);

    /// <summary>Books the hour with its own conductances.</summary>
    public readonly void Book(ref FlowBook<T> book, in HourForcing f, double steps)
    {
        var n = T.Of(steps);
        var te = T.Of(f.OutsideC) * n;
        book.Heat(HouseFlows.Sun, Sun * n);
        book.Heat(HeaterFlows.Heat, SumHeater);
        var fan = release.FanW(SumShare);
        book.Heat(SolarFlows.ReleaseFan, fan);
        book.Heat(SolarFlows.Release, SumRelease);
        book.Heat(HouseFlows.CoverToAir, Outer * SumCover - outerIn * n);
        book.Heat(HouseFlows.CoverToSky, ToSky(steps));
        book.Heat(HouseFlows.Leakage, Leak * (SumAir - te));
        book.Heat(HouseFlows.Vents, SumVent);
        book.HeatBothWays(HouseFlows.Ground, terms.SoilDeep * (SumSoil3 - T.Of(f.GroundC) * n) + terms.Edge * (SumFloor - te));
        book.Heat(HouseFlows.Wall, terms.MassOutside * (SumMass - te));
        book.Electricity(HeaterFlows.Heater, SumHeater);
        book.Electricity(SolarFlows.ReleaseUse, fan);
    }

    // Apart, so that nothing of the usual way has to lie in memory.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void DecideAmong(Span<Offer<T>> offers, T p, T r, T vent, T enabled, T source, T conductance)
    {
        ref var fromTank = ref offers[^2];
        ref var fromHeater = ref offers[^1];
        (fromTank.SetC, fromTank.Source, fromTank.Conductance) = (release.SetC, source, conductance);
        (fromHeater.SetC, fromHeater.Source, fromHeater.Conductance) = (Heater.SetC, Heater.NowW * heaterWeight, T.Of(0));
        OfferDecision.Decide(ref p, ref r, offers);
        var air = r / p;
        End(air, vent, fromHeater.Taken, enabled * fromTank.Duty, fromTank.Given(air));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void End(T air, T vent, T heatInAir, T share, T fromTankInAir)
    {
        var (heat, fromTank) = (heatInAir / heaterWeight, fromTankInAir / releaseWeight);
        radiantW = terms.HeaterRadiates * heat + terms.ReleaseRadiates * fromTank;
        var fan = release.FanW(share);
        var released = fromTank - fan;
        (Air, ReleaseW, ReleaseShare) = (air, released, share);
        SumVent += vent * (air - outside);
        SumAir += air;
        SumRelease += released;
        SumHeater += heat;
        SumShare += share;
        LowestAir = T.Min(LowestAir, air);
    }

    private void HoldCover()
    {
        coverHold = terms.CoverStore + Outer + link + floorCover + Doors.Cover.Conductance;
        innerHold = contents.InnerHold + terms.InnerWall + link + innerOut + Doors.Inner.Conductance;
    }

    // Soil and wall mass from the bottom up; the cover's own part is that of the hour.
    private void FindPivots()
    {
        var one = T.Of(1);
        var (soil12, soil23, floorSoil, wallMass) = (terms.Soil12, terms.Soil23, terms.FloorSoil, terms.WallMass);
        inverse3 = one / (terms.Soil3Store + soil23 + terms.SoilDeep + Doors.Soil3.Conductance);
        inverse2 = one / (terms.Soil2Store + soil12 + soil23 - soil23 * soil23 * inverse3 + Doors.Soil2.Conductance);
        inverse1 = one / (terms.Soil1Store + floorSoil + soil12 - soil12 * soil12 * inverse2 + Doors.Soil1.Conductance);
        barrels.Couple(Doors.Barrels.Conductance);
        inverseMass = one / (terms.WallStore + wallMass + terms.MassOutside + terms.MassRoom + Doors.WallMass.Conductance);
        floorPivot = terms.FloorStore + floorSoil - floorSoil * floorSoil * inverse1 + terms.FloorWall + terms.Edge + Doors.Floor.Conductance;
        massPivot = wallMass - wallMass * wallMass * inverseMass + terms.WallAir + terms.FloorWall + terms.InnerWall;
        HoldCover();
        (toSoil1, toSoil2, toSoil3) = (floorSoil * inverse1, soil12 * inverse2, soil23 * inverse3);
        toMass = wallMass * inverseMass;
    }
}
