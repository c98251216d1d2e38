using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Decide.Sure;

/// <summary>How sure the first pick is, what less costs and what more, in plain sentences.</summary>
internal static class SureWords
{
    /// <summary>All sentences.</summary>
    /// <param name="sure">What was found.</param>
    /// <param name="ranking">The ranking.</param>
    /// <param name="picks">Its picks.</param>
    /// <param name="surer">The one that is surer than the first; null for none.</param>
    /// <param name="scenario">The scenario.</param>
    public static IReadOnlyList<string> Of(
        SureFound sure, IReadOnlyList<JudgedLayout> ranking, Picks picks, JudgedLayout? surer, Scenario scenario)
    {
        var currency = scenario.Money.Currency;
        var (first, cheapest) = (ranking[picks.First!.Value - 1], ranking[picks.CheapestThatHolds!.Value - 1]);
        return
        [
            .. sure.IsSure ? Array.Empty<string>() : [NoneIsSure(scenario)],
            Held(first.Chance!),
            .. cheapest.Rank != first.Rank && cheapest.Chance is not null ? [Less(cheapest, first, currency)]
                : Array.Empty<string>(),
            .. surer is not null && IsSurer(surer.Chance!, first.Chance!) ? [More(surer, first, currency)] : Array.Empty<string>(),
        ];
    }

    // Chosen by other winters than these: worth its money only where these too show half the failures at most.
    private static bool IsSurer(Chance surer, Chance first) =>
        2 * (surer.Of - surer.Held) <= first.Of - first.Held && surer.Held > first.Held;

    private static string Held(Chance chance) => Written.Sentence(
        $"With what nobody knows for sure of house, sky and soil drawn anew in each, it held in {chance.Held} of",
        $"{Written.Count(chance.Of, "winter")} that it was not chosen on: {InTheLongRun(chance)}.");

    private static string NoneIsSure(Scenario scenario) => Written.Sentence(
        $"Nothing was found that is as sure as {100 * scenario.Search.Certainty:0} in 100; this is the surest that was found.");

    private static string Less(JudgedLayout cheapest, JudgedLayout first, string currency) => Written.Sentence(
        $"Less sure is cheaper: no. {cheapest.Rank} ({cheapest.FullTitle}) costs",
        $"{first.LifeCost - cheapest.LifeCost:0} {currency} less over the years and held in {cheapest.Chance!.Held}",
        $"of {cheapest.Chance.Of}.");

    private static string More(JudgedLayout surer, JudgedLayout first, string currency) => Written.Sentence(
        $"Surer costs more: no. {surer.Rank} ({surer.FullTitle}) costs",
        $"{surer.LifeCost - first.LifeCost:0} {currency} more over the years and held in {surer.Chance!.Held} of {surer.Chance.Of}.");

    private static string InTheLongRun(Chance chance) => Written.Sentence(
        $"in the long run {UnseenWords.Failing(chance.AtLeast, chance.AtMost)}, so far as these doubts are all there are");
}
