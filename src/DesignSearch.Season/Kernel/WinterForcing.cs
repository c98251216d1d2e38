using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;
using DesignSearch.Physics;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.House;

namespace DesignSearch.Season.Kernel;

/// <summary>One winter made ready for many layouts of the same house; immutable, shared by all threads.</summary>
public sealed class WinterForcing
{
    private const double ReferenceAirK = 283.15;
    private const double Horizon = 90;

    // The sensor of a night cover is one like that of a frame.
    private static readonly LightSensor CoverLight = new();

    private readonly HourForcing[] hours;

    private WinterForcing(Winter winter, SeasonAssumptions assumptions, HourForcing[] hours, double floorBelowM) =>
        (Winter, Assumptions, this.hours, FloorBelowM) = (winter, assumptions, hours, floorBelowM);

    /// <summary>The winter.</summary>
    public Winter Winter { get; }

    /// <summary>The numbers chosen for it.</summary>
    public SeasonAssumptions Assumptions { get; }

    /// <summary>How far the floor lies below the ground outside [m].</summary>
    public double FloorBelowM { get; }

    internal ReadOnlySpan<HourForcing> Hours => hours;

    /// <summary>Makes a winter ready.</summary>
    /// <param name="winter">The winter.</param>
    /// <param name="houseSunW">Sun that passes the bare cover, hour mean [W], as many entries as the winter has hours.</param>
    /// <param name="assumptions">The numbers chosen.</param>
    /// <param name="isCheapHour">Tells by the hour of the day, 0 to 23 of local standard time, when electricity has its cheap price; null for never.</param>
    /// <param name="floorBelowM">How far the floor lies below the ground outside [m], 0 or more.</param>
    /// <exception cref="ArgumentException">The sun has another number of hours than the winter.</exception>
    public static WinterForcing Prepare(Winter winter, double[] houseSunW, SeasonAssumptions assumptions, Func<int, bool>? isCheapHour = null, double floorBelowM = 0)
    {
        ArgumentNullException.ThrowIfNull(winter);
        ArgumentNullException.ThrowIfNull(houseSunW);
        ArgumentNullException.ThrowIfNull(assumptions);
        if (houseSunW.Length != winter.Hours)
            throw new ArgumentException($"The sun has {houseSunW.Length} hours, the winter {winter.Hours}.", nameof(houseSunW));
        var depth = floorBelowM + HouseTerms.SoilDepthM(assumptions);
        var power = Without(Enumerable.Repeat(1.0, winter.Hours).ToArray(), winter.PowerCuts);
        var closed = Without([.. Enumerable.Range(0, winter.Hours).Select(h => Dark(winter.SunZenithDeg, h))], winter.CoverLeftOpen);
        double Dim(int hour) => Math.Max(Dark(winter.SunZenithDeg, hour), Share(winter.GlobalWPerM2, hour, CoverLight.OnWPerM2, below: true));
        var dim = Without([.. Enumerable.Range(0, winter.Hours).Select(Dim)], winter.CoverLeftOpen);
        // The same all month: asked of the almanac once.
        (double Opens, double Closes)?[] timer = [.. Enumerable.Range(1, 12).Select(month => Dawn.TimerHours(winter.Place, month))];
        var clock = Without([.. Enumerable.Range(0, winter.Hours).Select(h => Clocked(winter, h, timer))], winter.CoverLeftOpen);
        var hours = new HourForcing[winter.Hours];
        for (var h = 0; h < hours.Length; h++)
        {
            hours[h] = new HourForcing(
                winter.AirC[h],
                winter.SkyC[h],
                winter.WindMPerS[h] * assumptions.RoofWindFactor,
                houseSunW[h],
                GroundAtC(winter, h, depth, assumptions),
                assumptions.AirVolumetricCapacityJPerM3K * Density(winter.AirC[h], winter.Place.ElevationM),
                closed[h],
                power[h])
            {
                Dim = dim[h],
                Clock = clock[h],
                // By day the sun keeps it from being colder than the air.
                AroundBelowK = Dark(winter.SunZenithDeg, h)
                    * GroundOutside.BelowAirK(winter.AirC[h], winter.SkyC[h], winter.WindMPerS[h] * assumptions.RoofWindFactor, assumptions),
                IsCheap = isCheapHour?.Invoke(winter.Start.AddHours(h).Hour) ?? false,
            };
        }

        return new WinterForcing(winter, assumptions, hours, floorBelowM);
    }

    /// <summary>
    /// Share of an hour in which the sun is down, 0 to 1: its zenith angle runs straight between the middles of the hours. A night cover is closed so long.
    /// </summary>
    internal static double Dark(double[] zenithDeg, int hour) => Share(zenithDeg, hour, Horizon, below: false);

    /// <summary>Share of an hour in which a timer has the cover closed, 0 to 1; where the sun never rises or sets, as by hand.</summary>
    private static double Clocked(Winter winter, int hour, (double Opens, double Closes)?[] timer)
    {
        var time = winter.Start.AddHours(hour);
        if (timer[time.Month - 1] is not var (opens, closes))
            return Dark(winter.SunZenithDeg, hour);
        var from = time.TimeOfDay.TotalHours;
        return 1 - Math.Max(0, Math.Min(closes, from + 1) - Math.Max(opens, from));
    }

    // Share of an hour in which what runs straight between the middles of hours lies above a limit, or below it.
    private static double Share(double[] of, int hour, double limit, bool below)
    {
        var now = of[hour];
        var (start, end) = ((of[Math.Max(0, hour - 1)] + now) / 2, (now + of[Math.Min(of.Length - 1, hour + 1)]) / 2);
        var above = (Above(start, now, limit) + Above(now, end, limit)) / 2;
        return below ? 1 - above : above;
    }

    private static double Above(double from, double to, double limit)
    {
        var (low, high) = (Math.Min(from, to), Math.Max(from, to));
        return high <= limit ? 0 : low >= limit ? 1 : (high - limit) / (high - low);
    }

    private static double[] Without(double[] of, IReadOnlyList<HourSpan> spans)
    {
        foreach (var span in spans)
            of.AsSpan(Math.Clamp(span.First, 0, of.Length), Math.Clamp(span.Count, 0, of.Length - Math.Clamp(span.First, 0, of.Length))).Clear();
        return of;
    }

    /// <summary>Density of air over that at 10 °C and the sea, standard atmosphere: (1 − 2.25577e-5 z)^5.25588 · 283.15/T.</summary>
    /// <param name="airC">Air [°C].</param>
    /// <param name="elevationM">Height above the sea [m], −500 to 9 000.</param>
    public static double Density(double airC, double elevationM) => Math.Pow(1 - 2.25577e-5 * elevationM, 5.25588) * ReferenceAirK / (airC + Temperature.ZeroCelsiusK);

    /// <summary>Undisturbed ground at a depth at the start of an hour [°C].</summary>
    internal static double GroundAtC(Winter winter, int hour, double depthM, SeasonAssumptions assumptions)
    {
        var time = winter.Start.AddHours(hour);
        return winter.Ground.TemperatureC(depthM, time.DayOfYear + time.Hour / 24.0, assumptions.SoilConductivityWPerMK / assumptions.SoilVolumetricCapacityJPerM3K);
    }
}
