namespace DesignSearch.Physics;

/// <summary>Scales of temperature.</summary>
public static class Temperature
{
    /// <summary>0 °C on the absolute scale: 273.15 K, exactly (SI Brochure, 9th edition 2019, section 2.3.1).</summary>
    public const double ZeroCelsiusK = 273.15;
}
