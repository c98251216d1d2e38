namespace DesignSearch.Season;

/// <summary>Sums of one counted season; energies in joules until the end.</summary>
internal struct Tally
{
    private double sunHouse, sunCollector, heater, auxiliary, toAir, toSky, leakage, vents, ground, groundGift, collectorLoss, pipeLoss;
    private double yield, released, pumpS, releaseS, electricity, tankSum;
    private double frostKh, lowest, lowestWithin, tankLowest, tankHighest;
    private int frostHours, coldestHour, hours, steps;

    public static Tally Start() => new()
    {
        lowest = double.PositiveInfinity,
        lowestWithin = double.PositiveInfinity,
        tankLowest = double.PositiveInfinity,
        tankHighest = double.NegativeInfinity,
    };

    public void Step(in HouseBlock house, in LoopBlock loop, in HouseHour hour, in LoopHour light, in HouseControls control, double pumpW, double step)
    {
        steps++;
        sunHouse += hour.SunW * step;
        sunCollector += light.AbsorbedW * step;
        heater += house.HeaterW * step;
        auxiliary += (house.ReleaseElectricW + control.PumpElectricW) * step;
        toAir += house.ToAirW * step;
        toSky += house.ToSkyW * step;
        leakage += house.LeakageW * step;
        vents += house.VentW * step;
        ground += house.GroundW * step;
        groundGift += Math.Max(-house.GroundW, 0) * step;
        collectorLoss += loop.CollectorLossW * step;
        pipeLoss += loop.PipeLossW * step;
        yield += loop.YieldW * step;
        released += house.ReleaseW * step;
        pumpS += loop.PumpShare * step;
        releaseS += house.ReleaseShare * step;
        electricity += (house.ReleaseElectricW + loop.PumpShare * pumpW) * step;
        lowestWithin = Math.Min(lowestWithin, house.AirC);
        tankSum += loop.MeanC;
        tankLowest = Math.Min(tankLowest, loop.BottomC);
        tankHighest = Math.Max(tankHighest, loop.TopC);
    }

    public void Hour(int hour, double airC, double limitC)
    {
        hours++;
        if (airC < lowest)
            (lowest, coldestHour) = (airC, hour);
        if (IsFrost(airC, limitC))
        {
            frostHours++;
            frostKh += limitC - airC;
        }
    }

    /// <summary>A billionth of a kelvin is allowed for rounding, so that a heater that holds the limit exactly is not called frost.</summary>
    public static bool IsFrost(double airC, double limitC) => airC < limitC - 1e-9;

    public readonly Outcome Close(double storedHouseJ, double storedLoopJ, bool hasTank) => new()
    {
        SeasonHours = hours,
        FrostHours = frostHours,
        FrostDegreeHoursKh = frostKh,
        LowestAirC = lowest,
        LowestWithinHourC = lowestWithin,
        ColdestHour = coldestHour,
        StandbyKwh = heater / 3.6e6,
        CollectorYieldKwh = yield / 3.6e6,
        PumpHours = pumpS / 3600,
        PumpKwh = electricity / 3.6e6,
        ReleasedKwh = released / 3.6e6,
        ReleaseHours = releaseS / 3600,
        TankLowestC = hasTank ? tankLowest : double.NaN,
        TankHighestC = hasTank ? tankHighest : double.NaN,
        TankMeanC = hasTank ? tankSum / steps : double.NaN,
        Ledger = Ledger(storedHouseJ / 3.6e6, storedLoopJ / 3.6e6),
    };

    private readonly EnergyLedger Ledger(double house, double loop)
    {
        const double kwh = 3.6e6;
        var entered = (sunHouse + sunCollector + heater + auxiliary) / kwh;
        var left = (toAir + toSky + leakage + vents + ground + collectorLoss + pipeLoss) / kwh;
        var throughput = entered + groundGift / kwh + Math.Max(-house, 0) + Math.Max(-loop, 0);
        return new EnergyLedger
        {
            SunIntoHouse = sunHouse / kwh,
            SunIntoCollector = sunCollector / kwh,
            Heater = heater / kwh,
            Auxiliary = auxiliary / kwh,
            CoverToAir = toAir / kwh,
            CoverToSky = toSky / kwh,
            Leakage = leakage / kwh,
            Vents = vents / kwh,
            Ground = ground / kwh,
            CollectorLoss = collectorLoss / kwh,
            PipeLoss = pipeLoss / kwh,
            StoredInHouse = house,
            StoredInLoop = loop,
            Throughput = throughput,
            Residual = throughput > 0 ? Math.Abs(entered - left - house - loop) / throughput : 0,
        };
    }
}
