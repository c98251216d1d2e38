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
    public const string WithIt = "With it";
    public const string WithoutIt = "Without it";

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

    public static string CheapestMount(string way, string next, Apart more, string currency) => Written.Sentence(
        $"At equal protection {Quoted(way)} is the cheapest way{(more.IsExact ? "" : " found")};",
        $"{Quoted(next)} costs {More(more, currency)}.");

    /// <summary>What is proved of a way of which nothing was found that holds.</summary>
    public static string NoneOfIt(string way, decimal? noneBelow, decimal best, string currency) => noneBelow is { } least
        ? least > best
            ? Written.Sentence(
                $"Of {Quoted(way)} nothing was found that holds;",
                $"what does costs at least {least - best:0} {currency} more (by bounds that are tested).")
            : Written.Sentence(
                $"Of {Quoted(way)} nothing was found that holds;",
                $"below {least:0} {currency} nothing does (by bounds that are tested).")
        : Written.Sentence($"Of {Quoted(way)} nothing holds (by bounds that are tested).");

    public static string WithOrWithout(string choice) => $"{char.ToUpperInvariant(choice[0])}{choice[1..]}: with or without?";

    // Only what was gone through whole is said not to be there.
    public static string NothingHolds(string way, int frostHours, WayFound? asked) => Written.Sentence(asked is { IsExact: false }
        ? $"{way} nothing was found that holds, of {asked.Tried} layouts tried: at best {Hours(frostHours)} left in the worst winter."
        : (FormattableString)$"{way} nothing holds: at best {Hours(frostHours)} left in the worst winter.");

    public static string NothingHolds(string way, int frostHours, long tried, decimal? noneBelow, decimal best, string currency) =>
        noneBelow switch
        {
            null => Written.Sentence(
                $"{way} nothing holds (by bounds that are tested): at best {Hours(frostHours)} left in the worst winter."),
            { } least when least > best => Written.Sentence(
                $"{way} nothing was found that holds, of {tried} layouts tried: at best {Hours(frostHours)} left in the worst winter.",
                $"What does costs at least {least - best:0} {currency} more over the years (by bounds that are tested)."),
            _ => NothingHolds(way, frostHours, new WayFound(null, false, tried)),
        };

    public static string Pays(string choice, Apart more, string currency) => Written.Sentence(
        $"It pays: without {choice} the cheapest{Found(more)} that holds costs {More(more, currency)}.");

    public static string DoesNotPay(string choice, Apart more, string currency) => Written.Sentence(
        $"It does not pay: with {choice} the cheapest{Found(more)} that holds costs {More(more, currency)}.");

    // An interval: at least by what is proved, at most by what was found.
    private static string More(Apart more, string currency) => more switch
    {
        _ when more.IsOne || more.AtLeast is null => Written.Sentence($"{more.AtMost:0} {currency} more over the years{Known(more)}"),
        { AtLeast: > 0 } =>
            Written.Sentence($"{decimal.Floor(more.AtLeast.Value):0} to {more.AtMost:0} {currency} more over the years{Known(more)}"),
        { IsProvedWithoutCollector: true } => Written.Sentence($"{more.AtMost:0} {currency} more over the years{Known(more)}"),
        _ => Written.Sentence($"at most {more.AtMost:0} {currency} more over the years{Known(more)}"),
    };

    private static string Known(Apart apart) => apart switch
    {
        { IsExact: true } => "",
        _ when apart.IsOne => " (by bounds that are tested)",
        { IsProvedWithoutCollector: true, AtLeast: > 0 } =>
            Written.Sentence($", {apart.AtMost:0} as long as no collector is built (by bounds that are tested)"),
        { IsProvedWithoutCollector: true } =>
            " as long as no collector is built (by bounds that are tested); whether one changes that was searched, not proved",
        { AtLeast: > 0 } => " (by bounds that are tested)",
        _ => Searched(false),
    };

    private static string Found(Apart apart) => apart.IsOne || apart.IsProvedWithoutCollector ? "" : " found";

    public static string MakesNoDifference(Apart apart, string currency) => Written.Sentence(
        $"It makes no difference, build what you like: with and without, the cheapest{Found(apart)} that hold are",
        $"{apart.AtMost:0} {currency} apart over the years, less than model and prices are known to{Known(apart)}.");

    public static string MountsAlike(string way, string next, decimal more, string currency, bool isProved) => Written.Sentence(
        $"{Quoted(way)} and {Quoted(next)} make no difference, build what you like: they are {more:0} {currency} apart over the years,",
        $"less than model and prices are known to{Searched(isProved)}.");

    private static string Searched(bool isProved) => isProved ? "" : " (searched, not proved)";

    public static string NeitherHolds(double withKh, double withoutKh) => Written.Sentence(
        $"Neither holds; with it {withKh:0} K·h of frost are left at best, without it {withoutKh:0}.");

    public static string AlonePassesNone(string why, bool isProved) => $"A heater alone passes no check: {why}{Searched(isProved)}.";

    public static string AloneIsTooWeak(int frostHours, bool isProved) => Written.Sentence(
        $"The strongest heater allowed does not hold the limit alone: {Hours(frostHours)} left in the worst winter{Searched(isProved)}.");

    public static string AloneIsCheapest(bool isProved) =>
        $"A heater alone is the cheapest of all {(isProved ? "" : "found ")}that hold{Searched(isProved)}.";

    public static string AloneCostsMore(decimal buildLess, decimal lifeMore, string currency, bool isProved)
    {
        var build = buildLess >= 0 ? Written.Sentence($"{buildLess:0} less") : Written.Sentence($"{-buildLess:0} more");
        return Written.Sentence(
            $"A heater alone holds too, costs {build} to build and {lifeMore:0} {currency} more over the years{Searched(isProved)}.");
    }

    public static string Fails(Check failed) => $"fails {failed.Title}: {failed.Sentence.TrimEnd('.')}";

    private static string Quoted(string name) => $"\"{name}\"";
}
