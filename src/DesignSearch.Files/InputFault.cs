namespace DesignSearch.Files;

/// <summary>One mistake in something a person wrote: where it stands, what stands there, what was expected.</summary>
/// <param name="File">The file as the person named it.</param>
/// <param name="Line">Line, counted from 1; 0 where the fault is the whole file (missing, empty).</param>
/// <param name="Column">Column in characters, counted from 1; 0 where the fault is the whole line, shown as its beginning.</param>
/// <param name="Value">What was found; empty where something is missing.</param>
/// <param name="Expected">A plain sentence part: what should stand there.</param>
public sealed record InputFault(string File, int Line, int Column, string Value, string Expected)
{
    private const int LongestValue = 80;

    // The longest sentence of our own names every choice of a scenario.
    private const int LongestExpected = 1000;

    /// <summary>True where something that must be there is not; <see cref="Expected"/> then begins with its name.</summary>
    public bool IsMissing { get; init; }

    /// <summary>One line for the console: <c>file:line:column: found 'value'; expected …</c>, or <c>file:line: missing: …</c>.</summary>
    public override string ToString()
    {
        var place = (Line, Column) switch
        {
            (0, _) => File,
            _ => FormattableString.Invariant($"{File}:{Line}:{Math.Max(1, Column)}"),
        };
        var expected = Cut(Expected, LongestExpected);
        return OneLine(
            IsMissing ? $"{place}: missing: {expected}"
            : Value.Length == 0 ? $"{place}: expected {expected}" : $"{place}: found '{Cut(Value, LongestValue)}'; expected {expected}");
    }

    private static string Cut(string text, int most)
    {
        if (text.Length <= most)
            return text;
        var end = most - 3;
        return text[..(char.IsHighSurrogate(text[end - 1]) ? end - 1 : end)] + "...";
    }

    // What was found can stand in the expectation too, where a reader of ours quotes it.
    private static string OneLine(string text) => VisibleText.Of(string.Concat(text.Select(c => char.IsControl(c) ? '\u00B7' : c)));
}
