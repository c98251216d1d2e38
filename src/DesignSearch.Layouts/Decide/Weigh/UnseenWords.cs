using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>What winters that a layout was not chosen on did to it, in words.</summary>
internal static class UnseenWords
{
    private const double WholeFrom = 10;

    public const string NotFlattered = "On these winters it did as well on average as on those it was chosen on.";

    public static string MadeFromMonths(int count) => Written.Sentence(
        $"Unseen winters: {count} made from the monthly means with seeds that the search never saw,",
        $"the lowest night of each drawn anew.");

    public static string DrawnFromRecord(int count) => Written.Sentence(
        $"Unseen winters: {count} drawn from the weather file, whole spells in a new order and the lowest night of each drawn anew;",
        $"they know no weather that the file does not hold.");

    public static string Held(int held, int count, double low, double high) => Written.Sentence(
        $"It held in {held} of {Written.Count(count, "winter")} it was not chosen on: in the long run {Failing(low, high)}",
        $"(right 19 times in 20).");

    public static string Failing(double heldLow, double heldHigh) => (100 * (1 - heldHigh), 100 * (1 - heldLow)) switch
    {
        ( < 0.5, var most) => Written.Sentence($"at most {most:0} winters in 100 would go below the limit"),
        var (least, most) => Written.Sentence($"between {least:0} and {most:0} winters in 100 would go below the limit"),
    };

    public static string Frost(double degreeHoursKh) =>
        Written.Number(degreeHoursKh, degreeHoursKh < WholeFrom ? 1 : 0) + " K·h of frost";

    public static string Standby(double kwh, double money, string currency) =>
        Written.Sentence($"{kwh:0} kWh of stand-by heat ({money:0} {currency})");

    public static string Flattered(IReadOnlyList<string> less) => Written.Sentence(
        $"Expect about {Written.Joined(less)} a winter more than the figures of this layout say:",
        $"so much more the unseen winters had on average than those it was chosen on, the hard one left out.");
}
