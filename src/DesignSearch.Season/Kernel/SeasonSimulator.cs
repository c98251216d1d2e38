using DesignSearch.Climate;

namespace DesignSearch.Season;

/// <summary>Carries layouts through a winter. The same bits for a layout in any block, at any place, on any thread.</summary>
public static class SeasonSimulator
{
    /// <summary>Step used unless another is asked for [s]; the step-halving test says what it costs.</summary>
    public const double UsualStepSeconds = 300;

    /// <summary>Simulates a block of layouts.</summary>
    /// <param name="winter">The winter.</param>
    /// <param name="block">The layouts.</param>
    /// <param name="outcomes">One outcome a layout, in the order of the block.</param>
    /// <param name="stepSeconds">Step; a whole number of them makes an hour [s].</param>
    public static void Run(WinterForcing winter, ReadOnlySpan<LayoutCase> block, Span<Outcome> outcomes, double stepSeconds = UsualStepSeconds)
    {
        for (var i = 0; i < block.Length; i++)
            outcomes[i] = Run(winter, block[i], null, stepSeconds);
    }

    /// <summary>Simulates one layout.</summary>
    /// <param name="forcing">The winter.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="hourly">Takes every hour, warm-up included; null where nobody wants them.</param>
    /// <param name="stepSeconds">Step; a whole number of them makes an hour [s].</param>
    /// <exception cref="ArgumentException">The step does not divide the hour, or the plane belongs to another winter.</exception>
    public static Outcome Run(WinterForcing forcing, LayoutCase layout, Action<HourRow>? hourly = null, double stepSeconds = UsualStepSeconds)
    {
        var steps = (int)Math.Round(3600 / stepSeconds);
        if (steps < 1 || Math.Abs(steps * stepSeconds - 3600) > 1e-9)
            throw new ArgumentException("A whole number of steps must make an hour.", nameof(stepSeconds));
        var winter = forcing.Winter;
        var plane = layout.Plane;
        if (plane is not null && plane.BeamWPerM2.Length != winter.Hours)
            throw new ArgumentException("The plane's irradiance must have one entry for each hour of the winter.", nameof(layout));
        var installation = layout.Installation;
        var house = new HouseBlock(installation, forcing.Assumptions, stepSeconds, winter.AirC[0], forcing.GroundC[0]);
        var loop = new LoopBlock(installation, stepSeconds, winter.AirC[0]);
        var tally = new SeasonTally();
        var (release, heater, collector) = (installation.Release, installation.Heater, installation.Collector);
        // What a heat exchanger of conductance G can take from water that flows at m: m c (1 − exp(−G/(m c))).
        var flowHeat = release.FlowKgPerS * 4186;
        var releaseG = loop.HasTank && release.ConductanceWPerK > 0 && flowHeat > 0 ? flowHeat * (1 - Math.Exp(-release.ConductanceWPerK / flowHeat)) : 0;
        var limit = installation.House.FrostLimitC;
        var shareBefore = 0.0;
        for (var h = 0; h < winter.Hours; h++)
        {
            if (h == winter.WarmUpHours)
                tally.Start(house, loop);
            var counted = h >= winter.WarmUpHours;
            house.Hour(winter.AirC[h], winter.SkyC[h], winter.WindMPerS[h], forcing.HouseSunW[h], forcing.GroundC[h], forcing.IsNight[h]);
            var (absorbable, light) = loop.HasCollector && plane is not null ? Sun(collector, plane, h) : (0, 0);
            var (mean, pump, released, heated) = (0.0, 0.0, 0.0, 0.0);
            for (var s = 0; s < steps; s++)
            {
                var (before, top) = (house.Air, loop.T1);
                var tankLoss = loop.LossToHouseW(before);
                var fan = release.ElectricW * shareBefore;
                house.Step(release, releaseG, top, tankLoss, fan, heater);
                var can = releaseG * (top - house.Air);
                var share = house.ReleaseW > 0 && can > 0 ? Math.Min(1, house.ReleaseW / can) : 0;
                loop.Step(absorbable, light, winter.AirC[h], winter.WindMPerS[h], before, house.ReleaseW, share);
                mean += (before + house.Air) / 2;
                pump += loop.Pump;
                released += house.ReleaseW;
                heated += house.HeaterW;
                if (counted)
                    tally.Step(house, loop, stepSeconds, collector.PumpW, fan, share, release.ElectricW);
                shareBefore = share;
            }

            mean /= steps;
            if (counted)
                tally.Hour(h, mean, limit);
            hourly?.Invoke(new HourRow(
                h, winter.Start.AddHours(h), counted, winter.AirC[h], winter.SkyC[h], mean, house.Floor,
                installation.Barrels.WaterKg > 0 ? house.Barrels : double.NaN, loop.HasTank ? loop.T1 : double.NaN, loop.HasTank ? loop.T4 : double.NaN,
                loop.HasCollector ? loop.Collector : double.NaN, pump / steps, released / steps, heated / steps, light, house.SunW, forcing.IsNight[h] && installation.House.NightCoverResistanceM2KPerW > 0, mean < limit));
        }

        return tally.Finish(house, loop);
    }

    private static (double Absorbable, double Light) Sun(CollectorNumbers collector, PlaneIrradiance plane, int h)
    {
        var (beam, diffuse) = (plane.BeamWPerM2[h], plane.SkyWPerM2[h] + plane.GroundWPerM2[h]);
        var modified = beam * CollectorEfficiency.BeamModifier(collector.IncidenceB0, plane.CosIncidence[h]);
        return (collector.Eta0Beam * (modified + collector.DiffuseModifier * diffuse), beam + diffuse);
    }
}
