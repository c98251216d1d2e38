namespace DesignSearch.Season.Solar;

/// <summary>A fully mixed tank in closed form.</summary>
public static class MixedTank
{
    /// <summary>Temperature after a time of loss, and of constant heating where there is any [°C].</summary>
    /// <param name="startC">At the start [°C].</param>
    /// <param name="surroundingsC">Around the tank [°C].</param>
    /// <param name="capacityJPerK">Heat capacity [J/K], above 0.</param>
    /// <param name="lossWPerK">Loss [W/K], above 0.</param>
    /// <param name="seconds">Time passed [s].</param>
    /// <param name="heatW">Constant heat into the tank [W].</param>
    public static double CoolDownC(double startC, double surroundingsC, double capacityJPerK, double lossWPerK, double seconds, double heatW = 0)
    {
        var end = surroundingsC + heatW / lossWPerK;
        return end + (startC - end) * Math.Exp(-seconds * lossWPerK / capacityJPerK);
    }
}
