using DesignSearch.Physics;
using DesignSearch.Season.Flows;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.House;

/// <summary>What is done once an hour, not in every step: its weather folded in, its books.</summary>
internal partial struct HouseBlock<T>
{
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
