using DesignSearch.Climate.Plane;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Systems.Supply.OffGrid;
using DesignSearch.Search.Space;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>The darkest run against a battery that is emptied and filled hour by hour.</summary>
public sealed class DarkWintersTests : IDisposable
{
    private const int Layouts = 200;

    private readonly LonelyHouse house = new();
    private readonly Scenario scenario;
    private readonly WinterSet winters;

    public DarkWintersTests() => (scenario, winters) = (house.Read(), WinterSet.Make(house.Read()));

    public void Dispose() => house.Dispose();

    [Theory]
    [InlineData(10, 0, 60)]
    [InlineData(10, 20, 60)]
    [InlineData(30, 5, 300)]
    [InlineData(1, 0, 500)]
    [InlineData(50, 0, 10)]
    public void What_a_run_takes_out_is_what_is_missing_hour_by_hour(double standingW, double daylightW, double usefulW)
    {
        var dark = DarkWinters.Of(scenario);
        var worst = 0.0;
        foreach (var (winter, plane) in Planes(dark.TiltDeg, dark.AzimuthDeg))
        {
            var missing = 0.0;
            for (var h = 0; h < winter.Hours; h++)
            {
                var drawn = standingW + (winter.GlobalWPerM2[h] > 0 ? daylightW : 0);
                missing = Math.Max(0, missing + drawn - (usefulW * Sun(plane, h)));
                worst = Math.Max(worst, missing);
            }
        }

        Assert.Equal(worst, dark.Darkest(standingW, daylightW, usefulW).Wh, 6);
        Assert.Equal(winters.LowestOutsideC, dark.LowestC);
    }

    [Fact]
    public void The_table_is_never_below_the_run_and_hardly_above()
    {
        var (dark, random, far) = (DarkWinters.Of(scenario), new Random(5), 0.0);
        for (var i = 0; i < 400; i++)
        {
            var (s, d, w) = (1 + (60 * random.NextDouble()), random.Next(3) * 30 * random.NextDouble(), 20 + (700 * random.NextDouble()));
            var (bound, exact) = (dark.AtMostWh(s, d, w), dark.Darkest(s, d, w).Wh);
            Assert.True(bound >= exact - 1e-6, $"{s} {d} {w}: {bound} below {exact}");
            far = Math.Max(far, (bound / exact) - 1);
        }

        Assert.InRange(far, 0, 0.1);
    }

    [Fact]
    public void The_panels_face_the_equator_steeply()
    {
        var south = DarkWinters.Of(scenario);
        Assert.Equal((60, 0), (south.TiltDeg, south.AzimuthDeg));
        using var north = new LonelyHouse("", ("latitude_deg = -43.4", "latitude_deg = 55"), ("longitude_deg = 170.9", "longitude_deg = 170"),
            ("start = \"05-01\"", "start = \"11-01\""), ("end = \"09-30\"", "end = \"03-31\""));
        Assert.Equal((70, 180), (DarkWinters.Of(north.Read()).TiltDeg, DarkWinters.Of(north.Read()).AzimuthDeg));
    }

    [Fact]
    public void No_battery_runs_empty_in_a_design_winter_and_no_part_meets_more_than_sixty_volts()
    {
        var dark = DarkWinters.Of(scenario);
        var planes = Planes(dark.TiltDeg, dark.AzimuthDeg);
        var (served, shallow) = (0, double.PositiveInfinity);
        foreach (var built in Drawn(Layouts))
        {
            var plan = built.Supply!;
            Assert.All(plan.Lines, l => Assert.InRange(l.Volts, 1, 60));
            Assert.All(WireWriter.Of(built), w => Assert.InRange(w.Volts, 0, 60));
            if (plan.Battery is not { } battery || !Passes(built))
                continue;
            Assert.InRange(battery.ColdOpenV, 1, 60);
            served++;
            shallow = Math.Min(shallow, planes.Min(p => LeastLeft(plan, battery, p.Winter, p.Plane)));
        }

        Assert.True(served > Layouts / 5, $"{served} served");
        // None runs empty, and none is many times too large.
        Assert.InRange(shallow, 0, 0.2);
    }

