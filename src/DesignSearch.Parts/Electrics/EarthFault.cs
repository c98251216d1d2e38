namespace DesignSearch.Parts.Electrics;

/// <summary>
/// Whether protection trips on a dead short or a fault to earth, after IEC 60364-4-41. A licensed person measures and decides.
/// </summary>
public static class EarthFault
{
    /// <summary>Share of its voltage that the mains is sure to have.</summary>
    public const double LeastVoltage = 0.95;

    // Voltage of touched metal that may last [V].
    private const double TouchV = 50;

    /// <summary>Impedance of the loop out to the end of a cable and back, both conductors of one section [Ω].</summary>
    /// <param name="beforeOhm">The loop before the cable [Ω].</param>
    /// <param name="metres">Length of the cable one way [m].</param>
    /// <param name="ohmPerM">Resistance of one conductor, warm [Ω/m].</param>
    public static double LoopOhm(double beforeOhm, double metres, double ohmPerM) => beforeOhm + (2 * metres * ohmPerM);

    /// <summary>Largest loop impedance at which a breaker trips at once [Ω].</summary>
    /// <param name="volts">Voltage to earth [V].</param>
    /// <param name="breakerA">Its rating [A], above 0.</param>
    /// <param name="tripsAt">Times its rating at which it is sure to trip: 5 for curve B, 10 for C (IEC 60898).</param>
    public static double LargestLoopOhm(double volts, double breakerA, double tripsAt) => LeastVoltage * volts / (breakerA * tripsAt);

    /// <summary>Current of a dead short [A].</summary>
    /// <param name="volts">Voltage to earth [V].</param>
    /// <param name="loopOhm">Impedance of the loop [Ω], above 0.</param>
    public static double ShortA(double volts, double loopOhm) => volts / loopOhm;

    /// <summary>Largest resistance of an earth rod behind a residual-current device [Ω].</summary>
    /// <param name="residualA">Its residual current [A], above 0.</param>
    public static double LargestRodOhm(double residualA) => TouchV / residualA;
}
