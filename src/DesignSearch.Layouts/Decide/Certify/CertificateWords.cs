using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Decide.Certify;

/// <summary>What is proved, in plain sentences.</summary>
internal static class CertificateWords
{
    public const string Contradicted =
        "Whether a cheaper one holds was searched, not proved: layouts that were tried contradict the bounds.";

    private const string NoCheaper = "No cheaper layout of your parts holds (proved).";
    private const string NoneHolds = "No layout of your parts holds within your limits (proved).";

    // The bounds of groups are held against thousands of layouts, but nobody has derived all of them: docs/decisions/0015-certificate.md.
    private const string NoCheaperByBounds =
        "No cheaper layout of your parts holds (by bounds that are tested, not by going through all).";
    private const string NoneHoldsByBounds =
        "No layout of your parts holds within your limits (by bounds that are tested, not by going through all).";
    private const string BetweenThem = ": whether one between them is as sure was searched, not proved";
    private const string Looked = "Every layout was gone through.";
    private const string Stopped = "The proof was stopped early.";

    public static string Exact(bool anyHolds) => $"{(anyHolds ? NoCheaper : NoneHolds)} {Looked}";

    public static string Proved(bool anyHolds, long simulations, long boxes) =>
        $"{(anyHolds ? NoCheaperByBounds : NoneHoldsByBounds)} {Groups(simulations, boxes)}";

    public static string Below(decimal below, decimal? found, string currency, (long Simulations, long Boxes, bool IsStopped) way)
    {
        // Rounded first, so that the difference is that of the figures one reads.
        var least = decimal.Floor(below);
        var none = Written.Sentence(
            $"No layout of your parts that holds costs less than {least:0} {currency} over the years",
            $"(by bounds that are tested);");
        var and = found is { } cost
            ? Written.Sentence(
                $"{cost:0} {currency} was found, so a better one could save {decimal.Round(cost) - least:0} {currency}",
                $"at most.")
            : "none was found.";
        var end = way.IsStopped ? " " + Stopped : "";
        return $"{none} {and} {Groups(way.Simulations, way.Boxes)}{end}";
    }

    /// <summary>Of the layouts with and without a collector one half is proved to the end.</summary>
    public static string Half(
        bool isWith, decimal below, decimal? found, string currency, (long Simulations, long Boxes, bool IsStopped) way)
    {
        var least = decimal.Floor(below);
        var (proved, open) = isWith ? ("With a collector", "without one") : ("Without a collector", "with one");
        var none = found is null ? $"{proved} nothing holds within your limits" : $"{proved} no cheaper layout of your parts holds";
        var other = found is { } cost
            ? Written.Sentence(
                $"{open} none below {least:0} {currency} does,",
                $"so a better one could save {decimal.Round(cost) - least:0} {currency} at most.")
            : Written.Sentence($"{open} none below {least:0} {currency} does, and none was found.");
        var (groups, stopped) = (Groups(way.Simulations, way.Boxes), way.IsStopped ? " " + Stopped : "");
        return $"{none} (by bounds that are tested, not by going through all); {other} {groups}{stopped}";
    }

    public static string OfTheCheapest(JudgedLayout cheapest, JudgedLayout first, string currency, bool isExact) => Written.Sentence(
        $"That is said of no. {cheapest.Rank}, the cheapest that holds the design winters; the first choice is surer and costs",
        $"{first.LifeCost - cheapest.LifeCost:0} {currency} more{(isExact ? "" : BetweenThem)}.");

    private static string Groups(long simulations, long boxes) => Written.Sentence(
        $"{Written.Count(boxes, "group")} of layouts were looked at,",
        $"{Written.Number(simulations)} of them simulated by plants that no layout of the group can beat.");
}
