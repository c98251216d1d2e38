namespace DesignSearch.Physics;

/// <summary>Weight on the earth.</summary>
public static class Gravity
{
    /// <summary>Standard acceleration of free fall [m/s²]: 9.80665, exactly (third General Conference on Weights and Measures, 1901).</summary>
    public const double StandardMPerS2 = 9.80665;
}
