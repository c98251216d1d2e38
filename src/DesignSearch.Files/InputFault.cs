namespace DesignSearch.Files;

/// <summary>One mistake in something a person wrote: where it stands, what stands there, what was expected.</summary>
/// <param name="File">The file as the person named it.</param>
/// <param name="Line">Line, counted from 1; 0 where the fault is the whole file (missing, empty).</param>
/// <param name="Column">Column in characters, counted from 1; 0 where the fault is the whole line.</param>
/// <param name="Value">What was found; empty where something is missing.</param>
/// <param name="Expected">A plain sentence part: what should stand there.</param>
public sealed record InputFault(string File, int Line, int Column, string Value, string Expected)
{
    /// <summary>One line for the console: <c>file:line:column: found 'value'; expected …</c>.</summary>
    public override string ToString()
    {
        var place = (Line, Column) switch
        {
            (0, _) => File,
            (_, 0) => FormattableString.Invariant($"{File}:{Line}"),
            _ => FormattableString.Invariant($"{File}:{Line}:{Column}"),
        };
        return Value.Length == 0 ? $"{place}: expected {Expected}" : $"{place}: found '{OneLine(Value)}'; expected {Expected}";
    }

    private static string OneLine(string text)
    {
        var shown = text.Length > 80 ? text[..77] + "..." : text;
        return string.Concat(shown.Select(c => char.IsControl(c) ? '\u00B7' : c));
    }
}
