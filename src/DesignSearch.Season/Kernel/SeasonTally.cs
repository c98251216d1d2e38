namespace DesignSearch.Season;

/// <summary>Adds up one season as the steps go by.</summary>
internal struct SeasonTally
{
    private const double JoulePerKwh = 3.6e6;

    private double sunHouse, sunCollector, heater, auxiliary, coverAir, coverSky, leakage, vents, ground, groundGift, collectorLoss, pipeLoss, yield, pumpSeconds, pumpJ, released, releaseSeconds;
    private double houseStart, loopStart, tankSum, tankLow, tankHigh, lowestWithin, lowestAir, degreeHours;
    private int frostHours, hours, coldest, steps;

    public void Start(in HouseBlock house, in LoopBlock loop)
    {
        (houseStart, loopStart) = (house.StoredJ, loop.StoredJ);
        (tankLow, lowestWithin, lowestAir) = (double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);
        tankHigh = double.NegativeInfinity;
        coldest = -1;
    }

    public void Step(in HouseBlock house, in LoopBlock loop, double h, double pumpW, double fanW, double releaseShare, double electricW)
    {
        sunHouse += house.SunW * h;
        heater += house.HeaterW * h;
        auxiliary += fanW * h;
        coverAir += house.CoverToAir * h;
        coverSky += house.CoverToSky * h;
        leakage += house.Leakage * h;
        vents += house.Vents * h;
        ground += house.Ground * h;
        groundGift += Math.Max(0, -house.Ground) * h;
        released += house.ReleaseW * h;
        releaseSeconds += releaseShare * h;
        pumpJ += (loop.Pump * pumpW + releaseShare * electricW) * h;
        lowestWithin = Math.Min(lowestWithin, house.Air);
        if (!loop.HasTank)
            return;
        sunCollector += loop.Absorbed * h;
        collectorLoss += loop.CollectorLoss * h;
        pipeLoss += loop.PipeLoss * h;
        yield += loop.ToTank * h;
        pumpSeconds += loop.Pump * h;
        steps++;
        tankSum += loop.TankMeanC;
        tankLow = Math.Min(tankLow, loop.T4);
        tankHigh = Math.Max(tankHigh, loop.T1);
    }

    public void Hour(int hour, double meanC, double limitC)
    {
        hours++;
        if (meanC < limitC)
        {
            frostHours++;
            degreeHours += limitC - meanC;
        }

        if (meanC < lowestAir)
            (lowestAir, coldest) = (meanC, hour);
    }

    public readonly Outcome Finish(in HouseBlock house, in LoopBlock loop)
    {
        var (inHouse, inLoop) = (house.StoredJ - houseStart, loop.StoredJ - loopStart);
        var entered = sunHouse + sunCollector + heater + auxiliary;
        var left = coverAir + coverSky + leakage + vents + ground + collectorLoss + pipeLoss + inHouse + inLoop;
        var throughput = entered + groundGift + Math.Max(0, -inHouse) + Math.Max(0, -inLoop);
        var tank = loop.HasTank;
        return new Outcome
        {
            SeasonHours = hours,
            FrostHours = frostHours,
            FrostDegreeHoursKh = degreeHours,
            LowestAirC = lowestAir,
            LowestWithinHourC = lowestWithin,
            ColdestHour = coldest,
            StandbyKwh = heater / JoulePerKwh,
            CollectorYieldKwh = yield / JoulePerKwh,
            PumpHours = pumpSeconds / 3600,
            PumpKwh = pumpJ / JoulePerKwh,
            ReleasedKwh = released / JoulePerKwh,
            ReleaseHours = releaseSeconds / 3600,
            TankLowestC = tank ? tankLow : double.NaN,
            TankHighestC = tank ? tankHigh : double.NaN,
            TankMeanC = tank ? tankSum / steps : double.NaN,
            Ledger = new EnergyLedger
            {
                SunIntoHouse = sunHouse / JoulePerKwh,
                SunIntoCollector = sunCollector / JoulePerKwh,
                Heater = heater / JoulePerKwh,
                Auxiliary = auxiliary / JoulePerKwh,
                CoverToAir = coverAir / JoulePerKwh,
                CoverToSky = coverSky / JoulePerKwh,
                Leakage = leakage / JoulePerKwh,
                Vents = vents / JoulePerKwh,
                Ground = ground / JoulePerKwh,
                CollectorLoss = collectorLoss / JoulePerKwh,
                PipeLoss = pipeLoss / JoulePerKwh,
                StoredInHouse = inHouse / JoulePerKwh,
                StoredInLoop = inLoop / JoulePerKwh,
                Throughput = throughput / JoulePerKwh,
                Residual = throughput > 0 ? Math.Abs(entered - left) / throughput : 0,
            },
        };
    }
}
