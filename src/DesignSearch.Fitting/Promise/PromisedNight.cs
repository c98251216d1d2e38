namespace DesignSearch.Fitting.Promise;

/// <summary>A night of a house that was built: what was promised for that air outside, and what came.</summary>
/// <param name="Evening">The day it begins on.</param>
/// <param name="OutsideC">Air outside, lowest hour [°C].</param>
/// <param name="PromisedC">Lowest hour inside, by the mean of the weathers [°C].</param>
/// <param name="LeastC">The least of it under any of them [°C].</param>
/// <param name="MostC">The most of it [°C].</param>
/// <param name="CameC">Lowest hour that was measured [°C].</param>
/// <param name="MissK">Measured less promised, mean of the night [K].</param>
public sealed record PromisedNight(DateTime Evening, double OutsideC, double PromisedC, double LeastC, double MostC, double CameC, double MissK)
{
    /// <summary>True where what came lies within what the weathers allow and the logger tells, half a kelvin either way.</summary>
    public bool IsKept => CameC >= LeastC - 0.5;
}
