using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>Whether snow on roof and collector is in the figures, in plain words.</summary>
public static class SnowSentence
{
    /// <summary>What is said of it.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="winters">Its winters; the days are told of the one that has most.</param>
    public static string Of(Scenario scenario, IEnumerable<Winter> winters)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(winters);
        if (scenario.Site.Snow == SnowCare.None)
            return "none on roof and collector, as the scenario says";
        var (name, days) = winters.Select(w => (w.Name, Days: DesignWinters.SnowLeft(scenario, w).Days(w))).MaxBy(w => w.Days);
        var fall = Written.Sentence($"up to {Written.Count(days, "day")} of a winter ({name}) are dull, damp and cold enough to bring it");
        return (scenario.Site.Snow, days) switch
        {
            (_, 0) => "none on roof and collector: no day of these winters is dull, damp and cold enough to bring it",
            (null, _) => $"""not in the figures: {fall}. Say snow = "brushed" or "left" under [site], or "none" where none lies""",
            (SnowCare.Brushed, _) => $"in the figures by a rough rule: {fall}; it is brushed off roof and collector at nine the next morning",
            _ => $"in the figures by a rough rule: {fall}; it lies on roof and collector until it slides or melts",
        };
    }
}
