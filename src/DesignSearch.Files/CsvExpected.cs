using System.Globalization;

namespace DesignSearch.Files;

/// <summary>The sentence parts that say what a cell may hold; faults and documentation use the same ones.</summary>
internal static class CsvExpected
{
    public const string Slug = "a short name of small letters, digits and hyphens, beginning with a letter, at most 60 characters";
    public const string Text = "some text, at most 400 characters";
    public const string Money = "an amount of money, 0 or more, with a decimal point and at most two decimals";
    public const string YesNo = "yes or no";

    public static string Number(double low, double high) =>
        string.Create(CultureInfo.InvariantCulture, $"a number from {low} to {high} with a decimal point and no thousands separator");

    public static string Whole(int low, int high) => string.Create(CultureInfo.InvariantCulture, $"a whole number from {low} to {high}");

    public static string Words(IEnumerable<string> words)
    {
        var all = words.ToList();
        return all.Count == 1 ? all[0] : string.Join(", ", all.Take(all.Count - 1)) + " or " + all[^1];
    }
}
