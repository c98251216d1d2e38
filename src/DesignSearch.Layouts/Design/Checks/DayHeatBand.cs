namespace DesignSearch.Layouts.Design.Checks;

/// <summary>Where a thermostat may lie that takes day heat out of the house: clear of everything that heats it, and below the vents.</summary>
/// <param name="LeastC">Its lowest place [°C].</param>
/// <param name="MostC">Its highest [°C].</param>
internal readonly record struct DayHeatBand(double LeastC, double MostC)
{
    // Bought heat must not be carried off, nor day heat let out (common practice, no source).
    private const double AboveHeatersK = 3;
    private const double BelowVentsK = 2;

    /// <summary>That of a plant.</summary>
    /// <param name="built">The plant.</param>
    public static DayHeatBand Of(BuiltLayout built) =>
        new(built.Systems.Max(s => s.HeatsToC) + AboveHeatersK, built.Installation.House.VentAboveC - BelowVentsK);

    /// <summary>Whether a set point lies in it.</summary>
    /// <param name="setC">The set point [°C].</param>
    public bool Holds(double setC) => setC >= LeastC && setC <= MostC;

    /// <summary>What it has to spare, over the whole allowance; below 0 outside.</summary>
    /// <param name="setC">The set point [°C].</param>
    public double Spare(double setC) => Math.Min(setC - LeastC, MostC - setC) / AboveHeatersK;
}
