namespace DesignSearch.Parts.Electrics;

/// <summary>Largest direct-current resistance of plain copper conductors after IEC 60228.</summary>
public static class CopperResistance
{
    /// <summary>Copper of a loaded cable with the usual insulation [°C] (IEC 60364-5-52).</summary>
    public const double WarmC = 70;

    private const double PerKelvin = 0.00393;

    private static readonly (double Mm2, double Fixed, double Flexible)[] OhmPerKm =
    [
        (0.5, 36.0, 39.0), (0.75, 24.5, 26.0), (1, 18.1, 19.5), (1.5, 12.1, 13.3), (2.5, 7.41, 7.98),
        (4, 4.61, 4.95), (6, 3.08, 3.30), (10, 1.83, 1.91), (16, 1.15, 1.21), (25, 0.727, 0.780),
    ];

    /// <summary>Whether the table has a row for this conductor.</summary>
    /// <param name="sectionMm2">Cross-section [mm²].</param>
    /// <param name="conductorClass">1 or 2 for fixed wiring, 5 for flexible.</param>
    public static bool IsListed(double sectionMm2, int conductorClass) => conductorClass is 1 or 2 or 5 && RowOf(sectionMm2) >= 0;

    /// <summary>Resistance per metre of one conductor [Ω/m].</summary>
    /// <param name="sectionMm2">Cross-section [mm²], 0.5 to 25 as listed.</param>
    /// <param name="conductorClass">1 or 2 for fixed wiring, 5 for flexible.</param>
    /// <param name="temperatureC">Temperature of the copper [°C].</param>
    /// <exception cref="ArgumentOutOfRangeException">The table has no such conductor.</exception>
    public static double OhmPerM(double sectionMm2, int conductorClass, double temperatureC = 20)
    {
        if (!IsListed(sectionMm2, conductorClass))
            throw new ArgumentOutOfRangeException(nameof(sectionMm2), sectionMm2, "IEC 60228 lists no such conductor of this class.");
        var row = OhmPerKm[RowOf(sectionMm2)];
        return (conductorClass == 5 ? row.Flexible : row.Fixed) / 1000 * (1 + (PerKelvin * (temperatureC - 20)));
    }

    private static int RowOf(double sectionMm2)
    {
        for (var i = 0; i < OhmPerKm.Length; i++)
        {
            if (OhmPerKm[i].Mm2 == sectionMm2)
                return i;
        }

        return -1;
    }
}
