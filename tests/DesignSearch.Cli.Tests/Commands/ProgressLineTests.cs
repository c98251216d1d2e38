using System.Text.RegularExpressions;
using DesignSearch.Cli.Terminal;
using Xunit;

namespace DesignSearch.Cli.Tests;

public sealed class ProgressLineTests
{
    private const string Long = "192 layouts, 35 on the front, fewest frost degree-hours 12 K·h, least cost 4200 crowns";

    [Fact]
    public void In_a_terminal_a_line_is_cut_to_its_width_and_taken_back()
    {
        using var error = new StringWriter();
        var line = new ProgressLine(error, live: true, quiet: false, () => 40);
        line.Show(0.5, Long);
        line.End();
        var pieces = error.ToString().Split('\r');
        Assert.Equal(["", 39, 39, 0], pieces.Select((p, i) => i == 0 ? (object)p : p.Length));
        Assert.StartsWith(" 50 %, 0 min 00 s left: 192 layouts", pieces[1], StringComparison.Ordinal);
        Assert.True(string.IsNullOrWhiteSpace(pieces[2]));
        Assert.DoesNotContain('\n', error.ToString());
    }

    [Fact]
    public void In_a_terminal_it_speaks_ten_times_a_second_and_elsewhere_once_in_ten_seconds()
    {
        Assert.Equal((4, 10), (Shown(live: true, 399), Shown(live: true, 950)));
        Assert.Equal((1, 1, 2, 3), (Shown(live: false, 399), Shown(live: false, 9_999), Shown(live: false, 10_000), Shown(live: false, 25_000)));
    }

    [Fact]
    public void Elsewhere_it_writes_plain_lines_and_quiet_means_nothing()
    {
        using var error = new StringWriter();
        new ProgressLine(error, live: false, quiet: false, () => 40).Show(double.NaN, Long);
        new ProgressLine(error, live: false, quiet: true, () => 40).Show(double.NaN, Long);
        Assert.Equal(Long + Environment.NewLine, error.ToString());
    }

    [Theory]
    [InlineData(60, " 45 %, 1 min 03 s left: 1234 layouts, holds for 3112 crowns")]
    [InlineData(40, " 45 %, 1 min 03 s left: holds for 3112 c")]
    [InlineData(48, " 45 %, 1 min 03 s left: holds for 3112 crowns")]
    public void A_narrow_terminal_keeps_price_and_time(int columns, string shown)
    {
        using var error = new StringWriter();
        var line = new ProgressLine(error, live: true, quiet: false, () => columns);
        line.Show(0.45, "1234 layouts, the cheapest that holds costs 3112 crowns over the years; 35 layouts on the front", "1234 layouts, holds for 3112 crowns", "holds for 3112 crowns");
        line.End();
        var told = Regex.Replace(error.ToString().Split('\r')[1], @"\d+ min \d\d s", "1 min 03 s");
        Assert.Equal(shown[..Math.Min(shown.Length, columns - 1)], told);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Where_nothing_new_is_told_it_goes_on_telling(bool live)
    {
        using var error = new StringWriter();
        var line = new ProgressLine(TextWriter.Synchronized(error), live, quiet: false, () => 80, TimeSpan.FromMilliseconds(20));
        line.Show(0.5, "weighing");
        var clock = System.Diagnostics.Stopwatch.StartNew();
        while (error.ToString().Split("weighing").Length < 4 && clock.Elapsed < TimeSpan.FromSeconds(20))
            Thread.Sleep(10);
        line.End();
        Assert.True(error.ToString().Split("weighing").Length >= 4, error.ToString());
        var ended = error.ToString();
        Thread.Sleep(100);
        Assert.Equal(ended, error.ToString());
    }

    // How often something is said until so many milliseconds of being told in each of them.
    private static int Shown(bool live, int untilMs)
    {
        using var error = new StringWriter();
        var time = TimeSpan.Zero;
        var line = new ProgressLine(error, live, quiet: false, () => 80, TimeSpan.FromDays(1), () => time);
        for (var ms = 0; ms <= untilMs; ms++)
        {
            time = TimeSpan.FromMilliseconds(ms);
            line.Show(0.005, "x");
        }

        line.End();
        return error.ToString().Split('x').Length - 1;
    }
}
