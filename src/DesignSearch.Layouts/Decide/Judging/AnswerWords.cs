using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Systems.Compost;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>What was found, in plain sentences.</summary>
internal static class AnswerWords
{
    private static readonly string[] Always =
    [
        "All prices come from the catalogue. Those of the starter catalogue are invented: put your own in before you buy.",
        "The model knows one air temperature for the whole house. A corner at the door or the floor can be one to two kelvin colder.",
        "Leaks and the true loss of an old cover are guesses until measured.",
    ];

    private static readonly string Elsewhere = """
        Weather of a station or a grid cell is often two to five kelvin milder on clear nights than a frost hollow a few kilometres
        away: hang up a thermometer and compare.
        """.ReplaceLineEndings(" ");

    // "Lowest" and "nothing" are said only where every layout was gone through; else what was found is called found.
    public static string Answer(Scenario scenario, JudgedLayout bare, IReadOnlyList<JudgedLayout> ranking, Picks picks, bool isExact)
    {
        var limit = scenario.Greenhouse.FrostLimitC;
        var money = scenario.Money;
        if (bare.Holds)
            return Written.Sentence($"Add nothing: the bare house holds {limit:0.#} °C in every winter it was tried on.");
        if (picks.First is { } rank)
        {
            var (best, cheapest) = (ranking[rank - 1], ranking[picks.CheapestThatHolds!.Value - 1]);
            return Written.Sentence(
                $"To hold {limit:0.#} °C in every design winter{Besides(best, cheapest, isExact, scenario)},",
                $"build",
                $"{best.Title}:",
                $"{best.BuildPrice:0} {money.Currency} to build,",
                $"{best.LifeCost:0} {money.Currency} over {Written.Count(money.Years, "year")}.{Remark(best, isExact)}");
        }

        if (picks.MostProtection is { } second)
        {
            var nearest = ranking[second - 1];
            return Written.Sentence(
                $"Nothing {(isExact ? "within" : "was found within")} {money.Budget:0} {money.Currency}",
                $"{(isExact ? "holds" : "that holds")} {limit:0.#} °C in every design winter;",
                $"the nearest is {nearest.Title}, which still has {Written.Count(nearest.WorstFrostHours, "frost hour")}",
                $"in the worst winter.{Held(nearest)}");
        }

        return ranking.Count == 0
            ? Written.Sentence(
                $"Nothing can be added within {money.Budget:0} {money.Currency}: what is left is the bare house, which has",
                $"{Written.Count(bare.WorstFrostHours, "frost hour")} in the worst winter.")
            : Written.Sentence($"Nothing that passes every check was found within {money.Budget:0} {money.Currency}.");
    }

    public static IReadOnlyList<string> NearestMiss(Scenario scenario, IReadOnlyList<JudgedLayout> ranking, Picks picks)
    {
        if (picks.MostProtection is not { } rank)
        {
            return ranking.Count == 0
                ? ["Nothing else was to be tried: raise the budget, or allow more kinds of parts."]
                : ["Every layout tried fails a check: raise the budget, or allow more kinds of parts."];
        }

        var best = ranking[rank - 1];
        var worst = best.Winters.MaxBy(w => w.Outcome.FrostHours)!;
        var limit = scenario.Greenhouse.FrostLimitC;
        return
        [
            Written.Sentence(
                $"The nearest miss is no. {rank}, {best.Title}: in the {worst.Winter} winter it lies below {limit:0.#} °C",
                $"for {Written.Count(worst.Outcome.FrostHours, "hour")}, at worst by {limit - best.LowestAirC:0.0} K."),
            Written.Sentence($"It uses {best.BuildPrice:0} of {scenario.Money.Budget:0} {scenario.Money.Currency}."),
        ];
    }

    public static IReadOnlyList<string> Doubts(Scenario scenario, WinterSet winters, IReadOnlyList<JudgedLayout> ranking)
    {
        List<string> said = [.. Always];
        if (ranking.FirstOrDefault(l => l.OtherSkyShare is not null) is { OtherSkyShare: { } share } solar)
            said.Add(OtherSky(share, solar.Rank));
        said.AddRange(winters.Winters.SelectMany(w => w.Winter.Remarks).Distinct());
        said.Add($"Snow: {SnowSentence.Of(scenario, winters.Winters.Select(w => w.Winter))}.");
        if (scenario.Climate.Record is not null)
            said.Add(Elsewhere);
        return said;
    }

    /// <summary>What is said of the answer beside what to build and what it costs; empty, or behind a blank.</summary>
    public static string Remark(JudgedLayout best, bool isExact)
    {
        var none = isExact ? " No collector is worth its money here." : " No collector that was found is worth its money here.";
        return Held(best) + (best.CollectorAreaM2 > 0 ? "" : none);
    }

    // A share of other winters is said only where those that did not choose it bear it out, and "lowest" only of what
    // is the cheapest of its kind.
    private static string Besides(JudgedLayout best, JudgedLayout cheapest, bool isExact, Scenario scenario)
    {
        var lowest = $" at the lowest whole-life cost{(isExact ? "" : " found")}";
        return best.Chance is { } chance && chance.Held >= scenario.Search.Certainty * chance.Of
            ? Written.Sentence($" and in at least {100 * scenario.Search.Certainty:0} of 100 others") + lowest
            : best.Rank == cheapest.Rank ? lowest
            : ", more surely in others than the cheapest that does";
    }

    private static string Held(JudgedLayout layout)
    {
        var place = layout.Plants is { } p ? Written.Sentence($" {p.Held} {layout.LowestHouseAirC:0} °C.") : "";
        var alone = layout.Checks.FirstOrDefault(c => c.Id == CompostRules.Alone.Id);
        return alone is null ? place : $"{place} {alone.Sentence}";
    }

    private static string OtherSky(double share, int rank) => Written.Sentence(
        $"How the light of a cloudy sky falls on a tilted plane is known to a few per cent: by another model of the sky",
        $"(Hay and Davies instead of Perez) {Math.Abs(100 * share):0.#} % {(share < 0 ? "less" : "more")} sun falls",
        $"on the collector of layout {rank} in the season.");
}
