using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season.Tests;

/// <summary>
/// The same house and loop, stepped explicitly at 1 s with real switches: a differential pump relay with start, stop and least times, a light sensor,
/// a tank thermostat, valves on a house thermostat with a band, a heater with a band and the lag of its body. Slow and plain on purpose;
/// it shares with the kernel the coefficients and nothing else.
/// </summary>
internal sealed class ClickingReference(WinterForcing forcing, LayoutCase layout)
{
    private const double Step = 1;
    private const double Kelvin = 273.15;
    private readonly HouseTerms<double> c = HouseTerms.From(layout.Installation, forcing.Assumptions);
    private readonly LoopTerms<double> l = LoopTerms.From(layout, forcing.Assumptions);

    /// <summary>Least time that the pump runs once it has started [s]; it then rests at least a third of it.</summary>
    public double LeastRunS { get; init; } = 180;

    /// <summary>Time constant of the heater's body, from switch to warm air [s].</summary>
    public double HeaterLagS { get; init; } = 120;

    public double FrostDegreeHours { get; private set; }

    public double StandbyKwh { get; private set; }

    public double PumpHours { get; private set; }

    public double YieldKwh { get; private set; }

    public double ReleasedKwh { get; private set; }

    public int PumpStarts { get; private set; }

    public int ReleaseStarts { get; private set; }

    public int HeaterStarts { get; private set; }

    /// <summary>Heat that entered less what left less what is stored, over what entered and what the stores gave.</summary>
    public double Residual { get; private set; }

