using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Season.House;

namespace DesignSearch.Layouts.Systems.Supply.OffGrid;

/// <summary>
/// Sun on a steep plane and daylight of the design winters, warm-up included, made once for a scenario: each night is one stretch, each
/// hour of daylight another, so that a run of dark days is found in a few thousand steps.
/// </summary>
internal sealed class DarkWinters
{
    private const long CacheBytes = 8_000_000;
    private const int HoursPerDay = 24;
    private const int WindowDays = 30;
    private const double SteepestDeg = 75;
    private const double FlattestDeg = 60;
    private const double SteeperThanLatitudeDeg = 15;

    private static readonly ConditionalWeakTable<ClimateSource, ConcurrentDictionary<Key, Lazy<DarkWinters>>> Made = [];

    // Steps of the table, as loads for each watt of useful panel: fine enough for a few percent.
    private static readonly double[] Standing = Steps(0.001, 1.03, 226);
    private static readonly double[] Daylight = [0, .. Steps(0.002, 1.045, 130)];

    private readonly (string Name, Stretch[] Stretches, Day[] Days)[] winters;
    private readonly double[][] table;

    private DarkWinters(Scenario scenario)
    {
        (TiltDeg, AzimuthDeg) = Facing(scenario.Place.LatitudeDeg);
        var (planes, mount) = (new PlaneCache(CacheBytes, scenario.Site.Horizon), Mount.FixedAt(TiltDeg, AzimuthDeg));
        var all = DesignWinters.Of(scenario).Select(w => w.Winter).ToList();
        LowestC = all.Min(w => w.AirC.Min());
        winters = [.. all.Select(w => (w.Name, Stretches(w, planes.Get(w, mount)), Days(w, planes.Get(w, mount))))];
        table = [.. Standing.Select(s => Daylight.Select(d => Darkest(s, d, 1).Wh).ToArray())];
    }

    private readonly record struct Stretch(double Hours, double DayHours, double SunH);

    private readonly record struct Day(double DayHours, double SunH);

    private sealed record Key(
        SeasonDates Season, IReadOnlyList<WinterWish> Winters, IReadOnlyList<double> Horizon, double Ground, double Snow, SnowCare? Care, double SnowBelowC);

    /// <summary>Coldest hour outside [°C].</summary>
    public double LowestC { get; }

    /// <summary>
    /// Tilt of the panels [°]: fifteen more than the latitude, 60 to 75, so that snow slides off (common practice, no source).
    /// </summary>
    public double TiltDeg { get; }

    /// <summary>Direction that they face: the equator [°].</summary>
    public double AzimuthDeg { get; }

    /// <summary>Those of a scenario; made at the first call. Safe to use from several threads.</summary>
    /// <param name="scenario">The scenario.</param>
    public static DarkWinters Of(Scenario scenario)
    {
        var key = new Key(
            scenario.Season,
            scenario.Winters,
            scenario.Site.HorizonDeg,
            scenario.Assumptions.GroundReflectance,
            scenario.Assumptions.SnowReflectance,
            scenario.Site.Snow,
            scenario.Assumptions[HouseAssumptions.SnowBelowC]);
        return Made.GetOrCreateValue(scenario.Climate).GetOrAdd(key, _ => new(() => new(scenario))).Value;
    }

    /// <summary>The run that takes most out of a battery that is full at the beginning.</summary>
    /// <param name="standingW">Drawn at every hour [W].</param>
    /// <param name="daylightW">Drawn besides while there is daylight [W].</param>
    /// <param name="usefulW">Power of the panels in full sun, less every loss on the way through the battery [W].</param>
    public DarkRun Darkest(double standingW, double daylightW, double usefulW)
    {
        var worst = new DarkRun(0, 0, winters[0].Name);
        foreach (var (name, stretches, _) in winters)
        {
            var (lacks, hours) = (0.0, 0.0);
            for (var i = 0; i < stretches.Length; i++)
            {
                lacks += (standingW * stretches[i].Hours) + (daylightW * stretches[i].DayHours) - (usefulW * stretches[i].SunH);
                hours += stretches[i].Hours;
                if (lacks <= 0)
                    (lacks, hours) = (0, 0);
                else if (lacks > worst.Wh)
                    worst = new(lacks, hours, name);
            }
        }

        return worst;
    }

