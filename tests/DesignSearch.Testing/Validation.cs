using System.Globalization;
using System.Text;
using Xunit;

namespace DesignSearch.Testing;

/// <summary>
/// Compares our value with one from outside the project and keeps the row of <c>docs/validation.md</c> that says so.
/// A row is written by the check itself, so the page cannot drift; a row that no check writes any more is swept out by the
/// continuous build, which empties the page, runs every test and refuses a difference.
/// </summary>
public static class Validation
{
    private const string Head = """
        # Validation

        Every check of this project against something outside it: a published value, an analytic solution, a named independent
        program or a measured house. The tests write this page; do not edit it by hand. "Ours" is rounded to six digits.
        "Runs in" names what the program itself calls and the row proves, or the file whose figures it holds; a test looks it up.
        "reference" is the formula of a test alone, against which other tests hold what runs.

        Beyond the build, by hand on 2026-11-27: 100 000 spoilt inputs and 100 searches killed and taken up, none of which misbehaved;
        what else was done to break the program, and how many faults put in on purpose the tests notice: [how hard it was hit](toughness.md).

        | check | quantity | expected | ours | difference | allowed | runs in | source |
        | --- | --- | --- | --- | --- | --- | --- | --- |

        """;

    private static readonly Lock Gate = new();

    private static string Page => Repository.At("docs", "validation.md");

    /// <summary>Fails when ours is farther from expected than allowed; writes the row either way.</summary>
    /// <param name="id">Short and unique, for instance "sun A2 S1 altitude"; the first word is the subject and sorts the page.</param>
    /// <param name="quantity">What is compared, with its unit.</param>
    /// <param name="expected">The value from outside.</param>
    /// <param name="ours">Our value.</param>
    /// <param name="tolerance">Largest absolute difference allowed.</param>
    /// <param name="source">Author, title or standard, year; or "analytic"; or the program and its version.</param>
    /// <param name="runsIn">What runs in the program, "Type" or "Type.Member"; a file of the repository; or "reference".</param>
    public static void Equal(string id, string quantity, double expected, double ours, double tolerance, string source, string runsIn)
    {
        Refuse(id, expected, ours, tolerance);
        Record(id, quantity, Number(expected), Number(ours), Number(Round(ours - expected, 2)), Number(tolerance), runsIn, source);
        Assert.True(Math.Abs(ours - expected) <= tolerance, FormattableString.Invariant($"{id}: {quantity}: expected {expected} ± {tolerance}, got {ours} ({source})"));
    }

    /// <summary>Fails when ours is not inside the band; writes the row either way.</summary>
    /// <inheritdoc cref="Equal"/>
    public static void Within(string id, string quantity, double low, double high, double ours, string source, string runsIn)
    {
        Refuse(id, low, high, ours);
        Record(id, quantity, Number(low) + " to " + Number(high), Number(ours), ours >= low && ours <= high ? "inside" : "outside", "band", runsIn, source);
        Assert.True(ours >= low && ours <= high, FormattableString.Invariant($"{id}: {quantity}: expected {low} to {high}, got {ours} ({source})"));
    }

    /// <summary>A miss that is known and told: writes the row as outside, and fails once ours lies inside the band, so that the row goes when the miss does.</summary>
    /// <inheritdoc cref="Equal"/>
    public static void Missed(string id, string quantity, double low, double high, double ours, string source, string runsIn)
    {
        Refuse(id, low, high, ours);
        Record(id, quantity, Number(low) + " to " + Number(high), Number(ours), "outside, known", "band", runsIn, source);
        Assert.False(ours >= low && ours <= high, FormattableString.Invariant($"{id}: {quantity}: {ours} lies inside {low} to {high} by now; say Within ({source})"));
    }

    // What is not a number compares with nothing: neither a hit nor a known miss.
    private static void Refuse(string id, params double[] figures) => Assert.True(!figures.Any(double.IsNaN), id + ": not a number");

    private static void Record(params string[] cells)
    {
        var row = "| " + string.Join(" | ", cells.Select(c => c.Replace('|', '/').Replace('\n', ' ').Trim())) + " |";
        lock (Gate)
        {
            if (Rows().Contains(row))
                return;
            using var turn = Hold();
            var key = row[..(row.IndexOf('|', 2) + 1)];
            var rows = Rows().Where(r => !r.StartsWith(key, StringComparison.Ordinal)).Append(row).Order(StringComparer.Ordinal);
            var text = new StringBuilder(Head.ReplaceLineEndings("\n"));
            foreach (var line in rows)
                text.Append(line).Append('\n');
            var beside = Page + "." + Environment.ProcessId.ToString(CultureInfo.InvariantCulture) + ".tmp";
            File.WriteAllText(beside, text.ToString());
            File.Move(beside, Page, overwrite: true);
        }
    }

    // Several test programs run at once; whoever holds this file may rewrite the page.
    private static FileStream Hold()
    {
        for (var attempt = 0; ; attempt++)
        {
            try
            {
                return new FileStream(Repository.At("docs", ".validation.lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException) when (attempt < 2000)
            {
                Thread.Sleep(5);
            }
        }
    }

    private static List<string> Rows() =>
        File.Exists(Page) ? [.. File.ReadAllLines(Page).SkipWhile(l => !l.StartsWith("| ---", StringComparison.Ordinal)).Skip(1).Where(l => l.StartsWith("| ", StringComparison.Ordinal))] : [];

    private static string Number(double value)
    {
        var rounded = Round(value, 6);
        return rounded == 0 ? "0"
            : Math.Abs(rounded) is >= 1e-4 and < 1e9 ? rounded.ToString("0.##########", CultureInfo.InvariantCulture)
            : rounded.ToString("0.#####E+0", CultureInfo.InvariantCulture);
    }

    private static double Round(double value, int digits)
    {
        if (value == 0 || !double.IsFinite(value))
            return value;
        var scale = digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return scale is >= 0 and <= 15 ? Math.Round(value, scale) : value;
    }
}
