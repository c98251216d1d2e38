using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>Puts what was found into plain sentences.</summary>
internal static class AnswerWriter
{
    public static string Answer(Scenario scenario, JudgedLayout bare, IReadOnlyList<JudgedLayout> ranking, Picks picks)
    {
        var limit = scenario.Greenhouse.FrostLimitC;
        var currency = scenario.Money.Currency;
        if (bare.Holds)
            return Written.Sentence($"Add nothing: the bare house holds {limit:0.#} °C in every winter it was tried on.");
        if (picks.CheapestThatHolds is { } rank)
        {
            var best = ranking[rank - 1];
            var solar = best.CollectorAreaM2 > 0 ? "" : " No collector is worth its money here.";
            return Written.Sentence($"To hold {limit:0.#} °C in every design winter at the lowest whole-life cost, build {best.Title}: {best.BuildPrice:0} {currency} to build, {best.LifeCost:0} {currency} over {scenario.Money.Years} years.{Held(best)}{solar}");
        }

        if (picks.MostProtection is { } nearest)
            return Written.Sentence($"Nothing within {scenario.Money.Budget:0} {currency} holds {limit:0.#} °C in every design winter; the nearest is {ranking[nearest - 1].Title}, which still has {ranking[nearest - 1].WorstFrostHours} frost hours in the worst winter.{Held(ranking[nearest - 1])}");
        return Written.Sentence($"Nothing that passes every check was found within {scenario.Money.Budget:0} {currency}.");
    }

    private static string Held(JudgedLayout layout) => layout.Plants is { } place
        ? Written.Sentence($" {place.Held} {layout.LowestHouseAirC:0} °C.")
        : "";

    public static IReadOnlyList<string> NearestMiss(Scenario scenario, IReadOnlyList<JudgedLayout> ranking, Picks picks)
    {
        if (picks.MostProtection is not { } rank)
            return ["Every layout tried fails a check: raise the budget, or allow more kinds of parts."];
        var best = ranking[rank - 1];
        var worst = best.Winters.MaxBy(w => w.Outcome.FrostHours)!;
        return
        [
            Written.Sentence($"The nearest miss is no. {rank}, {best.Title}: in the {worst.Winter} winter it lies below {scenario.Greenhouse.FrostLimitC:0.#} °C for {worst.Outcome.FrostHours} hours, at worst by {scenario.Greenhouse.FrostLimitC - best.LowestAirC:0.0} K."),
            Written.Sentence($"It uses {best.BuildPrice:0} of {scenario.Money.Budget:0} {scenario.Money.Currency}."),
        ];
    }

    public static IReadOnlyList<string> Doubts(Scenario scenario, WinterSet winters, IReadOnlyList<JudgedLayout> ranking)
    {
        var said = new List<string>
        {
            "All prices come from the catalogue. Those of the starter catalogue are invented: put your own in before you buy.",
            "The model knows one air temperature for the whole house. A corner at the door or the floor can be one to two kelvin colder.",
            "Leaks and the true loss of an old cover are guesses until measured. With a fifth more loss the stand-by heater works about a fifth more; with half as much leakage again a tight layout may fall short.",
            winters.Winters.Any(w => w.Winter.PowerCuts.Count > 0)
                ? "A winter colder than the hard one, and a power cut longer than the one that was tried, will come some day: what happens then is not in these figures."
                : "A winter colder than the hard one will come some day: what happens then, and in a power cut, is not in these figures.",
        };
        if (ranking.FirstOrDefault(l => l.OtherSkyShare is not null) is { OtherSkyShare: { } share } solar)
            said.Add(Written.Sentence($"How the light of a cloudy sky falls on a tilted plane is known to a few per cent: by another model of the sky (Hay and Davies instead of Perez) {Math.Abs(100 * share):0.#} % {(share < 0 ? "less" : "more")} sun falls on the collector of layout {solar.Rank} in the season."));
        said.AddRange(winters.Winters.SelectMany(w => w.Winter.Remarks).Distinct());
        if (scenario.Climate.Record is not null)
            said.Add("Weather of a station or a grid cell is often two to five kelvin milder on clear nights than a frost hollow a few kilometres away: hang up a thermometer and compare.");
        return said;
    }
}
