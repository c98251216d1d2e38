using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Front;

/// <summary>Says in one sentence what the chart of life cost against frost shows.</summary>
internal static class FrontFinding
{
    private const double MostOfIt = 0.8;

    /// <summary>The sentence.</summary>
    public static string Of(Judgement judgement, string currency)
    {
        var bare = judgement.BareHouse.FrostDegreeHoursKh;
        var front = judgement.Front.Where(r => r > 0).Select(r => judgement.Ranking[r - 1]).OrderBy(l => l.LifeCost).ToList();
        if (bare <= 0)
            return "The bare house has no frost in these winters, so nothing need be bought.";
        if (front.Count == 0)
            return "No layout gives less frost than the bare house.";
        var best = front.MinBy(l => l.FrostDegreeHoursKh)!;
        var most = front.First(l => l.FrostDegreeHoursKh <= Math.Max(best.FrostDegreeHoursKh, (1 - MostOfIt) * bare));
        var end = best.FrostDegreeHoursKh <= 0
            ? $"Of all that was found, frost is gone from a life cost of {Money(best)} on"
            : $"The least frost to be had is {Say.DegreeHours(best.FrostDegreeHoursKh)} of the bare house's {Say.DegreeHours(bare)}, at a life cost of {Money(best)}";
        return most.Rank == best.Rank
            ? end + "."
            : end
                + $"; at {Money(most)} {Say.Percent(Math.Floor(100 * (1 - (most.FrostDegreeHoursKh / bare))) / 100)} of it is gone "
                + $"already.";

        string Money(JudgedLayout layout) => Say.Money(layout.LifeCost, currency);
    }

    /// <summary>The sentence of the coldest hour against the price to build.</summary>
    public static string Coldest(Judgement judgement, ScenarioRecord scenario)
    {
        var bare = judgement.BareHouse;
        var limit = Say.Plain(scenario.FrostLimitC) + "\u00A0°C";
        if (bare.Holds)
            return "The bare house keeps the limit in these winters, so nothing need be bought.";
        var start = $"The bare house falls to {Say.Air(bare.LowestAirC, scenario.FrostLimitC)}";
        return judgement.Ranking.Where(l => l.Holds).MinBy(l => l.BuildPrice) is { } least
            ? $"{start}; {limit} is kept from {Say.Money(least.BuildPrice, scenario.Currency)} to build on, of all that was found."
            : judgement.Ranking.Where(l => l.PassesChecks).MaxBy(l => l.LowestAirC) is { } warmest
                ? $"{start}; the warmest that was found falls to {Say.Air(warmest.LowestAirC, scenario.FrostLimitC)}, "
                    + $"for {Say.Money(warmest.BuildPrice, scenario.Currency)} to build."
                : start + ".";
    }
}
