using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>How ways to protect the house compare, in words.</summary>
internal static class WayWords
{
    public const string Mounts = "Collector: none, fixed or turned?";
    public const string NoCollector = "no collector";
    public const string NoMountHolds = "Of none of these ways was anything found that holds; the nearest of each is shown.";
    public const string With = "with";
    public const string Without = "without";
    public const string NeitherPasses = "Neither passes every check.";
    public const string NothingWithPasses = "Nothing with it passes every check: leave it out.";
    public const string NothingWithoutPasses = "Nothing without it passes every check.";
    public const string HeaterAlone = "A stand-by heater and nothing else?";
    public const string Alone = "heater alone";
    public const string BestFound = "the best found";
    public const string AnotherIsFixed = "the scenario fixes another part";
    public const string AloneNotAllowed = "No answer: the scenario does not allow a heater alone.";
    public const string OnlyAloneHolds = "A heater alone holds.";
    public const string NoneFound = "none was found";

    /// <summary>Frost hours in words.</summary>
    public static string Hours(int count) => Written.Count(count, "frost hour");

    public static string Mount(TurningKind turning) => turning switch
    {
        TurningKind.Fixed => "fixed",
        TurningKind.TwoPosition => "two positions a day",
        TurningKind.Stepped => "turned in steps",
        _ => "follows the sun",
    };

    public static string OnlyMount(string way, decimal cost, string currency, bool isProved) => Written.Sentence(isProved
        ? (FormattableString)$"Only {Quoted(way)} holds, for {cost:0} {currency} over the years."
        : $"Only of {Quoted(way)} was anything found that holds, for {cost:0} {currency} over the years{Searched(isProved)}.");

    public static string CheapestMount(string way, string next, decimal more, string currency, bool isProved) => Written.Sentence(
        $"At equal protection {Quoted(way)} is the cheapest way{(isProved ? "" : " found")};",
        $"{Quoted(next)} costs {more:0} {currency} more over the years{Searched(isProved)}.");

    public static string WithOrWithout(string choice) => $"{char.ToUpperInvariant(choice[0])}{choice[1..]}: with or without?";

    public static string NothingWithoutHolds(int frostHours, WayFound? asked) => Nothing("Without it", frostHours, asked);

    public static string NothingWithHolds(int frostHours, WayFound? asked) => Nothing("With it", frostHours, asked);

    public static string Pays(string choice, decimal more, string currency, bool isProved) => Written.Sentence(
        $"It pays: without {choice} the cheapest{(isProved ? "" : " found")} that holds costs {more:0} {currency} more",
        $"over the years{Searched(isProved)}.");

    public static string DoesNotPay(string choice, decimal more, string currency, bool isProved) => Written.Sentence(
        $"It does not pay: with {choice} the cheapest{(isProved ? "" : " found")} that holds costs {more:0} {currency} more",
        $"over the years{Searched(isProved)}.");

    public static string MakesNoDifference(decimal apart, string currency, bool isProved) => Written.Sentence(
        $"It makes no difference, build what you like: with and without, the cheapest{(isProved ? "" : " found")} that hold are",
        $"{apart:0} {currency} apart over the years, less than model and prices are known to{Searched(isProved)}.");

    public static string MountsAlike(string way, string next, decimal more, string currency, bool isProved) => Written.Sentence(
        $"{Quoted(way)} and {Quoted(next)} make no difference, build what you like: they are {more:0} {currency} apart over the years,",
        $"less than model and prices are known to{Searched(isProved)}.");

    // Only what was gone through whole is said not to be there.
    private static string Nothing(string way, int frostHours, WayFound? asked) => Written.Sentence(asked is { IsExact: false }
        ? $"{way} nothing was found that holds, of {asked.Tried} layouts tried: at best {Hours(frostHours)} left in the worst winter."
        : (FormattableString)$"{way} nothing holds: at best {Hours(frostHours)} left in the worst winter.");

    private static string Searched(bool isProved) => isProved ? "" : " (searched, not proved)";

    public static string NeitherHolds(double withKh, double withoutKh) => Written.Sentence(
        $"Neither holds; with it {withKh:0} K·h of frost are left at best, without it {withoutKh:0}.");

    public static string AlonePassesNone(string why) => $"A heater alone passes no check: {why}.";

    public static string AloneIsTooWeak(int frostHours) => Written.Sentence(
        $"The strongest heater allowed does not hold the limit alone: {Hours(frostHours)} left in the worst winter.");

    public static string AloneIsCheapest(bool isProved) =>
        $"A heater alone is the cheapest of all {(isProved ? "" : "found ")}that hold{Searched(isProved)}.";

    public static string AloneCostsMore(decimal buildLess, decimal lifeMore, string currency)
    {
        var build = buildLess >= 0 ? Written.Sentence($"{buildLess:0} less") : Written.Sentence($"{-buildLess:0} more");
        return Written.Sentence($"A heater alone holds too, costs {build} to build and {lifeMore:0} {currency} more over the years.");
    }

    public static string Fails(Check failed) => $"fails {failed.Title}: {failed.Sentence.TrimEnd('.')}";

    private static string Quoted(string name) => $"\"{name}\"";
}
