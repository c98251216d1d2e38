using DesignSearch.Climate;

namespace DesignSearch.Season;

/// <summary>One winter made ready for many layouts of the same house; immutable, shared by all threads.</summary>
public sealed class WinterForcing
{
    private WinterForcing(Winter winter, SeasonAssumptions assumptions) => (Winter, Assumptions) = (winter, assumptions);

    /// <summary>The winter.</summary>
    public Winter Winter { get; }

    /// <summary>The numbers chosen for it.</summary>
    public SeasonAssumptions Assumptions { get; }

    /// <summary>Sun that passes the bare cover and stays as sensible heat [W].</summary>
    internal double[] SunW { get; private init; } = [];

    /// <summary>Convective film outside [W/(m²K)].</summary>
    internal double[] FilmWPerM2K { get; private init; } = [];

    /// <summary>Wind at the roof [m/s].</summary>
    internal double[] RoofWindMPerS { get; private init; } = [];

    /// <summary>Undisturbed ground below the soil layers [°C].</summary>
    internal double[] GroundC { get; private init; } = [];

    /// <summary>Makes a winter ready.</summary>
    /// <param name="winter">The winter.</param>
    /// <param name="houseSunW">Sun that passes the bare cover, hour mean [W], as many entries as the winter has hours.</param>
    /// <param name="assumptions">The numbers chosen.</param>
    /// <exception cref="ArgumentException">The sun has another number of hours than the winter.</exception>
    public static WinterForcing Prepare(Winter winter, double[] houseSunW, SeasonAssumptions assumptions)
    {
        ArgumentNullException.ThrowIfNull(winter);
        ArgumentNullException.ThrowIfNull(houseSunW);
        ArgumentNullException.ThrowIfNull(assumptions);
        if (houseSunW.Length != winter.Hours)
            throw new ArgumentException($"The sun has {houseSunW.Length} hours, the winter {winter.Hours}.", nameof(houseSunW));
        var wind = Array.ConvertAll(winter.WindMPerS, v => v * assumptions.RoofWindFactor);
        var depth = assumptions.SoilSurfaceLayerM + assumptions.SoilMiddleLayerM + assumptions.SoilDeepLayerM;
        var ground = new double[winter.Hours];
        for (var h = 0; h < ground.Length; h++)
            ground[h] = GroundAtC(winter, h, depth, assumptions);
        return new WinterForcing(winter, assumptions)
        {
            SunW = Array.ConvertAll(houseSunW, w => w * assumptions.SunSensibleShare),
            RoofWindMPerS = wind,
            FilmWPerM2K = Array.ConvertAll(wind, v => assumptions.OutsideFilmStillWPerM2K + assumptions.OutsideFilmWindJPerM3K * v),
            GroundC = ground,
        };
    }

    /// <summary>Undisturbed ground at a depth at the start of an hour [°C].</summary>
    internal static double GroundAtC(Winter winter, int hour, double depthM, SeasonAssumptions assumptions)
    {
        var time = winter.Start.AddHours(hour);
        return winter.Ground.TemperatureC(depthM, time.DayOfYear + time.Hour / 24.0, assumptions.SoilConductivityWPerMK / assumptions.SoilVolumetricCapacityJPerM3K);
    }
}
