using DesignSearch.Fitting.Model;

namespace DesignSearch.Fitting.Logs;

/// <summary>Looks for a sensor that does not hang in the air it is to tell.</summary>
internal static class SensorCheck
{
    // Air in the open does not warm faster; a sensor that the morning sun strikes does (own choice) [K/h].
    private const double OutsideRiseK = 7;
    private const double InsideRiseK = 22;
    private const double InsideMostC = 60;
    private const int Days = 2;

    // No store takes heat from air so fast: pots and beds are fitted with 3 to 16, a sensor of a pot with 20 to 240 (eight drawn houses) [W/(m²K) of floor].
    private const double PotWPerM2K = 22;

    /// <summary>True where the sensor outside stands in the sun on some mornings.</summary>
    public static bool OutsideInSun(HouseLog log) => Rises(log.OutsideC, OutsideRiseK) >= Days;

    /// <summary>True where the sensor inside does.</summary>
    public static bool InsideInSun(HouseLog log) => Rises(log.InsideC, InsideRiseK) >= Days || log.InsideC.Count(c => c > InsideMostC) >= Days;

    /// <summary>True where the air inside hardly moves when the heater does: the sensor lies in a pot, in the soil or in a box.</summary>
    /// <param name="point">What was fitted.</param>
    public static bool InsideIsSlow(FitPoint point) => point.CouplingWPerM2K > PotWPerM2K;

    private static int Rises(double[] air, double mostK)
    {
        var days = new HashSet<int>();
        for (var h = 1; h < air.Length; h++)
        {
            if (air[h] - air[h - 1] > mostK)
                days.Add(h / 24);
        }

        return days.Count;
    }
}
