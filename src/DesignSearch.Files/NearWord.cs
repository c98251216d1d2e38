namespace DesignSearch.Files;

/// <summary>Guesses which known word a person meant.</summary>
public static class NearWord
{
    /// <summary>The nearest known word, or null where none is near enough (a third of its letters, at least one).</summary>
    /// <param name="word">What was written.</param>
    /// <param name="known">What could have been meant.</param>
    public static string? Of(string word, IEnumerable<string> known)
    {
        if (word.Length is 0 or > 80)
            return null;
        var best = known.Select(k => (Word: k, Distance: Distance(word.ToLowerInvariant(), k.ToLowerInvariant())))
            .OrderBy(p => p.Distance).ThenBy(p => p.Word, StringComparer.Ordinal).FirstOrDefault();
        return best.Word is not null && best.Distance <= Math.Max(1, best.Word.Length / 3) ? best.Word : null;
    }

    /// <summary>A clause to put behind an expectation: <c> (did you mean 'x'?)</c>, or nothing.</summary>
    /// <param name="word">What was written.</param>
    /// <param name="known">What could have been meant.</param>
    public static string Hint(string word, IEnumerable<string> known) => Of(word, known) is { } near ? $" (did you mean '{near}'?)" : "";

    // Edit distance: inserted, left out, changed letters and swapped neighbours count one each.
    private static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            d[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            d[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var change = a[i - 1] == b[j - 1] ? 0 : 1;
                d[i, j] = Math.Min(Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1), d[i - 1, j - 1] + change);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        }

        return d[a.Length, b.Length];
    }
}
