using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Decide.Certify;

/// <summary>What is proved, in plain sentences.</summary>
internal static class CertificateWords
{
    public const string Proved = "No cheaper layout of your parts holds (proved).";
    public const string NoneHolds = "No layout of your parts holds within your limits (proved).";
    public const string Looked = "Every layout was simulated.";
    public const string Contradicted = "Whether a cheaper one holds was searched, not proved: layouts that were tried contradict the bounds.";
    public const string Stopped = "The proof was stopped early.";

    public static string Sets(long simulations, long boxes) => Written.Sentence(
        $"{Written.Count(boxes, "group")} of layouts were ruled out or split, {Written.Number(simulations)} of them by a plant at least as good as all of a group.");

    public static string Between(decimal below, decimal found, string currency) => Written.Sentence(
        $"No layout of your parts that holds costs less than {below:0} {currency} over the years (proved); {found:0} {currency} was found,",
        $"so a better one could save {found - below:0} {currency} at most.");

    public static string NoneBelow(decimal below, string currency) => Written.Sentence(
        $"No layout of your parts that holds costs less than {below:0} {currency} over the years (proved); none was found.");
}
