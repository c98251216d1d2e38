namespace DesignSearch.Climate.Winters;

/// <summary>The dates that count, as month and day; the end may lie in the next year.</summary>
/// <param name="StartMonth">1 to 12.</param>
/// <param name="StartDay">1 to 31.</param>
/// <param name="EndMonth">1 to 12.</param>
/// <param name="EndDay">Last day that counts, 1 to 31.</param>
/// <param name="WarmUpDays">Uncounted days before the start.</param>
public sealed record SeasonDates(int StartMonth, int StartDay, int EndMonth, int EndDay, int WarmUpDays = 30);
