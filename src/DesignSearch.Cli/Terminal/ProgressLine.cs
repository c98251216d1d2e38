using System.Diagnostics;

namespace DesignSearch.Cli;

/// <summary>Progress on the error stream: rewritten ten times a second in a terminal, a plain line every ten seconds elsewhere.</summary>
public sealed class ProgressLine
{
    private readonly TextWriter error;
    private readonly bool live;
    private readonly bool quiet;
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private TimeSpan? last;
    private int width;

    /// <summary>Prepares the line.</summary>
    /// <param name="error">Where it goes.</param>
    /// <param name="live">True in a terminal that can rewrite a line.</param>
    /// <param name="quiet">True to say nothing.</param>
    public ProgressLine(TextWriter error, bool live, bool quiet) => (this.error, this.live, this.quiet) = (error, live, quiet);

    /// <summary>Shows how far the search is.</summary>
    /// <param name="done">Share done [0…1]; NaN where unknown.</param>
    /// <param name="text">What to say.</param>
    public void Show(double done, string text)
    {
        if (quiet || (last is { } t && clock.Elapsed - t < TimeSpan.FromSeconds(live ? 0.1 : 10)))
            return;
        last = clock.Elapsed;
        var left = done is > 0.01 and <= 1 ? FormattableString.Invariant($", {TimeSpan.FromSeconds(clock.Elapsed.TotalSeconds / done * (1 - done)):m\\:ss} left") : "";
        var line = (double.IsNaN(done) ? "" : FormattableString.Invariant($"{100 * done,3:0} %  ")) + text + left;
        if (live)
        {
            error.Write("\r" + line.PadRight(width));
            width = line.Length;
        }
        else
        {
            error.WriteLine(line);
        }
    }

    /// <summary>Ends the line, so that what follows begins on a new one.</summary>
    public void End()
    {
        if (live && width > 0)
            error.Write("\r" + new string(' ', width) + "\r");
        width = 0;
    }
}
