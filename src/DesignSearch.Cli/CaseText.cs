using DesignSearch.Cli.Terminal;
using DesignSearch.Runs.Checking;

namespace DesignSearch.Cli;

/// <summary>A case read back on the console: a drawing, plain lines, and what is in doubt.</summary>
internal static class CaseText
{
    // Behind the word that each line begins with.
    private const int Indent = 10;

    /// <summary>Writes it.</summary>
    public static void Write(TextWriter output, RunCheck check, int width)
    {
        foreach (var drawn in HouseSketch.Of(check.Scenario.Greenhouse))
            output.WriteLine("    " + drawn);
        foreach (var told in check.Lines.SelectMany(l => Wrapped.Lines(l, width, Indent)))
            output.WriteLine(told);
        foreach (var doubt in check.Doubts.SelectMany(d => Wrapped.Lines("In doubt: " + d, width, Indent)))
            output.WriteLine(doubt);
    }
}
