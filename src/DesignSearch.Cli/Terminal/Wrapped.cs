namespace DesignSearch.Cli.Terminal;

/// <summary>Breaks sentences between words, so that a terminal does not break them within.</summary>
public static class Wrapped
{
    /// <summary>Wider than this a line is hard to follow, on a wide screen or in a file.</summary>
    public const int Widest = 110;

    private const int Narrowest = 20;

    /// <summary>The lines of a sentence; a word longer than a line stands by itself.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="columns">Columns of the terminal.</param>
    /// <param name="indent">Blanks before the second line and those that follow.</param>
    public static IEnumerable<string> Lines(string text, int columns, int indent = 0)
    {
        var width = Math.Max(Narrowest, columns - 1);
        indent = Math.Min(indent, width / 4);
        // Blanks before the first word are no place to break.
        var rest = text.TrimStart();
        var lead = new string(' ', Math.Min(text.Length - rest.Length, width / 4));
        while (lead.Length + rest.Length > width)
        {
            var room = width - lead.Length;
            var cut = rest.LastIndexOf(' ', Math.Min(room, rest.Length - 1));
            if (cut <= 0 && (cut = rest.IndexOf(' ', StringComparison.Ordinal)) <= 0)
                break;
            yield return lead + rest[..cut].TrimEnd();
            rest = rest[cut..].TrimStart();
            lead = new string(' ', indent);
        }

        yield return lead + rest;
    }
}
