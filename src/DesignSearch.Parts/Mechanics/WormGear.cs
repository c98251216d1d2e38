namespace DesignSearch.Parts.Mechanics;

/// <summary>Worm gears: efficiency and whether they hold by themselves.</summary>
public static class WormGear
{
    /// <summary>Below this efficiency a worm gear holds by itself; vibration can still defeat it (a gearbox maker's published advice).</summary>
    public const double LocksBelow = 0.45;

    /// <summary>Above this efficiency a worm gear does not hold by itself; between the two it is uncertain.</summary>
    public const double SlipsAbove = 0.55;

    /// <summary>Efficiency with the worm driving: (cos φ − µ tan λ) / (cos φ + µ cot λ).</summary>
    /// <param name="leadAngleDeg">Lead angle λ [°], above 0 and below 45.</param>
    /// <param name="friction">Friction coefficient µ, 0 or more.</param>
    /// <param name="pressureAngleDeg">Normal pressure angle φ of the thread [°].</param>
    public static double Efficiency(double leadAngleDeg, double friction, double pressureAngleDeg = 20)
    {
        CheckLead(leadAngleDeg);
        var tan = Math.Tan(Radians(leadAngleDeg));
        var cos = Math.Cos(Radians(pressureAngleDeg));
        return (cos - (friction * tan)) / (cos + (friction / tan));
    }

    /// <summary>The same for a square thread: tan λ / tan(λ + ρ) with ρ = arctan µ.</summary>
    /// <param name="leadAngleDeg">Lead angle λ [°], above 0 and below 45.</param>
    /// <param name="friction">Friction coefficient µ, 0 or more.</param>
    public static double SimpleEfficiency(double leadAngleDeg, double friction)
    {
        CheckLead(leadAngleDeg);
        return Math.Tan(Radians(leadAngleDeg)) / Math.Tan(Radians(leadAngleDeg) + Math.Atan(friction));
    }

    /// <summary>Whether the thread holds at rest: the lead angle lies below the friction angle.</summary>
    /// <param name="leadAngleDeg">Lead angle [°].</param>
    /// <param name="friction">Friction coefficient, 0 or more.</param>
    public static bool HoldsAtRest(double leadAngleDeg, double friction) => Radians(leadAngleDeg) < Math.Atan(friction);

    private static void CheckLead(double leadAngleDeg)
    {
        if (leadAngleDeg is not (> 0 and < 45))
            throw new ArgumentOutOfRangeException(nameof(leadAngleDeg), leadAngleDeg, "A lead angle lies between 0 and 45 degrees.");
    }

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
