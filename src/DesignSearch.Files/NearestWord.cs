namespace DesignSearch.Files;

/// <summary>Finds the word a person most likely meant.</summary>
public static class NearestWord
{
    /// <summary>The word with the fewest edits, when few enough to be a slip.</summary>
    /// <param name="word">What was written.</param>
    /// <param name="known">What could have been meant.</param>
    /// <returns>The nearest within a third of its length (at most 3 edits), or null.</returns>
    public static string? To(string word, IEnumerable<string> known)
    {
        if (word.Length > 100)
            return null;
        var best = known.Select(k => (Word: k, Edits: Edits(word, k))).OrderBy(k => k.Edits).ThenBy(k => k.Word, StringComparer.Ordinal).FirstOrDefault();
        return best.Word is not null && best.Edits <= Math.Min(3, Math.Max(1, best.Word.Length / 3)) ? best.Word : null;
    }

    private static int Edits(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var substitute = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(substitute, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[b.Length];
    }
}
