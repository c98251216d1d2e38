namespace DesignSearch.Season.House;

/// <summary>A night in which a house is held at one temperature until nothing moves.</summary>
/// <param name="InsideC">Air inside [°C].</param>
/// <param name="OutsideC">Air outside [°C], below that.</param>
/// <param name="SkyBelowK">Sky below the air outside [K].</param>
/// <param name="WindMPerS">Wind at 10 m [m/s].</param>
public sealed record HeldNight(double InsideC, double OutsideC, double SkyBelowK, double WindMPerS)
{
    /// <summary>What a U-value of greenhouse practice is taken to be stated for: a heated house under a clear sky in a moderate wind (own choice).</summary>
    public static HeldNight OfPractice { get; } = new(15, 0, 20, 4);

    /// <summary>A hard frosty night: the sky clear, next to no wind.</summary>
    public static HeldNight Frosty { get; } = new(5, -10, 20, 1.5);
}
