using System.Runtime.CompilerServices;
using DesignSearch.Physics;
using DesignSearch.Season.Controls;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;

namespace DesignSearch.Season.House;

/// <summary>Air, cover, floor, soil, barrels and back wall of some houses: one implicit step, air eliminated last. Equations in docs/model.md, "House".</summary>
/// <remarks>Only lanes as fields, so that every one stays aligned.</remarks>
internal partial struct HouseBlock<T>
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
}
