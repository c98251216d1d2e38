using System.Globalization;
using DesignSearch.Season.Barrels;
using DesignSearch.Season.Benches;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Solar;
using DesignSearch.Testing;
using Xunit;
using Xunit.Abstractions;

namespace DesignSearch.Season.Tests;

/// <summary>What the kernel's closed-form duties at 300 s cost against relays that click, 60 cold days. DESIGNSEARCH_CLICKS=100 by hand adds random layouts.</summary>
public sealed class ClickingTests(ITestOutputHelper output)
{
    private const string Source = "slow second program in the tests: relays, explicit steps of 1 s, pump runs 180 s at least";
    private const int Days = 60;

    private static readonly WinterForcing Forcing = TestWinter.Forcing(TestWinter.Make(days: Days, warmUpDays: 10, meanC: -1, seed: 3));

    private static readonly Dictionary<string, Installation> Plants = new()
    {
        ["heater"] = TestLayout.Bare with { Heater = new HeaterNumbers(2000, 3.5, 1) },
        ["weak heater and barrels"] = TestLayout.Bare with { Heater = new HeaterNumbers(500, 3.5, 1), Barrels = new BarrelNumbers(1200, 12, 0.2) },
        ["4 m2 drained on 800 L"] = TestLayout.Solar(4),
        ["8 m2 drained on 800 L"] = TestLayout.Solar(8),
        ["12 m2 filled with exchanger on 1000 L"] = TestLayout.Solar(12) with { Tank = new TankNumbers(1000, 2.5, 60), Collector = TestLayout.Flat(12) with { EmptyAtRest = false, ExchangerEffectiveness = 0.7 } },
        ["6 m2 on 200 L, no heater"] = TestLayout.Solar(6) with { Tank = new TankNumbers(200, 2, 60), Release = new ReleaseNumbers(250, 0.12, 60, 5, 2), Heater = HeaterNumbers.None },
        ["2 m2 unglazed on 300 L, night cover"] = TestLayout.Solar(2) with
        {
            House = TestLayout.House with { NightCoverResistanceM2KPerW = 0.3 },
            Tank = new TankNumbers(300, 2, 45),
            Collector = TestLayout.Flat(2) with { Eta0Beam = 0.85, A1WPerM2K = 10, WindLossJPerM3K = 3, StartDifferenceK = 5, StopDifferenceK = 2 },
        },
    };

    public static TheoryData<string> Names => [.. Plants.Keys];

    private static int Many => int.TryParse(Environment.GetEnvironmentVariable("DESIGNSEARCH_CLICKS"), CultureInfo.InvariantCulture, out var n) ? n : 3;

    [Theory]
    [MemberData(nameof(Names))]
    public void Duties_stand_for_relays(string name)
    {
        var (ours, theirs) = Both(Plants[name]);
        output.WriteLine(Words(name, ours, theirs));
        Validation.Within($"relays {name}, frost", "% off the relays' frost degree-hours", -1.5, 1.5, Off(ours.FrostDegreeHoursKh, theirs.FrostDegreeHours), Source, "SeasonSimulator.Run");
        if (theirs.StandbyKwh > 0)
            Validation.Within($"relays {name}, stand-by", "% off the relays' stand-by kWh", -9, 9, Off(ours.StandbyKwh, theirs.StandbyKwh), Source, "SeasonSimulator.Run");
        if (theirs.PumpHours == 0)
            return;
        Validation.Within($"relays {name}, yield", "% off the relays' collector yield", -6, 6, Off(ours.CollectorYieldKwh, theirs.YieldKwh), Source, "SeasonSimulator.Run");
        Validation.Within($"relays {name}, pump", FormattableString.Invariant($"h in {Days} days; relays {theirs.PumpHours:0} h, {theirs.PumpStarts / (double)Days:0.0} starts a day"), 0.8 * theirs.PumpHours, 1.05 * theirs.PumpHours, ours.PumpHours, Source, "SeasonSimulator.Run");
    }

