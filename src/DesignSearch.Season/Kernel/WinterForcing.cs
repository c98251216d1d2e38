using DesignSearch.Climate;

namespace DesignSearch.Season;

/// <summary>A winter made ready for the kernel once, and shared by all layouts.</summary>
public sealed class WinterForcing
{
    private const double DarkWPerM2 = 10;

    private WinterForcing(Winter winter, double[] houseSunW, SeasonAssumptions assumptions, bool[] isNight, double[] groundC)
    {
        (Winter, HouseSunW, Assumptions, IsNight, GroundC) = (winter, houseSunW, assumptions, isNight, groundC);
    }

    /// <summary>The winter.</summary>
    public Winter Winter { get; }

    /// <summary>Sun through the bare cover [W].</summary>
    internal double[] HouseSunW { get; }

    internal SeasonAssumptions Assumptions { get; }

    /// <summary>Hours in which a light sensor finds it dark: night covers are closed.</summary>
    internal bool[] IsNight { get; }

    /// <summary>Undisturbed ground at <see cref="HouseBlock.GroundDepthM"/> [°C].</summary>
    internal double[] GroundC { get; }

    /// <summary>Makes a winter ready.</summary>
    /// <param name="winter">The winter.</param>
    /// <param name="houseSunW">Sun through the bare cover, one entry an hour [W]; see <see cref="HouseSun"/>.</param>
    /// <param name="assumptions">The assumptions.</param>
    /// <exception cref="ArgumentException">The lengths differ.</exception>
    public static WinterForcing Prepare(Winter winter, double[] houseSunW, SeasonAssumptions assumptions)
    {
        if (houseSunW.Length != winter.Hours)
            throw new ArgumentException("The sun needs one entry for each hour of the winter.", nameof(houseSunW));
        var night = new bool[winter.Hours];
        var ground = new double[winter.Hours];
        var diffusivity = assumptions.Value("soil_conductivity_w_per_mk") / assumptions.Value("soil_capacity_j_per_m3k");
        for (var h = 0; h < night.Length; h++)
        {
            night[h] = winter.GlobalWPerM2[h] < DarkWPerM2;
            ground[h] = winter.Ground.TemperatureC(HouseBlock.GroundDepthM, winter.Start.DayOfYear + h / 24.0, diffusivity);
        }

        return new WinterForcing(winter, houseSunW, assumptions, night, ground);
    }
}
