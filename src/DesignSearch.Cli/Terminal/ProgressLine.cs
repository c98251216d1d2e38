using System.Diagnostics;
using DesignSearch.Files;

namespace DesignSearch.Cli.Terminal;

/// <summary>
/// Progress on the error stream: rewritten ten times a second in a terminal, cut to its width; a plain line every ten seconds elsewhere.
/// </summary>
public sealed class ProgressLine
{
    private readonly TextWriter error;
    private readonly bool live;
    private readonly bool quiet;
    private readonly Func<int> columns;
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private TimeSpan? last;
    private int width;

    /// <summary>Prepares the line.</summary>
    /// <param name="error">Where it goes.</param>
    /// <param name="live">True in a terminal that can rewrite a line.</param>
    /// <param name="quiet">True to say nothing.</param>
    /// <param name="columns">Tells the width of the terminal.</param>
    public ProgressLine(TextWriter error, bool live, bool quiet, Func<int> columns) => (this.error, this.live, this.quiet, this.columns) = (error, live, quiet, columns);

    /// <summary>Shows how far the search is.</summary>
    /// <param name="done">Share done [0…1]; NaN where unknown.</param>
    /// <param name="text">What to say.</param>
    public void Show(double done, string text)
    {
        if (quiet || (last is { } t && clock.Elapsed - t < TimeSpan.FromSeconds(live ? 0.1 : 10)))
            return;
        last = clock.Elapsed;
        var line = (double.IsNaN(done) ? "" : FormattableString.Invariant($"{100 * done,3:0} %{Left(done)}: ")) + VisibleText.Of(text);
        if (live)
        {
            // The last column stays free: a line that fills it would wrap and could not be taken back.
            line = line[..Math.Min(line.Length, Math.Max(1, columns() - 1))];
            error.Write("\r" + line.PadRight(width));
            width = line.Length;
        }
        else
        {
            error.WriteLine(line);
        }
    }

    /// <summary>Takes the line back, so that what follows begins on a clean one.</summary>
    public void End()
    {
        if (live && width > 0)
            error.Write("\r" + new string(' ', width) + "\r");
        width = 0;
    }

    private string Left(double done)
    {
        if (done is not (> 0.01 and < 1))
            return "";
        var left = TimeSpan.FromSeconds(Math.Min(clock.Elapsed.TotalSeconds / done * (1 - done), TimeSpan.FromDays(999).TotalSeconds));
        return FormattableString.Invariant($", {(left.TotalHours < 1 ? "" : $"{(int)left.TotalHours} h ")}{left.Minutes} min {left.Seconds:00} s left");
    }
}
