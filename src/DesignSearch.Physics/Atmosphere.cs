namespace DesignSearch.Physics;

/// <summary>The air above a place.</summary>
public static class Atmosphere
{
    /// <summary>Pressure of the standard atmosphere at the sea [hPa]: 1013.25 (ISO 2533).</summary>
    public const double SeaLevelHPa = 1013.25;

    // Fall of the pressure with height, ISO 2533.
    private const double PerM = 2.25577e-5;
    private const double Exponent = 5.25588;

    /// <summary>Pressure of the standard atmosphere at a height [hPa], ISO 2533.</summary>
    /// <param name="elevationM">Above the sea [m], -500 to 9000.</param>
    public static double PressureHPa(double elevationM) => SeaLevelHPa * Math.Pow(1 - (PerM * elevationM), Exponent);
}
