using System.Diagnostics;
using DesignSearch.Files;

namespace DesignSearch.Cli.Terminal;

/// <summary>
/// Progress on the error stream: rewritten ten times a second in a terminal, in as many words as it is wide; a plain line every ten seconds elsewhere, also where
/// nothing new is told, so that nobody wonders whether it still works.
/// </summary>
public sealed class ProgressLine
{
    private const double Overdue = 10;

    private readonly TextWriter error;
    private readonly bool live;
    private readonly bool quiet;
    private readonly Func<int> columns;
    private readonly TimeSpan beat;
    private readonly Lock gate = new();
    private readonly Func<TimeSpan> now;
    private Timer? timer;
    private TimeSpan? last;
    private TimeSpan told;
    private double done = double.NaN;
    private IReadOnlyList<string> texts = [];
    private int width;

    /// <summary>Prepares the line.</summary>
    /// <param name="error">Where it goes.</param>
    /// <param name="live">True in a terminal that can rewrite a line.</param>
    /// <param name="quiet">True to say nothing.</param>
    /// <param name="columns">Tells the width of the terminal.</param>
    /// <param name="beat">How long it is silent at most; null for a second in a terminal and ten elsewhere.</param>
    /// <param name="now">Tells the time since the beginning; null for a clock that starts here.</param>
    public ProgressLine(TextWriter error, bool live, bool quiet, Func<int> columns, TimeSpan? beat = null, Func<TimeSpan>? now = null)
    {
        var clock = Stopwatch.StartNew();
        (this.error, this.live, this.quiet, this.columns) = (error, live, quiet, columns);
        (this.beat, this.now) = (beat ?? TimeSpan.FromSeconds(live ? 1 : 10), now ?? (() => clock.Elapsed));
    }

    /// <summary>Shows how far the search is.</summary>
    /// <param name="share">Share done [0…1]; NaN where unknown.</param>
    /// <param name="words">What to say, the longest first; a terminal shows the first that it can hold.</param>
    public void Show(double share, params IReadOnlyList<string> words)
    {
        lock (gate)
        {
            if (quiet)
                return;
            // A share that stands still leaves the time going on.
            if (share != done)
                told = now();
            (done, texts) = (share, words);
            timer ??= new(_ => Beat(), null, beat, beat);
            if (last is null || now() - last >= TimeSpan.FromSeconds(live ? 0.1 : 10))
                Write();
        }
    }

    /// <summary>Takes the line back, so that what follows begins on a clean one.</summary>
    public void End()
    {
        lock (gate)
        {
            timer?.Dispose();
            timer = null;
            if (live && width > 0)
                error.Write("\r" + new string(' ', width) + "\r");
            width = 0;
        }
    }

    private void Beat()
    {
        lock (gate)
        {
            if (timer is null || now() - last < beat)
                return;
            try
            {
                Write();
            }
            catch (Exception e) when (e is IOException or ObjectDisposedException)
            {
                // Nobody reads it any more; whoever shows next will hear of it.
                timer.Dispose();
            }
        }
    }

    private void Write()
    {
        last = now();
        var head = double.IsNaN(done) ? "" : FormattableString.Invariant($"{100 * done,3:0} %{Left()}: ");
        if (!live)
        {
            error.WriteLine(head + VisibleText.Of(texts[0]));
            return;
        }

        // The last column stays free: a line that fills it would wrap and could not be taken back.
        var room = Math.Max(1, columns() - 1);
        var line = head + VisibleText.Of(texts.FirstOrDefault(t => head.Length + t.Length <= room) ?? texts[^1]);
        line = line[..Math.Min(line.Length, room)];
        error.Write("\r" + line.PadRight(width));
        width = line.Length;
    }

    private string Left()
    {
        if (done is not (> 0.01 and < 1))
            return "";
        var seconds = told.TotalSeconds / done * (1 - done) - (now() - told).TotalSeconds;
        // What was reckoned is over, and no more was told since.
        if (seconds < -Overdue)
            return ", longer than reckoned";
        var left = TimeSpan.FromSeconds(Math.Clamp(seconds, 0, TimeSpan.FromDays(999).TotalSeconds));
        return FormattableString.Invariant($", {(left.TotalHours < 1 ? "" : $"{(int)left.TotalHours} h ")}{left.Minutes} min {left.Seconds:00} s left");
    }
}
