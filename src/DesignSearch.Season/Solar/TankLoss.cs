namespace DesignSearch.Season.Solar;

/// <summary>Standing loss of storage tanks by their energy class.</summary>
/// <remarks>Source: Commission Delegated Regulation (EU) 812/2013, Annex II; test difference 45 K after EN 12897 (from memory).</remarks>
public static class TankLoss
{
    private const double TestDifferenceK = 45;

    /// <summary>Upper limit of the standing loss of a class [W]: a + b V^0.4.</summary>
    /// <param name="energyClass">"A+", "A" … "F".</param>
    /// <param name="volumeL">Volume V [L], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such class.</exception>
    public static double StandingW(string energyClass, double volumeL)
    {
        var (a, b) = energyClass switch
        {
            "A+" => (5.5, 3.16),
            "A" => (8.5, 4.25),
            "B" => (12, 5.93),
            "C" => (16.66, 8.33),
            "D" => (21, 10.33),
            "E" => (26, 13.66),
            "F" => (31, 16.66),
            _ => throw new ArgumentOutOfRangeException(nameof(energyClass), energyClass, "must be one of A+, A, B, C, D, E, F"),
        };
        return a + b * Math.Pow(volumeL, 0.4);
    }

    /// <summary>Loss of the same tank per kelvin [W/K].</summary>
    /// <inheritdoc cref="StandingW"/>
    public static double WPerK(string energyClass, double volumeL) => StandingW(energyClass, volumeL) / TestDifferenceK;
}