    [Fact]
    public void Duties_stand_for_relays_on_random_layouts()
    {
        var random = new Random(11);
        var plants = Enumerable.Range(0, Many).Select(_ => TestLayout.Random(random)).Select(l => l with { Sources = [.. l.Sources.Where(s => s is not BenchNumbers)] })
            .Select(p => p with { Heater = p.Heater with { SetPointC = Apart(p.Heater.SetPointC + 0.6, p.Release.SetPointC) }, PipeRun = p.PipeRun with { OutCapacityJPerK = p.PipeRun.OutCapacityJPerK + 5000, BackCapacityJPerK = p.PipeRun.BackCapacityJPerK + 5000 } }).ToArray();
        var results = new (Outcome Ours, ClickingReference Theirs)[plants.Length];
        Parallel.For(0, plants.Length, i => results[i] = Both(plants[i]));
        var frost = Array.ConvertAll(results, r => Math.Abs(r.Ours.FrostDegreeHoursKh - r.Theirs.FrostDegreeHours) / Math.Max(50, r.Theirs.FrostDegreeHours));
        var standby = Array.ConvertAll(results, r => Math.Abs(r.Ours.StandbyKwh - r.Theirs.StandbyKwh) / Math.Max(50, r.Theirs.StandbyKwh));
        // Each heater stands 0.6 K above the limit or more: nearer than half its band, real relays let the air dip below the limit where an ideal thermostat does not.
        for (var i = 0; i < results.Length; i++)
        {
            if (frost[i] > 0.02 || standby[i] > 0.05)
                output.WriteLine(Words(FormattableString.Invariant($"layout {i}, {plants[i].Collector.AreaM2:0.0} m² on {plants[i].Tank.WaterKg:0} L, {plants[i].Release}, {plants[i].Heater}"), results[i].Ours, results[i].Theirs));
        }

        output.WriteLine(FormattableString.Invariant($"{Many} layouts: frost worst {100 * frost.Max():0.0} %, mean {100 * frost.Average():0.00} %; stand-by worst {100 * standby.Max():0.0} %, mean {100 * standby.Average():0.00} % (of at least 50)"));
        // Collectors that lose much to the wind wait longer for their relay than the duty does: a few in a hundred stand 3 to 6 % off.
        Assert.InRange(frost.Count(f => f > 0.03), 0, Many / 20);
        Assert.InRange(frost.Max(), 0, 0.06);
        Assert.InRange(standby.Max(), 0, 0.09);
    }

    [Fact]
    public void The_relays_keep_their_books() => Assert.InRange(Both(Plants["4 m2 drained on 800 L"]).Theirs.Residual, 0, 1e-5);

    private static (Outcome Ours, ClickingReference Theirs) Both(Installation plant)
    {
        var layout = new LayoutCase(plant, plant.Collector.AreaM2 > 0 ? TestWinter.Plane(Forcing.Winter, 60) : null);
        return (SeasonSimulator.Run(Forcing, layout), new ClickingReference(Forcing, layout).Run());
    }

    // Set points closer than a tenth of a kelvin take turns on real relays; nobody dials that in.
    private static double Apart(double heaterC, double releaseC) => heaterC > releaseC && heaterC < releaseC + 0.1 ? releaseC + 0.1 : heaterC;

    private static double Off(double ours, double theirs) => 100 * (ours / theirs - 1);

    private static string Words(string name, Outcome ours, ClickingReference theirs) => FormattableString.Invariant(
        $"{name}: frost {ours.FrostDegreeHoursKh:0.0} against {theirs.FrostDegreeHours:0.0} K·h ({Off(ours.FrostDegreeHoursKh, theirs.FrostDegreeHours):0.0} %), stand-by {ours.StandbyKwh:0.0} / {theirs.StandbyKwh:0.0} kWh, pump {ours.PumpHours:0.0} / {theirs.PumpHours:0.0} h, yield {ours.CollectorYieldKwh:0} / {theirs.YieldKwh:0}, released {ours.ReleasedKwh:0} / {theirs.ReleasedKwh:0}, starts a day: pump {theirs.PumpStarts / (double)Days:0.0}, release {theirs.ReleaseStarts / (double)Days:0.0}, heater {theirs.HeaterStarts / (double)Days:0.0}");
}
