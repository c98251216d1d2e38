namespace DesignSearch.Season;

/// <summary>A fully mixed tank, exactly.</summary>
public static class MixedTank
{
    /// <summary>Temperature after a time with a constant power [°C]: Ta + P/UA + (T0 − Ta − P/UA) exp(−t UA/C).</summary>
    /// <param name="startC">T0 [°C].</param>
    /// <param name="ambientC">Ta [°C].</param>
    /// <param name="powerW">P [W].</param>
    /// <param name="lossWPerK">UA [W/K], above 0.</param>
    /// <param name="capacityJPerK">C [J/K].</param>
    /// <param name="seconds">t [s].</param>
    public static double AfterC(double startC, double ambientC, double powerW, double lossWPerK, double capacityJPerK, double seconds)
    {
        var rest = ambientC + powerW / lossWPerK;
        return rest + (startC - rest) * Math.Exp(-seconds * lossWPerK / capacityJPerK);
    }
}
