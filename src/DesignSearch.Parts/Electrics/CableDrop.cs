namespace DesignSearch.Parts.Electrics;

/// <summary>Voltage lost in a cable of two conductors.</summary>
public static class CableDrop
{
    /// <summary>Largest drop that is usually accepted, as a share of the nominal voltage (common practice, no source).</summary>
    public const double UsualLimit = 0.05;

    /// <summary>Loss out and back: 2 L I R' [V].</summary>
    /// <param name="lengthM">Length one way [m], 0 or more.</param>
    /// <param name="currentA">Current [A], 0 or more.</param>
    /// <param name="ohmPerM">Resistance of one conductor [Ω/m]; see <see cref="CopperResistance"/>.</param>
    public static double Volts(double lengthM, double currentA, double ohmPerM) => 2 * lengthM * currentA * ohmPerM;

    /// <summary>Resistance of one conductor of a cable of the catalogue [Ω/m].</summary>
    /// <param name="cable">The cable.</param>
    /// <param name="copperC">Temperature of the copper [°C].</param>
    public static double OhmPerM(Cable cable, double copperC = CopperResistance.WarmC)
    {
        ArgumentNullException.ThrowIfNull(cable);
        return CopperResistance.OhmPerM(cable.SectionMm2, cable.ConductorClass, copperC);
    }

    /// <summary>The same in a cable of the catalogue [V].</summary>
    /// <param name="cable">The cable.</param>
    /// <param name="lengthM">Length one way [m], 0 or more.</param>
    /// <param name="currentA">Current [A], 0 or more.</param>
    /// <param name="copperC">Temperature of the copper [°C].</param>
    public static double Volts(Cable cable, double lengthM, double currentA, double copperC = CopperResistance.WarmC) =>
        Volts(lengthM, currentA, OhmPerM(cable, copperC));
}
