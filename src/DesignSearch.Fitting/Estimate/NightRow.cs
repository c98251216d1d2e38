namespace DesignSearch.Fitting.Estimate;

/// <summary>One night of a log with what the fit says of it.</summary>
/// <param name="Evening">The day it begins on.</param>
/// <param name="First">Its first hour, from the start of the log.</param>
/// <param name="Count">Its hours.</param>
/// <param name="Use">What became of it.</param>
/// <param name="OutsideC">Air outside, mean [°C].</param>
/// <param name="InsideC">Air inside, mean [°C].</param>
/// <param name="PredictedC">Air inside as the fit has it, mean [°C].</param>
/// <param name="HeatW">Heat, mean [W].</param>
/// <param name="HeldOutC">Air inside as a fit has it that did not see this night, mean [°C]; NaN for a night that was not held out.</param>
public sealed record NightRow(
    DateTime Evening, int First, int Count, NightUse Use, double OutsideC, double InsideC, double PredictedC, double HeatW, double HeldOutC)
{
    /// <summary>Inside less outside [K].</summary>
    public double RiseK => InsideC - OutsideC;

    /// <summary>Measured less predicted [K].</summary>
    public double MissK => InsideC - PredictedC;
}
