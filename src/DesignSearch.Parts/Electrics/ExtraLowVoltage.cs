namespace DesignSearch.Parts.Electrics;

/// <summary>The limits of extra-low voltage after the IEC vocabulary; local rules for wet places are stricter.</summary>
public static class ExtraLowVoltage
{
    /// <summary>Largest alternating voltage, root mean square [V].</summary>
    public const double AlternatingV = 50;

    /// <summary>Largest ripple-free direct voltage [V].</summary>
    public const double DirectV = 120;

    /// <summary>Whether a voltage is extra-low.</summary>
    /// <param name="volts">Voltage [V], 0 or more.</param>
    /// <param name="isAlternating">Alternating, or direct and ripple-free.</param>
    public static bool Includes(double volts, bool isAlternating) => volts <= (isAlternating ? AlternatingV : DirectV);
}