    public ClickingReference Run()
    {
        var winter = forcing.Winter;
        var a = forcing.Assumptions;
        var (lightGate, lightBand) = (a[PumpAssumptions.LightGate], a[PumpAssumptions.LightBand]);
        var ceilingFade = a[PumpAssumptions.CeilingFade];
        var (house, collector, release, heater, tankCeiling) = (layout.Installation.House, layout.Installation.Collector, layout.Installation.Release, layout.Installation.Heater, l.CeilingC);
        double air = winter.AirC[0], cover = air, floor = air, barrels = air, mass = air, barrelHeat = 0, inner = air, contents = air, radiatedBefore = 0;
        double soil1 = HouseTerms.SoilStartC(forcing, 1), soil2 = HouseTerms.SoilStartC(forcing, 2), soil3 = HouseTerms.SoilStartC(forcing, 3);
        double hot = air, outPipe = air, backPipe = air;
        double[] t = [Math.Max(8, air), Math.Max(8, air), Math.Max(8, air), Math.Max(8, air)];
        bool pump = false, valves = false, heating = false, light = false, full = false, warmEnough = false;
        double sincePump = 1e6, body = 0, entered = 0, left = 0, start = 0;
        // Freezing spread over a tenth of a kelvin, as in the kernel: what is held against water at 0 °C gives the temperature.
        double HeldAt(double at) => at > 0 ? at * c.BarrelStore : at > -0.1 ? at * 10 * c.BarrelMelts : (at + 0.1) * c.BarrelIce - c.BarrelMelts;
        double BarrelsAt(double held) => held > 0 ? held / c.BarrelStore : held > -c.BarrelMelts ? held / c.BarrelMelts / 10 : (held + c.BarrelMelts) / c.BarrelIce - 0.1;
        barrelHeat = HeldAt(barrels);
        double Stored() => c.AirStore * air + c.CoverStore * cover + c.FloorStore * floor + c.Soil1Store * soil1 + c.Soil2Store * soil2 + c.Soil3Store * soil3 + barrelHeat + c.WallStore * mass + c.ContentsStore * contents
            + l.LayerStore * (t[0] + t[1] + t[2] + t[3]) + l.CollectorStore * hot + l.OutStore * outPipe + l.BackStore * backPipe + body;
        for (var h = 0; h < winter.Hours; h++)
        {
            ref readonly var f = ref forcing.Hours[h];
            var counts = h >= winter.WarmUpHours;
            if (h == winter.WarmUpHours)
                (start, entered, left) = (Stored(), 0, 0);
            var around = f.OutsideC - f.AroundBelowK;
            var (outer, toAround) = (c.OuterStill + c.OuterPerWind * f.RoofWindMPerS, c.AroundWPerK4 * Math.Pow(around + Kelvin, 3));
            var beyond = c.SkyView * f.SkyC + (1 - c.SkyView) * around;
            var passes = (1 - c.CoverBlocks * f.Dark) * Math.Pow((beyond + 5) / 2 + Kelvin, 3);
            var leak = (c.LeakM3PerS + c.LeakM3PerSPerWind * f.RoofWindMPerS) * f.AirJPerM3K;
            var link = c.LinkOpen + f.Dark * (c.LinkClosed - c.LinkOpen);
            var (beam, diffuse, cos) = l.AreaM2 > 0 ? (layout.Plane!.BeamWPerM2[h], layout.Plane.SkyWPerM2[h] + layout.Plane.GroundWPerM2[h], layout.Plane.CosIncidence[h]) : (0, 0, 0);
            var absorbed = l.AreaM2 * l.Eta0 * (beam * (cos > 0 ? Math.Max(1 - l.B0 * (1 / Math.Max(cos, 1e-3) - 1), 0) : 0) + l.Diffuse * diffuse);
            var sky = f.SkyC + Kelvin;
            var mean = 0.0;
            for (var s = 0; s < 3600; s++)
            {
                // Switches.
                light = beam + diffuse > lightGate + (light ? 0 : lightBand);
                full = t[0] > (full ? tankCeiling - ceilingFade : tankCeiling);
                sincePump += Step;
                var wish = light && !full && f.Power > 0 && hot - t[3] > (pump ? collector.StopDifferenceK : collector.StartDifferenceK);
                if (l.AreaM2 > 0 && wish != pump && sincePump >= (pump ? LeastRunS : LeastRunS / 3))
                {
                    (pump, sincePump) = (wish, 0);
                    PumpStarts += pump && counts ? 1 : 0;
                }

                warmEnough = t[0] > (warmEnough ? c.ReleaseStopC : c.ReleaseStartC);
                var wasOpen = valves;
                valves = c.Release > 0 && warmEnough && air < c.ReleaseSetC + (valves ? 0.5 : -0.5) * release.BandK;
                ReleaseStarts += valves && !wasOpen && counts ? 1 : 0;
                var wasHeating = heating;
                heating = c.HeaterW > 0 && air < c.HeaterSetC + (heating ? 0.5 : -0.5) * heater.BandK;
                HeaterStarts += heating && !wasHeating && counts ? 1 : 0;

                // Surfaces without mass: inner side of the cover and, where there is one, the wall's face.
                var innerFloor = c.InnerFloor + c.Latent * Math.Clamp((floor - inner) / 2, 0, 1);
                var innerAir = c.InnerAir + c.InnerAirPerRoot * Math.Cbrt(Math.Abs(air - inner));
                var (floorOut, innerOut, floorCover) = (c.FloorOutWPerK4 * passes, c.InnerOutWPerK4 * passes, c.FloorCover * (1 - c.CoverBlocks * f.Dark));
                var (gi, ri) = (innerAir + innerFloor + c.InnerWall + c.ContentsInner + link + innerOut, innerAir * air + innerFloor * floor + c.ContentsInner * contents + link * cover + innerOut * beyond);
                var floorAir = c.FloorAir + c.FloorAirSwing * Math.Clamp(floor - air, -1, 1);
                var gw = c.WallAir + c.FloorWall + c.InnerWall + c.WallMass;
                var rw = c.WallAir * air + c.FloorWall * floor + c.WallMass * mass + c.SunWall * f.SunW;
                // Half of what is radiated strikes the inner surface, by what was radiated a second ago.
                ri += radiatedBefore / 2;
                inner = (ri * gw + c.InnerWall * rw) / (gi * gw - c.InnerWall * c.InnerWall);
                var face = (rw + c.InnerWall * inner) / gw;

                var (fromFloor, fromInner, fromLeaves) = (floorOut * (floor - beyond), innerOut * (inner - beyond), c.AirOutWPerK4 * passes * (air - beyond));
                var toSky = c.SkyWPerK4 * (Math.Pow(cover + Kelvin, 4) - Math.Pow(sky, 4));
                var toOutside = outer * (cover - f.OutsideC) + toAround * (cover - around);
                var vent = c.Vent * Math.Clamp((air - c.VentAboveC) / 1, 0, 1) * Math.Max(air - f.OutsideC, 0);
                var leaking = leak * (air - f.OutsideC);
                var released = valves ? c.Release * (t[0] - air) : 0;
                var fan = valves ? c.FanW : 0;
                body += Step * ((heating ? c.HeaterW : 0) - body / HeaterLagS);
                var heat = body / HeaterLagS;
                var tankLoss = l.LayerLoss * (t[0] + t[1] + t[2] + t[3] - 4 * air);
                var (toGround, toEdge, toWallOutside) = (c.SoilDeep * (soil3 - f.GroundC), c.Edge * (floor - f.OutsideC), c.MassOutside * (mass - f.OutsideC));

                var (given, radiated) = (released + fan, c.HeaterRadiates * heat + c.ReleaseRadiates * (released + fan));
                radiatedBefore = radiated;
                var dAir = c.SunAir * f.SunW + innerAir * (inner - air) + floorAir * (floor - air) + c.ContentsAir * (contents - air) + c.WallAir * (face - air) + c.BarrelAir * (barrels - air) - leaking - vent - fromLeaves + given + heat - radiated + tankLoss;
                var dCover = link * (inner - cover) + floorCover * (floor - cover) - toOutside - toSky;
                var dFloor = c.SunFloor * f.SunW + innerFloor * (inner - floor) + floorAir * (air - floor) + floorCover * (cover - floor) + c.FloorWall * (face - floor) + c.FloorSoil * (soil1 - floor) - toEdge - fromFloor + radiated / 2;
                var dContents = c.SunContents * f.SunW + c.ContentsInner * (inner - contents) + c.ContentsAir * (air - contents);
                var dSoil1 = c.FloorSoil * (floor - soil1) + c.Soil12 * (soil2 - soil1);
                var dSoil2 = c.Soil12 * (soil1 - soil2) + c.Soil23 * (soil3 - soil2);
                var dSoil3 = c.Soil23 * (soil2 - soil3) - toGround;
                var dBarrels = c.SunBarrels * f.SunW + c.BarrelAir * (air - barrels);
                var dMass = c.WallMass * (face - mass) - toWallOutside;

                // Loop, upwind.
                var flow = pump ? l.Flow : 0;
                var draw = valves ? l.ReleaseFlow : 0;
                var fromMean = pump ? (hot + backPipe) / 2 - f.OutsideC : hot - f.OutsideC;
                var lost = l.AreaM2 > 0 ? (l.Loss1 + l.Loss2 * Math.Abs(fromMean) + l.LossPerWind * f.RoofWindMPerS) * fromMean : 0;
                var toTank = flow * l.Exchanger * (outPipe - t[3]);
                var pipes = l.OutLoss * (outPipe - f.OutsideC) + l.BackLoss * (backPipe - f.OutsideC);
                var dHot = absorbed - lost + flow * (backPipe - hot);
                var dOut = flow * (hot - outPipe) - l.OutLoss * (outPipe - f.OutsideC);
                var dBack = flow * ((1 - l.Exchanger) * outPipe + l.Exchanger * t[3] - backPipe) - l.BackLoss * (backPipe - f.OutsideC);
                var (down, up) = (Math.Max(flow - draw, 0), Math.Max(draw - flow, 0));
                var d1 = flow * (l.Exchanger * outPipe + (1 - l.Exchanger) * t[3]) - draw * t[0] - down * t[0] + up * t[1];
                var d2 = down * (t[0] - t[1]) + up * (t[2] - t[1]);
                var d3 = down * (t[1] - t[2]) + up * (t[3] - t[2]);
                var d4 = draw * t[0] - released + down * t[2] - flow * t[3] - up * t[3];

                if (counts)
                {
                    entered += (c.SunAir + c.SunContents) * f.SunW + c.SunFloor * f.SunW + c.SunBarrels * f.SunW + c.SunWall * f.SunW + absorbed + fan + (heating ? c.HeaterW : 0);
                    left += toOutside + toSky + fromFloor + fromInner + fromLeaves + leaking + vent + toGround + toEdge + toWallOutside + lost + pipes;
                    StandbyKwh += heating ? c.HeaterW / 3.6e6 : 0;
                    PumpHours += pump ? Step / 3600 : 0;
                    YieldKwh += toTank / 3.6e6;
                    ReleasedKwh += released / 3.6e6;
                }

                air += Step * dAir / c.AirStore;
                cover += Step * dCover / c.CoverStore;
                floor += Step * dFloor / c.FloorStore;
                soil1 += Step * dSoil1 / c.Soil1Store;
                soil2 += Step * dSoil2 / c.Soil2Store;
                soil3 += Step * dSoil3 / c.Soil3Store;
                contents += Step * dContents / c.ContentsStore;
                barrelHeat += Step * dBarrels;
                barrels = BarrelsAt(barrelHeat);
                mass += Step * dMass / c.WallStore;
                hot += Step * dHot / l.CollectorStore;
                outPipe += Step * dOut / l.OutStore;
                backPipe += Step * dBack / l.BackStore;
                t[0] += Step * (d1 - l.LayerLoss * (t[0] - air)) / l.LayerStore;
                t[1] += Step * (d2 - l.LayerLoss * (t[1] - air)) / l.LayerStore;
                t[2] += Step * (d3 - l.LayerLoss * (t[2] - air)) / l.LayerStore;
                t[3] += Step * (d4 - l.LayerLoss * (t[3] - air)) / l.LayerStore;
                Rise(t);
                mean += air / 3600;
            }

            if (counts)
                FrostDegreeHours += Math.Max(house.FrostLimitC - mean, 0);
        }

        var stored = Stored() - start;
        Residual = Math.Abs(entered - left - stored) / (entered + Math.Abs(stored));
        return this;
    }

    // Neighbours upside down become their mean until none is left.
    private static void Rise(double[] t)
    {
        for (var again = true; again;)
        {
            again = false;
            for (var i = 0; i < 3; i++)
            {
                if (t[i] >= t[i + 1] - 1e-9)
                    continue;
                t[i] = t[i + 1] = (t[i] + t[i + 1]) / 2;
                again = true;
            }
        }
    }
}
