using DesignSearch.Climate.Winters;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>Asks whether the season that counts holds the coldest month of the place: what holds in any other half of the year says nothing of the winter.</summary>
internal static class SeasonDoubt
{
    // The middle of a month stands for it.
    private const int Middle = 15;

    // A month hardly warmer than the coldest does for it [K].
    private const double AsCold = 1;

    /// <summary>A sentence where the coldest month that is known is left out; null where it is counted.</summary>
    public static string? Of(Scenario scenario)
    {
        IEnumerable<(int Month, double MeanC)> months = scenario.Climate switch
        {
            { Record: { } record } => record.Summary.Months.Select(m => (m.Month, m.MeanC)),
            { Monthly: { } monthly } => monthly.Months.Select((m, i) => (i + 1, m.MeanC)),
            _ => [],
        };
        var known = months.Where(m => double.IsFinite(m.MeanC)).ToList();
        if (known.Count == 0)
            return null;
        var coldest = known.MinBy(m => m.MeanC);
        return known.Any(m => m.MeanC < coldest.MeanC + AsCold && IsCounted(m.Month, scenario.Season))
            ? null
            : SeasonWords.LeavesOut(scenario.Season, coldest.Month, coldest.MeanC);
    }

    private static bool IsCounted(int month, SeasonDates season)
    {
        var (first, last, middle) = ((season.StartMonth, season.StartDay), (season.EndMonth, season.EndDay), (month, Middle));
        var (isAfterFirst, isBeforeLast) = (middle.CompareTo(first) >= 0, middle.CompareTo(last) <= 0);
        return first.CompareTo(last) <= 0 ? isAfterFirst && isBeforeLast : isAfterFirst || isBeforeLast;
    }
}