    [Fact]
    public void The_season_draws_no_more_than_the_battery_is_ready_for()
    {
        var assessor = new LayoutAssessor(scenario, winters);
        var layouts = Drawn(Layouts).Where(b => b.Supply!.Battery is not null && Passes(b)).Take(24).ToList();
        var outcomes = assessor.Simulate(layouts);
        var most = 0.0;
        for (var i = 0; i < layouts.Count; i++)
        {
            for (var w = 0; w < winters.Winters.Count; w++)
            {
                var winter = winters.Winters[w].Winter;
                var battery = layouts[i].Supply!.Battery!;
                var light = Enumerable.Range(winter.WarmUpHours, winter.SeasonHours).Count(h => winter.GlobalWPerM2[h] > 0);
                var ready = ((battery.StandingW * winter.SeasonHours) + (battery.DaylightW * light)) / 1000;
                var drawn = outcomes[i][w].ElectricKwh + assessor.DriveKwh(layouts[i], winter);
                most = Math.Max(most, drawn / ready);
            }
        }

        Assert.InRange(most, 0.1, 1);
    }

    // Share of what may be taken out that is left at the worst hour: everything that may run does, the sun of each hour charges, what runs
    // for a while does so at once in the morning.
    private static double LeastLeft(SupplyPlan plan, BatteryPlan battery, Climate.Winters.Winter winter, PlaneIrradiance plane)
    {
        var depth = Math.Min(battery.Battery.UsableDepth, 1 - Parts.OffGrid.BatterySize.ChargeAgainstFrost(battery.Battery.Chemistry, battery.LowestC));
        var cold = Parts.OffGrid.BatterySize.ColdFactor(battery.Battery.Chemistry, battery.LowestC);
        var full = 24 * battery.AmpHours * battery.Battery.AgedShare * depth / cold;
        var (left, least) = (full, full);
        for (var h = 0; h < winter.Hours; h++)
        {
            var drawn = battery.Controller.OwnW;
            foreach (var line in plan.Lines)
            {
                var through = 0.95 * (line.Supply?.Efficiency ?? 1);
                foreach (var c in line.Circuits.Where(c => !c.Device.StartsWith("supply of", StringComparison.Ordinal)))
                {
                    var hours = c.HoursADay is { } some ? (h % 24 == 7 ? some : 0) : c.Runs == RunTime.Daylight && winter.GlobalWPerM2[h] <= 0 ? 0 : 1;
                    drawn += c.Watts * hours / through;
                }
            }

            var useful = battery.PeakW * 0.85 * 0.97 * battery.Controller.Efficiency * battery.Battery.ChargeEfficiency;
            left = Math.Min(full, left + (useful * Sun(plane, h)) - drawn);
            least = Math.Min(least, left);
        }

        return least / full;
    }

    private static bool Passes(BuiltLayout built) =>
        built.Supply!.Battery is { } b && b.NeededAmpHours <= b.AmpHours + 1e-9 && b.Refill >= 1.1;

    private static double Sun(PlaneIrradiance plane, int hour) =>
        (plane.BeamWPerM2[hour] + plane.SkyWPerM2[hour] + plane.GroundWPerM2[hour]) / 1000;

    private List<(Climate.Winters.Winter Winter, PlaneIrradiance Plane)> Planes(double tilt, double azimuth) =>
        [.. winters.Winters.Select(w => (w.Winter, winters.Planes.Get(w.Winter, Mount.FixedAt(tilt, azimuth))))];

    private IEnumerable<BuiltLayout> Drawn(int count)
    {
        var layouts = new LayoutSpace(scenario);
        var (space, random) = (new SearchSpace(layouts.Variables), new Random(3));
        while (count > 0)
        {
            var point = layouts.Variables.Select(v => (double)random.Next(v.Levels)).ToArray();
            space.Canonicalise(point);
            var built = LayoutBuilder.Build(scenario, layouts.At(point));
            if (built.Supply is null)
                continue;
            count--;
            yield return built;
        }
    }
}
