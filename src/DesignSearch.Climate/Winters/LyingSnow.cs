namespace DesignSearch.Climate.Winters;

/// <summary>Days of a winter that bring snow, and whether somebody brushes it off roof and collector.</summary>
/// <remarks>
/// Weather files say nothing of snow as a rule. A day is taken to bring it where its mean air is at most so warm (half of what falls is snow at 1 °C, the mean of
/// 17 000 stations of the northern half of the world: Jennings et al. 2018, Nature Communications 9:1148), the sky is dull (clearness under 0.45) and the air is
/// damp (dew point at most 6 K below it). In five open typical years, November to March, 67 days had three hours of snow or more; this rule names 84, of which 30
/// are the same: about as many, somewhat too many, and often others.
/// </remarks>
/// <param name="FallsOnDay">True for each day from the winter's start that brings snow; it falls through all of it.</param>
/// <param name="IsBrushed">True where it is brushed off at nine the next morning, clock of the place; else it lies until it slides or melts.</param>
public sealed record LyingSnow(bool[] FallsOnDay, bool IsBrushed)
{
    /// <summary>Mean air of a day up to which it snows, where nothing else is said [°C].</summary>
    public const double UsualBelowC = 1;

    internal const int HoursPerDay = 24;
    private const double DullClearness = 0.45;
    private const double DampK = 6;

    /// <summary>The snow of a winter by its weather.</summary>
    /// <param name="winter">The winter.</param>
    /// <param name="isBrushed">True where it is brushed off the next morning.</param>
    /// <param name="belowC">Mean air of a day up to which it snows [°C].</param>
    public static LyingSnow On(Winter winter, bool isBrushed, double belowC = UsualBelowC)
    {
        ArgumentNullException.ThrowIfNull(winter);
        var clearness = WinterBuilder.DailyClearness(winter.Place, winter.Start, winter.GlobalWPerM2);
        var falls = new bool[clearness.Length];
        for (var d = 0; d < falls.Length; d++)
        {
            var (first, after) = (HoursPerDay * d, Math.Min(HoursPerDay * (d + 1), winter.Hours));
            var air = winter.AirC[first..after].Average();
            falls[d] = clearness[d] < DullClearness && air <= belowC && air - winter.DewPointC[first..after].Average() <= DampK;
        }

        return new(falls, isBrushed);
    }

    /// <summary>Days of the season that bring snow, warm-up not counted.</summary>
    /// <param name="winter">The winter that it is the snow of.</param>
    public int Days(Winter winter)
    {
        ArgumentNullException.ThrowIfNull(winter);
        return FallsOnDay.Skip(winter.WarmUpHours / HoursPerDay).Count(falls => falls);
    }
}
