namespace DesignSearch.Season;

/// <summary>State of one layout on its way through one winter.</summary>
internal struct SeasonRun
{
    private readonly WinterForcing forcing;
    private readonly LayoutCase layout;
    private readonly double step, releaseWPerK, pumpW;
    private readonly int steps, warmUp;
    private HouseBlock house;
    private LoopBlock loop;
    private HouseControls control;
    private Tally tally;
    private double startHouseJ, startLoopJ;

    public SeasonRun(WinterForcing forcing, LayoutCase layout, double step, int steps)
    {
        (this.forcing, this.layout, this.step, this.steps) = (forcing, layout, step, steps);
        var (winter, a, parts) = (forcing.Winter, forcing.Assumptions, layout.Installation);
        warmUp = winter.WarmUpHours;
        tally = Tally.Start();
        pumpW = parts.Collector.PumpW;
        releaseWPerK = parts.Release.FlowKgPerS > 0 ? Math.Min(parts.Release.ConductanceWPerK, parts.Release.FlowKgPerS * 4186) : parts.Release.ConductanceWPerK;
        control = new HouseControls
        {
            VentMaxWPerK = parts.House.VentWPerK,
            VentAboveC = parts.House.VentAboveC,
            ReleaseSetC = parts.Release.SetPointC,
            HeaterMaxW = parts.Heater.PowerW,
            HeaterSetC = parts.Heater.SetPointC,
        };

        var (outside, ground) = (winter.AirC[0], WinterForcing.GroundAtC(winter, 0, a.SoilSurfaceLayerM / 2, a));
        house = new HouseBlock(HouseCoefficients.Of(parts.House, parts.Barrels, a), step)
        {
            AirC = outside,
            CoverC = outside,
            OuterC = outside,
            BarrelsC = ground,
            FloorC = ground,
            MiddleC = WinterForcing.GroundAtC(winter, 0, a.SoilSurfaceLayerM + a.SoilMiddleLayerM / 2, a),
            DeepC = WinterForcing.GroundAtC(winter, 0, a.SoilSurfaceLayerM + a.SoilMiddleLayerM + a.SoilDeepLayerM / 2, a),
        };
        loop = new LoopBlock(parts, a, step)
        {
            CollectorC = outside,
            OutC = outside,
            BackC = outside,
            TopC = ground,
            UpperC = ground,
            LowerC = ground,
            BottomC = ground,
        };
    }

    public void Hour(int hour, Action<HourRow>? hourly)
    {
        if (hour == warmUp)
            (startHouseJ, startLoopJ) = (house.StoredJ, loop.StoredJ);
        var around = HouseHour.Of(forcing, layout.Installation, hour);
        var light = LoopHour.Of(forcing, layout, hour);
        double air = 0, pump = 0, release = 0, heater = 0;
        for (var k = 0; k < steps; k++)
        {
            var before = house.AirC;
            Arm();
            house.Step(around, control);
            loop.Step(light, control.TankLossW, house.ReleaseW, house.ReleaseShare);
            if (hour >= warmUp)
                tally.Step(house, loop, around, light, control, pumpW, step);
            air += (before + house.AirC) / 2;
            pump += loop.PumpShare;
            release += house.ReleaseW;
            heater += house.HeaterW;
        }

        if (hour >= warmUp)
            tally.Hour(hour, air / steps, layout.Installation.House.FrostLimitC);
        hourly?.Invoke(Row(hour, around, air / steps, pump / steps, release / steps, heater / steps));
    }

    public readonly Outcome Close() => tally.Close(house.StoredJ - startHouseJ, loop.StoredJ - startLoopJ, loop.HasTank);

    // What tank and pump offer to the next step of the house.
    private void Arm()
    {
        control.TankLossW = loop.TankLossW(house.AirC);
        control.PumpElectricW = loop.PumpShare * pumpW;
        if (!loop.HasTank)
            return;
        var a = forcing.Assumptions;
        var fade = Math.Clamp((loop.TopC - control.ReleaseSetC - a.ReleaseFadeFromK) / a.ReleaseFadeOverK, 0, 1);
        control.ReleaseFade = fade;
        control.SourceC = loop.TopC;
        control.ReleaseWPerK = fade * releaseWPerK;
        control.ReleaseElectricW = fade * layout.Installation.Release.ElectricW;
    }

    private readonly HourRow Row(int hour, in HouseHour around, double air, double pump, double release, double heater)
    {
        var (parts, plane) = (layout.Installation, layout.Plane);
        return new HourRow(
            hour,
            forcing.Winter.Start.AddHours(hour),
            around.OutsideC,
            around.SkyC,
            air,
            house.FloorC,
            parts.Barrels.WaterKg > 0 ? house.BarrelsC : double.NaN,
            loop.HasTank ? loop.TopC : double.NaN,
            loop.HasTank ? loop.BottomC : double.NaN,
            loop.HasCollector ? loop.CollectorC : double.NaN,
            pump,
            release,
            heater,
            loop.HasCollector && plane is not null ? plane.BeamWPerM2[hour] + plane.SkyWPerM2[hour] + plane.GroundWPerM2[hour] : 0,
            around.SunW,
            Tally.IsFrost(air, parts.House.FrostLimitC));
    }
}
