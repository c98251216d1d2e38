using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>What is in doubt, and what it does to a layout, in words.</summary>
internal static class DoubtWords
{
    public const string Loss = "loss of cover and edge";
    public const string Leaks = "leaks";
    public const string Fitted = "loss of this house as its log tells it";
    public const string FittedWhy = "What the log of this house leaves open, 19 of 20 times (fitted.toml).";
    public const string Sky = "sky";
    public const string Soil = "soil";
    public const string LossWhy = "What an old cover, its laps and its frame lose is known to about a fifth (from memory).";
    public const string LeaksWhy =
        "Nobody has measured the leaks: houses of one kind differ by twice and half (common practice, no source).";
    public const string SkyWhy = "A formula for the clear sky misses by some 15 W/m², about 5 K (from memory).";
    public const string SoilWhy = "From dry sand to wet sand or clay (after the soils of ISO 13370).";
    public const string Forgotten = "nights on which a cover drawn by hand is forgotten";
    public const string ForgottenWhy = "Somebody is away, ill or late now and then (own choice, no source).";
    public const string DrySoil = "the soil is dry";
    public const string WetSoil = "the soil is wet";
    public const string NoChange = "It changes nothing for this layout.";

    private const double Fifth = 5;
    private const double Nearly = 1e-6;

    public static string CoverLoses(double factor) => Written.Sentence($"the cover loses {Part(factor - 1)}");

    public static string HouseLoses(double factor) => Written.Sentence($"this house loses {Part(factor - 1)} than its log says");

    public static string AirLeaks(double factor) =>
        Written.Sentence($"{(factor == 2 ? "twice" : factor == 0.5 ? "half" : Times(factor))} the air leaks");

    public static string ColderSky(double kelvin) =>
        Written.Sentence($"the clear sky is {Math.Abs(kelvin):0} K {(kelvin < 0 ? "warmer" : "colder")}");

    public static string ForgottenNights(double share) => Written.Sentence($"on {100 * share:0} nights of 100 it stays open");

    public static string PartsCost(decimal factor) => Written.Sentence($"parts cost {Percent((double)factor - 1)}");

    public static string CurrentCosts(decimal factor) => Written.Sentence($"current costs {Percent((double)factor - 1)}");

    public static string StillHolds(double standbyKwh, double insteadOfKwh) =>
        Written.Sentence($"It still holds; electric heat takes {standbyKwh:0} instead of {insteadOfKwh:0} kWh.");

    public static string HoldsNoLonger(int frostHours, double shortK) => Written.Sentence(
        $"It no longer holds: {WayWords.Hours(frostHours)} in the worst winter, {shortK:0.0} K below the limit.");

    public static string MissesAnyway(int frostHours, int insteadOf) => Written.Sentence(
        $"It has {frostHours} instead of {Written.Count(insteadOf, "frost hour")} in the worst winter.");

    public static string OverBudget(decimal price, decimal budget) =>
        Written.Sentence($"It then costs {price:0} to build, over the budget of {budget:0}.");

    public static string Costs(decimal cost, decimal insteadOf) =>
        Written.Sentence($"It then costs {cost:0} over the years instead of {insteadOf:0}.");

    public static string StaysCheapest(decimal cost) =>
        Written.Sentence($"It stays the cheapest of the ranking that holds, at {cost:0} over the years.");

    public static string AnotherIsCheaper(JudgedLayout other, decimal itsCost, decimal cost) =>
        Written.Sentence($"No. {other.Rank} of the ranking ({other.Title}) would then be cheaper: {itsCost:0} against {cost:0}.");

    private static string Part(double share) => Math.Abs(Math.Abs(Fifth * share) - 1) < Nearly
        ? $"a fifth {MoreOrLess(share)}"
        : Percent(share);

    private static string Percent(double share) => Written.Sentence($"{Math.Abs(100 * share):0} % {MoreOrLess(share)}");

    private static string Times(double factor) => Written.Sentence($"{factor:0.#} times");

    private static string MoreOrLess(double share) => share < 0 ? "less" : "more";
}
