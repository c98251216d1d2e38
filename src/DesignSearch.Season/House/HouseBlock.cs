using DesignSearch.Season.Flows;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;
using C = DesignSearch.Season.House.HouseCoefficients;

namespace DesignSearch.Season.House;

/// <summary>Air, cover, floor, soil, barrels and back wall of some houses: one implicit step, air eliminated last. Equations in docs/model.md, "House".</summary>
/// <remarks>Only lanes as fields, so that every one stays aligned.</remarks>
internal struct HouseBlock<T>
    where T : unmanaged, ILane<T>
{
    public T Air, Cover, Inner, Floor, Soil1, Soil2, Soil3, Barrels, WallMass;

    /// <summary>What the step released [W], and the share of it that the release ran.</summary>
    public T ReleaseW, ReleaseShare;

    /// <summary>Sums over the steps of the hour: temperatures at the ends of the steps, two flows.</summary>
    public T SumAir, SumCover, SumFloor, SumSoil3, SumMass, SumSky, SumVent, SumRelease, SumHeater, SumFan, SumShare, LowestAir;

    /// <summary>This hour's conductances [W/K] and sources [W].</summary>
    public T Outer, Leak, Sun;

    /// <summary>Heat radiated to the inner surface of the cover from elsewhere in this step [W], set before <see cref="Eliminate"/>.</summary>
    public T InnerIn;

    private readonly T airStore, coverStore, floorStore, soil1Store, soil2Store, soil3Store, barrelStore, massStore;
    private readonly T innerAir, innerFloor, latent, innerWall, linkOpen, linkClosed, outerStill, outerPerWind, skyFactor, aroundFactor;
    private readonly T floorAir, floorWall, wallAir, wallMass, massOutside, floorSoil, soil12, soil23, soilDeep, edge, barrelAir;
    private readonly T leakStill, leakPerWind, sunAir, sunFloor, sunBarrels, sunWall, ventMost, ventAbove, release, releaseSet, fadeFrom, fadeSlope, heaterFirst, fan, heaterMost;
    private readonly T inverse1, inverse2, inverse3, inverseBarrel, inverseMass, barrelPivot, massPivot, floorPivot, toSoil1, toSoil2, toSoil3, toBarrels, toMass;

    private T heaterSet, heaterNow, fadeNow, outside, skyC, skyK, skyK2, link, airIn, floorIn, deepIn, barrelIn, wallIn, massIn, outerIn;
    private T skyG, inverseC, restC, inverseI, restI, innerFloorNow, fromFloor, fromAir, inverseV, restV, wallFloorG, wallAirG, inverseF, restF, floorAirG;
    private T rest1, rest2, rest3, restBarrel, restMass, pivot, rest;

    public HouseBlock(ReadOnlySpan<C> c, double step, double airC, double soil1C, double soil2C, double soil3C)
    {
        var perStep = T.Of(1 / step);
        airStore = Pack.Of<T, C>(c, x => x.AirStore) * perStep;
        coverStore = Pack.Of<T, C>(c, x => x.CoverStore) * perStep;
        floorStore = Pack.Of<T, C>(c, x => x.FloorStore) * perStep;
        soil1Store = Pack.Of<T, C>(c, x => x.Soil1Store) * perStep;
        soil2Store = Pack.Of<T, C>(c, x => x.Soil2Store) * perStep;
        soil3Store = Pack.Of<T, C>(c, x => x.Soil3Store) * perStep;
        barrelStore = Pack.Of<T, C>(c, x => x.BarrelStore) * perStep;
        massStore = Pack.Of<T, C>(c, x => x.WallStore) * perStep;
        innerAir = Pack.Of<T, C>(c, x => x.InnerAir);
        innerFloor = Pack.Of<T, C>(c, x => x.InnerFloor);
        latent = Pack.Of<T, C>(c, x => x.Latent);
        innerWall = Pack.Of<T, C>(c, x => x.InnerWall);
        linkOpen = Pack.Of<T, C>(c, x => x.LinkOpen);
        linkClosed = Pack.Of<T, C>(c, x => x.LinkClosed);
        outerStill = Pack.Of<T, C>(c, x => x.OuterStill);
        outerPerWind = Pack.Of<T, C>(c, x => x.OuterPerWind);
        skyFactor = Pack.Of<T, C>(c, x => x.SkyWPerK4);
        aroundFactor = Pack.Of<T, C>(c, x => x.AroundWPerK4);
        floorAir = Pack.Of<T, C>(c, x => x.FloorAir);
        floorWall = Pack.Of<T, C>(c, x => x.FloorWall);
        wallAir = Pack.Of<T, C>(c, x => x.WallAir);
        wallMass = Pack.Of<T, C>(c, x => x.WallMass);
        massOutside = Pack.Of<T, C>(c, x => x.MassOutside);
        floorSoil = Pack.Of<T, C>(c, x => x.FloorSoil);
        soil12 = Pack.Of<T, C>(c, x => x.Soil12);
        soil23 = Pack.Of<T, C>(c, x => x.Soil23);
        soilDeep = Pack.Of<T, C>(c, x => x.SoilDeep);
        edge = Pack.Of<T, C>(c, x => x.Edge);
        barrelAir = Pack.Of<T, C>(c, x => x.BarrelAir);
        leakStill = Pack.Of<T, C>(c, x => x.LeakM3PerS);
        leakPerWind = Pack.Of<T, C>(c, x => x.LeakM3PerSPerWind);
        sunAir = Pack.Of<T, C>(c, x => x.SunAir);
        sunFloor = Pack.Of<T, C>(c, x => x.SunFloor);
        sunBarrels = Pack.Of<T, C>(c, x => x.SunBarrels);
        sunWall = Pack.Of<T, C>(c, x => x.SunWall);
        ventMost = Pack.Of<T, C>(c, x => x.Vent);
        ventAbove = Pack.Of<T, C>(c, x => x.VentAboveC);
        release = Pack.Of<T, C>(c, x => x.Release);
        releaseSet = Pack.Of<T, C>(c, x => x.ReleaseSetC);
        fadeFrom = Pack.Of<T, C>(c, x => x.ReleaseSetC + x.FadeFromK);
        fadeSlope = Pack.Of<T, C>(c, x => 1 / x.FadeOverK);
        heaterFirst = Pack.Of<T, C>(c, x => x.HeaterBeforeW(x.ReleaseSetC));
        fan = Pack.Of<T, C>(c, x => x.FanW);
        heaterMost = Pack.Of<T, C>(c, x => x.HeaterW);
        heaterSet = Pack.Of<T, C>(c, x => x.HeaterSetC);

        // Soil, barrels and wall mass keep their pivots through the winter: from the bottom up.
        var one = T.Of(1);
        inverse3 = one / (soil3Store + soil23 + soilDeep);
        inverse2 = one / (soil2Store + soil12 + soil23 - soil23 * soil23 * inverse3);
        inverse1 = one / (soil1Store + floorSoil + soil12 - soil12 * soil12 * inverse2);
        inverseBarrel = one / (barrelStore + barrelAir);
        inverseMass = one / (massStore + wallMass + massOutside);
        floorPivot = floorStore + floorSoil - floorSoil * floorSoil * inverse1 + floorAir + floorWall + edge;
        barrelPivot = barrelAir - barrelAir * barrelAir * inverseBarrel;
        massPivot = wallMass - wallMass * wallMass * inverseMass + wallAir + floorWall + innerWall;

        (toSoil1, toSoil2, toSoil3) = (floorSoil * inverse1, soil12 * inverse2, soil23 * inverse3);
        (toBarrels, toMass) = (barrelAir * inverseBarrel, wallMass * inverseMass);

        Air = Cover = Inner = Floor = Barrels = WallMass = T.Of(airC);
        (Soil1, Soil2, Soil3) = (T.Of(soil1C), T.Of(soil2C), T.Of(soil3C));
    }

    /// <summary>Heat in all stores, divided by the step, against 0 °C [W].</summary>
    public readonly T Stored => airStore * Air + coverStore * Cover + floorStore * Floor + soil1Store * Soil1 + soil2Store * Soil2 + soil3Store * Soil3 + barrelStore * Barrels + massStore * WallMass;

    /// <summary>Moves the heater's set point, as a clock would [°C].</summary>
    public void SetHeater(in T setC) => heaterSet = setC;

    /// <summary>Folds one hour's weather into conductances and sources, and empties the hour's sums.</summary>
    public void Hour(in HourForcing f)
    {
        var (te, wind, sun) = (T.Of(f.OutsideC), T.Of(f.RoofWindMPerS), T.Of(f.SunW));
        var around = f.OutsideC + 273.15;
        outside = te;
        (skyC, skyK) = (T.Of(f.SkyC), T.Of(f.SkyC + 273.15));
        skyK2 = skyK * skyK;
        link = f.IsNight ? linkClosed : linkOpen;
        // Without mains neither heater nor the pump and fan of the release run; vents open by wax, a night cover stays as it is.
        heaterNow = heaterMost * T.Of(f.Power);
        fadeNow = fadeSlope * T.Of(f.Power);
        Leak = (leakStill + leakPerWind * wind) * T.Of(f.AirJPerM3K);
        Outer = outerStill + outerPerWind * wind + aroundFactor * T.Of(around * around * around);
        Sun = (sunAir + sunFloor + sunBarrels + sunWall) * sun;
        airIn = Leak * te + sunAir * sun;
        floorIn = edge * te + sunFloor * sun;
        deepIn = soilDeep * T.Of(f.GroundC);
        barrelIn = sunBarrels * sun;
        wallIn = sunWall * sun;
        massIn = massOutside * te;
        outerIn = Outer * te;
        SumAir = SumCover = SumFloor = SumSoil3 = SumMass = SumSky = SumVent = SumRelease = SumHeater = SumFan = SumShare = T.Of(0);
    }

    /// <summary>Eliminates cover, wall, soil and barrels: what is left are the rows of floor and air.</summary>
    public void Eliminate()
    {
        var (one, zero) = (T.Of(1), T.Of(0));

        // Long-wave as the exact secant at the old cover: no power function, and the balance closes.
        var cover = Cover;
        var coverK = cover + T.Of(273.15);
        var sky = skyFactor * (coverK * coverK + skyK2) * (coverK + skyK);

        // Vapour travels only from a warmer floor to a colder cover; it sets in over 2 K.
        var floorToInner = innerFloor + latent * T.Min(T.Max((Floor - Inner) * T.Of(0.5), zero), one);

        var throughCover = one / (coverStore + Outer + sky + link);
        var coverRest = coverStore * cover + outerIn + sky * skyC;
        var inner = link * throughCover;
        var throughInner = one / (innerAir + floorToInner + innerWall + link - link * inner);
        var innerRest = inner * coverRest + InnerIn;
        var (floorShare, airShare, wallShare) = (floorToInner * throughInner, innerAir * throughInner, innerWall * throughInner);

        var mass = (massStore * WallMass + massIn) * inverseMass;
        inverseV = one / (massPivot - innerWall * wallShare);
        restV = wallIn + wallMass * mass + wallShare * innerRest;
        wallFloorG = floorWall + innerWall * floorShare;
        wallAirG = wallAir + innerWall * airShare;
        (skyG, inverseC, restC, inverseI, restI) = (sky, throughCover, coverRest, throughInner, innerRest);
        (innerFloorNow, fromFloor, fromAir, restMass) = (floorToInner, floorShare, airShare, mass);
    }

    /// <summary>Goes on to the row of the air alone.</summary>
    /// <param name="tankLossW">Heat the tank gives to the air [W].</param>
    public void Reduce(in T tankLossW)
    {
        var soil3 = (soil3Store * Soil3 + deepIn) * inverse3;
        var soil2 = (soil2Store * Soil2 + soil23 * soil3) * inverse2;
        var soil1 = (soil1Store * Soil1 + soil12 * soil2) * inverse1;
        var barrel = (barrelStore * Barrels + barrelIn) * inverseBarrel;

        var (floorToInner, floorFirst, airFirst, throughWall, wallFloor, wallToAir, inner, wall) = (innerFloorNow, fromFloor, fromAir, inverseV, wallFloorG, wallAirG, restI, restV);
        var wallShare = wallFloor * throughWall;
        var throughFloor = T.Of(1) / (floorPivot + floorToInner - floorToInner * floorFirst - wallFloor * wallShare);
        var floor = floorStore * Floor + floorIn + floorSoil * soil1 + floorFirst * inner + wallShare * wall;
        var floorToAir = floorAir + floorToInner * airFirst + wallToAir * wallShare;
        var floorShare = floorToAir * throughFloor;
        var wallAirShare = wallToAir * throughWall;
        pivot = airStore + innerAir + floorAir + barrelPivot + wallAir + Leak - innerAir * airFirst - wallToAir * wallAirShare - floorToAir * floorShare;
        rest = airStore * Air + airIn + tankLossW + barrelAir * barrel + airFirst * inner + wallAirShare * wall + floorShare * floor;
        (rest1, rest2, rest3, restBarrel) = (soil1, soil2, soil3, barrel);
        (inverseF, restF, floorAirG) = (throughFloor, floor, floorToAir);
    }

    /// <summary>Heat that would hold the air at a temperature at the end of this step, nothing else given [W].</summary>
    public readonly T Need(in T setC) => setC * pivot - rest;

    /// <summary>Another source for this step, before <see cref="Settle"/>.</summary>
    /// <param name="conductance">What hangs on the air's temperature [W/K].</param>
    /// <param name="source">What does not [W].</param>
    public void Add(in T conductance, in T source)
    {
        pivot += conductance;
        rest += source;
    }

    /// <summary>Vent, release and heater in closed form: the air at the end of the step.</summary>
    /// <param name="tankTopC">Top layer of the tank half-way through the step [°C].</param>
    public void Decide(in T tankTopC)
    {
        var (one, zero, top) = (T.Of(1), T.Of(0), tankTopC);
        var (p, r) = (pivot, rest);

        // Vents: as much as brings the air back to their set point, as far as they open; useless while it is warmer outside.
        var vent = T.Min(T.Max((r - ventAbove * p) / T.Max(ventAbove - outside, T.Of(0.1)), zero), ventMost);
        p += vent;
        r += vent * outside;

        // Release: what the set point needs, within what the tank's top can give; it fades in as the tank gets warmer than that.
        // Its fan heats the air as well, so both count against the need.
        var fade = T.Min(T.Max((top - fadeFrom) * fadeNow, zero), one);
        var (strength, fanNow) = (release * fade, fan * fade);
        // A heater that is set higher has come on before.
        var need = releaseSet * p - r - heaterFirst;
        var atSet = strength * (top - releaseSet) + fanNow;
        var full = strength * top + fanNow;
        var duty = T.Min(T.Max(need, zero) / T.Max(atSet, T.Of(1e-9)), one);
        var part = duty * atSet;
        p += T.IfGreater(need, atSet, strength, zero);
        r += T.IfGreater(need, atSet, full, part);
        var heater = T.Min(T.Max(heaterSet * p - r, zero), heaterNow);
        var air = (r + heater) / p;
        var fanW = duty * fanNow;
        var released = T.IfGreater(need, atSet, strength * (top - air), part - fanW);
        var share = duty * fade;
        (Air, ReleaseW, ReleaseShare) = (air, released, share);
        SumVent += vent * (air - outside);
        SumAir += air;
        SumRelease += released;
        SumHeater += heater;
        SumFan += fanW;
        SumShare += share;
        LowestAir = T.Min(LowestAir, air);
    }

    /// <summary>Every other temperature, backwards from the air.</summary>
    public void Settle()
    {
        var air = Air;
        var floor = (restF + floorAirG * air) * inverseF;
        var wall = (restV + wallFloorG * floor + wallAirG * air) * inverseV;
        var inner = (restI + innerFloorNow * floor + innerAir * air + innerWall * wall) * inverseI;
        var cover = (restC + link * inner) * inverseC;
        var soil1 = rest1 + toSoil1 * floor;
        var soil2 = rest2 + toSoil2 * soil1;
        var soil3 = rest3 + toSoil3 * soil2;
        var mass = restMass + toMass * wall;
        Barrels = restBarrel + toBarrels * air;
        (Floor, Inner, Cover, Soil1, Soil2, Soil3, WallMass) = (floor, inner, cover, soil1, soil2, soil3, mass);
        SumSky += skyG * (cover - skyC);
        SumCover += cover;
        SumFloor += floor;
        SumSoil3 += soil3;
        SumMass += mass;
    }

    /// <summary>Books the hour with its own conductances.</summary>
    public readonly void Book(ref FlowBook<T> book, in HourForcing f, double steps)
    {
        var n = T.Of(steps);
        var te = T.Of(f.OutsideC) * n;
        book.Heat(HouseFlows.Sun, Sun * n);
        book.Heat(HeaterFlows.Heat, SumHeater);
        book.Heat(SolarFlows.ReleaseFan, SumFan);
        book.Heat(SolarFlows.Release, SumRelease);
        book.Heat(HouseFlows.CoverToAir, Outer * (SumCover - te));
        book.Heat(HouseFlows.CoverToSky, SumSky);
        book.Heat(HouseFlows.Leakage, Leak * (SumAir - te));
        book.Heat(HouseFlows.Vents, SumVent);
        book.HeatBothWays(HouseFlows.Ground, soilDeep * (SumSoil3 - T.Of(f.GroundC) * n) + edge * (SumFloor - te));
        book.Heat(HouseFlows.Wall, massOutside * (SumMass - te));
        book.Electricity(HeaterFlows.Heater, SumHeater);
        book.Electricity(SolarFlows.ReleaseUse, SumFan);
    }
}
