namespace DesignSearch.Season;

/// <summary>
/// Air, cover, floor, two soil layers and barrels over one implicit Euler step: everything but the air is eliminated, vents, release
/// and heater are chosen on the one line that is left, then the rest is substituted back.
/// </summary>
internal struct HouseBlock
{
    public double AirC, CoverC, OuterC, FloorC, MiddleC, DeepC, BarrelsC;

    /// <summary>Mean flows of the last step [W]; positive leaves the house, sources excepted.</summary>
    public double ToAirW, ToSkyW, LeakageW, VentW, GroundW, ReleaseW, ReleaseElectricW, HeaterW, ReleaseShare;

    private readonly HouseCoefficients g;
    private readonly double airStore, coverStore, floorStore, middleStore, deepStore, barrelStore;
    private readonly double deepInverse, middleInverse, floorPivot, barrelInverse;

    public HouseBlock(in HouseCoefficients coefficients, double step)
    {
        g = coefficients;
        (airStore, coverStore, floorStore) = (g.AirJPerK / step, g.CoverJPerK / step, g.FloorJPerK / step);
        (middleStore, deepStore, barrelStore) = (g.MiddleJPerK / step, g.DeepJPerK / step, g.BarrelsJPerK / step);
        deepInverse = Inverse(deepStore + g.MiddleToDeep + g.DeepToGround);
        middleInverse = Inverse(middleStore + g.FloorToMiddle + g.MiddleToDeep - g.MiddleToDeep * g.MiddleToDeep * deepInverse);
        floorPivot = floorStore + g.FloorToMiddle + g.AirToFloor + g.FloorToCover + g.Edge - g.FloorToMiddle * g.FloorToMiddle * middleInverse;
        barrelInverse = Inverse(barrelStore + g.AirToBarrels);
    }

    /// <summary>Heat held by air, cover, floor and barrels above 0 °C [J].</summary>
    public readonly double StoredJ => g.AirJPerK * AirC + g.CoverJPerK * CoverC + g.FloorJPerK * FloorC + g.BarrelsJPerK * BarrelsC;

    public void Step(in HouseHour hour, in HouseControls control)
    {
        // Outside of the cover: long-wave as a secant at the old outer surface, the sheet in series.
        var (outer, sky, outside) = (OuterC + 273.15, hour.SkyC + 273.15, hour.OutsideC + 273.15);
        var toSky = hour.SkyWPerK4 * (outer * outer + sky * sky) * (outer + sky);
        var toAir = hour.ConvectionWPerK + hour.RestWPerK4 * (outer * outer + outside * outside) * (outer + outside);
        var pull = toAir * hour.OutsideC + toSky * hour.SkyC;
        var series = 1 / (1 + hour.SheetKPerW * (toAir + toSky));

        var coverInverse = Inverse(coverStore + g.AirToCover + g.FloorToCover + series * (toAir + toSky));
        var coverRight = coverStore * CoverC + series * pull;
        var deepRight = deepStore * DeepC + g.DeepToGround * hour.GroundC;
        var middleRight = middleStore * MiddleC + g.MiddleToDeep * deepInverse * deepRight;
        var barrelRight = barrelStore * BarrelsC + hour.SunBarrelsW;

        var floorInverse = Inverse(floorPivot - g.FloorToCover * g.FloorToCover * coverInverse);
        var floorRight = floorStore * FloorC + hour.SunFloorW + g.Edge * hour.OutsideC
            + g.FloorToMiddle * middleInverse * middleRight + g.FloorToCover * coverInverse * coverRight;
        var floorToAir = g.AirToFloor + g.FloorToCover * coverInverse * g.AirToCover;

        var pivot = airStore + g.AirToFloor + g.AirToCover + g.AirToBarrels + hour.LeakageWPerK
            - g.AirToCover * g.AirToCover * coverInverse
            - g.AirToBarrels * g.AirToBarrels * barrelInverse
            - floorToAir * floorToAir * floorInverse;
        var right = airStore * AirC + hour.SunAirW + hour.LeakageWPerK * hour.OutsideC + control.TankLossW + control.PumpElectricW
            + g.AirToCover * coverInverse * coverRight
            + g.AirToBarrels * barrelInverse * barrelRight
            + floorToAir * floorInverse * floorRight;

        AirC = Regulate(pivot, right, hour.OutsideC, control);
        FloorC = floorInverse * (floorRight + floorToAir * AirC);
        CoverC = coverInverse * (coverRight + g.AirToCover * AirC + g.FloorToCover * FloorC);
        MiddleC = middleInverse * (middleRight + g.FloorToMiddle * FloorC);
        DeepC = deepInverse * (deepRight + g.MiddleToDeep * MiddleC);
        BarrelsC = barrelInverse * (barrelRight + g.AirToBarrels * AirC);

        OuterC = series * (CoverC + hour.SheetKPerW * pull);
        ToAirW = toAir * (OuterC - hour.OutsideC);
        ToSkyW = toSky * (OuterC - hour.SkyC);
        LeakageW = hour.LeakageWPerK * (AirC - hour.OutsideC);
        GroundW = g.FloorToMiddle * (FloorC - MiddleC) + g.Edge * (FloorC - hour.OutsideC);
    }

    // pivot · air = right + what vents, release and heater add; each in closed form, in this order.
    private double Regulate(double pivot, double right, double outsideC, in HouseControls control)
    {
        var vent = 0.0;
        if (right > control.VentAboveC * pivot && right > outsideC * pivot)
        {
            vent = outsideC < control.VentAboveC
                ? Math.Min((right - control.VentAboveC * pivot) / (control.VentAboveC - outsideC), control.VentMaxWPerK)
                : control.VentMaxWPerK;
            pivot += vent;
            right += vent * outsideC;
        }

        var (share, conductance) = (0.0, control.ReleaseWPerK);
        var full = conductance * (control.SourceC - control.ReleaseSetC) + control.ReleaseElectricW;
        var need = control.ReleaseSetC * pivot - right;
        if (conductance > 0 && full > 0 && need > 0)
        {
            share = Math.Min(need / full, 1);
            if (share < 1)
            {
                right += need;
            }
            else
            {
                pivot += conductance;
                right += conductance * control.SourceC + control.ReleaseElectricW;
            }
        }

        HeaterW = Math.Clamp(control.HeaterSetC * pivot - right, 0, control.HeaterMaxW);
        var air = (right + HeaterW) / pivot;
        VentW = vent * (air - outsideC);
        ReleaseShare = share * control.ReleaseFade;
        ReleaseElectricW = share * control.ReleaseElectricW;
        ReleaseW = share < 1 ? share * conductance * (control.SourceC - control.ReleaseSetC) : conductance * (control.SourceC - air);
        return air;
    }

    private static double Inverse(double pivot) => pivot > 0 ? 1 / pivot : 0;
}
