namespace DesignSearch.Parts.Mechanics;

/// <summary>Worm gears: whether they hold by themselves.</summary>
public static class WormGear
{
    /// <summary>Below this efficiency a worm gear holds by itself; vibration can still defeat it (a gearbox maker's published advice).</summary>
    public const double LocksBelow = 0.45;

    /// <summary>Above this efficiency a worm gear does not hold by itself; between the two it is uncertain.</summary>
    public const double SlipsAbove = 0.55;
}