    /// <summary>
    /// What the darkest run takes out of a battery, a little too much at most [W·h]: looked up, for a search asks for many panels. What a
    /// run takes out is the greatest of many sums, each linear in the three figures, so that a straight line between two entries of the
    /// table lies never below it.
    /// </summary>
    /// <inheritdoc cref="Darkest"/>
    public double AtMostWh(double standingW, double daylightW, double usefulW)
    {
        var (s, d) = (Math.Max(standingW / usefulW, Standing[0]), daylightW / usefulW);
        if (s > Standing[^1] || d > Daylight[^1])
            return Darkest(standingW, daylightW, usefulW).Wh;
        var (i, j) = (Below(Standing, s), Below(Daylight, d));
        var (x, y) = ((s - Standing[i]) / (Standing[i + 1] - Standing[i]), (d - Daylight[j]) / (Daylight[j + 1] - Daylight[j]));
        var low = table[i][j] + (y * (table[i][j + 1] - table[i][j]));
        var high = table[i + 1][j] + (y * (table[i + 1][j + 1] - table[i + 1][j]));
        return usefulW * (low + (x * (high - low)));
    }

    /// <summary>What the sun brings in thirty days, as a share of what is drawn in them, where that is least.</summary>
    /// <inheritdoc cref="Darkest"/>
    public double LeastRefill(double standingW, double daylightW, double usefulW)
    {
        var least = double.PositiveInfinity;
        foreach (var (_, _, days) in winters)
        {
            var (light, sun) = (0.0, 0.0);
            for (var i = 0; i < days.Length; i++)
            {
                (light, sun) = (light + days[i].DayHours, sun + days[i].SunH);
                if (i >= WindowDays)
                    (light, sun) = (light - days[i - WindowDays].DayHours, sun - days[i - WindowDays].SunH);
                if (i >= WindowDays - 1)
                    least = Math.Min(least, usefulW * sun / ((standingW * WindowDays * HoursPerDay) + (daylightW * light)));
            }
        }

        return least;
    }

    private static double[] Steps(double first, double ratio, int count) =>
        [.. Enumerable.Range(0, count).Select(i => first * Math.Pow(ratio, i))];

    // The last step at or below a value that lies within.
    private static int Below(double[] steps, double value)
    {
        var at = Array.BinarySearch(steps, value);
        return Math.Min(at >= 0 ? at : ~at - 1, steps.Length - 2);
    }

    private static (double TiltDeg, double AzimuthDeg) Facing(double latitudeDeg) =>
        (Math.Clamp(Math.Abs(latitudeDeg) + SteeperThanLatitudeDeg, FlattestDeg, SteepestDeg), latitudeDeg < 0 ? 0 : 180);

    // Hours of full sun, 1000 W/m², that an hour brings.
    private static double SunH(PlaneIrradiance plane, int hour) =>
        (plane.BeamWPerM2[hour] + plane.SkyWPerM2[hour] + plane.GroundWPerM2[hour]) / 1000;

    private static Stretch[] Stretches(Winter winter, PlaneIrradiance plane)
    {
        var stretches = new List<Stretch>();
        var night = 0;
        for (var h = 0; h < winter.Hours; h++)
        {
            if (winter.GlobalWPerM2[h] <= 0)
            {
                night++;
                continue;
            }

            if (night > 0)
                stretches.Add(new(night, 0, 0));
            stretches.Add(new(1, 1, SunH(plane, h)));
            night = 0;
        }

        stretches.Add(new(night, 0, 0));
        return [.. stretches];
    }

    private static Day[] Days(Winter winter, PlaneIrradiance plane)
    {
        var days = new Day[winter.Hours / HoursPerDay];
        for (var h = 0; h < days.Length * HoursPerDay; h++)
        {
            var day = days[h / HoursPerDay];
            days[h / HoursPerDay] = new(day.DayHours + (winter.GlobalWPerM2[h] > 0 ? 1 : 0), day.SunH + SunH(plane, h));
        }

        return days;
    }
}
