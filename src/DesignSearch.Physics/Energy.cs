namespace DesignSearch.Physics;

/// <summary>Units of energy.</summary>
public static class Energy
{
    /// <summary>One kilowatt hour [J]: 3.6e6, exactly.</summary>
    public const double JoulesPerKwh = 3.6e6;
}
