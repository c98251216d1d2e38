namespace DesignSearch.Climate.Sun;

/// <summary>The earth's heliocentric longitude, latitude and distance from a shortened planetary series.</summary>
/// <remarks>
/// Largest terms of VSOP87 as tabulated by J. Meeus, Astronomical Algorithms (1991), appendix III, after Bretagnon and Francou (1988).
/// Terms under about 2e-6 rad are left out; together they stay below 0.001°.
/// </remarks>
internal static class EarthOrbit
{
    // Amplitude [1e-8 rad or 1e-8 au], phase [rad], rate [rad per thousand Julian years].
    private static readonly double[] Longitude0 =
    [
        175347046, 0, 0, 3341656, 4.6692568, 6283.0758500, 34894, 4.62610, 12566.15170, 3497, 2.7441, 5753.3849, 3418, 2.8289, 3.5231,
        3136, 3.6277, 77713.7715, 2676, 4.4181, 7860.4194, 2343, 6.1352, 3930.2097, 1324, 0.7425, 11506.7698, 1273, 2.0371, 529.6910,
        1199, 1.1096, 1577.3435, 990, 5.233, 5884.927, 902, 2.045, 26.298, 857, 3.508, 398.149, 780, 1.179, 5223.694,
        753, 2.533, 5507.553, 505, 4.583, 18849.228, 492, 4.205, 775.523, 357, 2.920, 0.067, 317, 5.849, 11790.629,
        284, 1.899, 796.298, 271, 0.315, 10977.079, 243, 0.345, 5486.778, 206, 4.806, 2544.314, 205, 1.869, 5573.143, 202, 2.458, 6069.777,
    ];

    private static readonly double[] Longitude1 =
    [
        628331966747, 0, 0, 206059, 2.678235, 6283.075850, 4303, 2.6351, 12566.1517, 425, 1.590, 3.523, 119, 5.796, 26.298, 109, 2.966, 1577.344,
    ];

    private static readonly double[] Longitude2 = [52919, 0, 0, 8720, 1.0721, 6283.0758, 309, 0.867, 12566.152];

    private static readonly double[] Latitude0 = [280, 3.199, 84334.662, 102, 5.422, 5507.553];

    private static readonly double[] Distance0 =
    [
        100013989, 0, 0, 1670700, 3.0984635, 6283.0758500, 13956, 3.05525, 12566.15170, 3084, 5.1985, 77713.7715, 1628, 1.1739, 5753.3849,
        1576, 2.8469, 7860.4194, 925, 5.453, 11506.770, 542, 4.564, 3930.210, 472, 3.661, 5884.927, 346, 0.964, 5507.553, 329, 5.900, 5223.694,
    ];

    private static readonly double[] Distance1 = [103019, 1.107490, 6283.075850, 1721, 1.0644, 12566.1517];

    /// <summary>Heliocentric longitude of the earth [rad], not folded.</summary>
    /// <param name="millennia">Dynamical time from 2000-01-01 12:00 in thousands of Julian years.</param>
    public static double LongitudeRad(double millennia) =>
        1e-8 * (Sum(Longitude0, millennia) + millennia * (Sum(Longitude1, millennia) + millennia * Sum(Longitude2, millennia)));

    /// <summary>Heliocentric latitude of the earth [rad].</summary>
    /// <param name="millennia">As for the longitude.</param>
    public static double LatitudeRad(double millennia) => 1e-8 * Sum(Latitude0, millennia);

    /// <summary>Distance of earth and sun [au].</summary>
    /// <param name="millennia">As for the longitude.</param>
    public static double DistanceAu(double millennia) => 1e-8 * (Sum(Distance0, millennia) + millennia * Sum(Distance1, millennia));

    private static double Sum(double[] terms, double millennia)
    {
        var sum = 0.0;
        for (var i = 0; i < terms.Length; i += 3)
            sum += terms[i] * Math.Cos(terms[i + 1] + terms[i + 2] * millennia);
        return sum;
    }
}
