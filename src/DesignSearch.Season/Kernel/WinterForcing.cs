using DesignSearch.Climate.Winters;
using DesignSearch.Physics;
using DesignSearch.Season.Assumptions;

namespace DesignSearch.Season.Kernel;

/// <summary>One winter made ready for many layouts of the same house; immutable, shared by all threads.</summary>
public sealed class WinterForcing
{
    private const double ReferenceAirK = 283.15;

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
        var depth = floorBelowM + assumptions.SoilSurfaceLayerM + assumptions.SoilMiddleLayerM + assumptions.SoilDeepLayerM;
        var power = Enumerable.Repeat(1.0, winter.Hours).ToArray();
        foreach (var cut in winter.PowerCuts)
            power.AsSpan(Math.Clamp(cut.First, 0, power.Length), Math.Clamp(cut.Count, 0, power.Length - Math.Clamp(cut.First, 0, power.Length))).Clear();
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
                winter.SunZenithDeg[h] >= 90,
                power[h])
            {
                IsCheap = isCheapHour?.Invoke(winter.Start.AddHours(h).Hour) ?? false,
            };
        }

        return new WinterForcing(winter, assumptions, hours, floorBelowM);
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
