using DesignSearch.Layouts.Words;

namespace DesignSearch.Runs.Searching;

/// <summary>What is said while a search is at work.</summary>
internal static class SearchWords
{
    public const string Comparing = "comparing the ways";
    public const string BeingSure = "trying other winters";
    public const string Weighing = "weighing what it is worth";
    public const string Writing = "drawing lists and page";
    public const string NoneYet = "none passes every check yet";

    public static string Holds(double cost, string currency, int front) => Written.Sentence(
        $"the cheapest that holds costs {cost:0} {currency} over the years; {Written.Count(front, "layout")} on the front");

    public static string HoldsBriefly(double cost, string currency) => Written.Sentence($"holds for {cost:0} {currency}");

    public static string Nearest(double frostKh, int front) => Written.Sentence(
        $"none holds yet, the nearest has {frostKh:0} K·h of frost; {Written.Count(front, "layout")} on the front");

    public static string NearestBriefly(double frostKh) => Written.Sentence($"none holds yet ({frostKh:0} K·h)");

    public static string Proving(double bound, string currency) => Written.Sentence($"proving: none that holds below {bound:0} {currency}");

    public static string ProvingBriefly(double bound, string currency) => Written.Sentence($"proved to {bound:0} {currency}");
}
