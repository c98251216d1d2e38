using DesignSearch.Cli.Download;
using DesignSearch.Files;

namespace DesignSearch.Cli.Terminal;

/// <summary>Years as a command line names them: one, or FIRST-LAST.</summary>
internal static class YearsWord
{
    /// <summary>Reads them.</summary>
    /// <param name="word">For instance 2005-2023.</param>
    /// <param name="served">The years there are.</param>
    /// <returns>The years, or why they are refused.</returns>
    public static (YearSpan? Years, string Fault) Of(string word, YearSpan served)
    {
        var words = word.Split('-');
        if (words.Length > 2 || words.Any(w => w.Length != 4 || !w.All(char.IsAsciiDigit)))
            return (null, $"--years takes a year or FIRST-LAST, for instance {served.First}-{served.Last}; got '{VisibleText.Of(word)}'.");
        int[] years = [.. words.Select(int.Parse)];
        var span = new YearSpan(years[0], years[^1]);
        if (span.First > span.Last)
            return (null, $"--years takes the earlier year first; got '{word}', did you mean {span.Last}-{span.First}?");
        return span.First < served.First || span.Last > served.Last
            ? (null, $"--years takes years from {served.First} to {served.Last}, which the service has; got '{word}'.")
            : (span, "");
    }
}
