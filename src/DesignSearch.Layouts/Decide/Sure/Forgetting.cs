using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design;
using DesignSearch.Season.House;

namespace DesignSearch.Layouts.Decide.Sure;

/// <summary>Nights on which nobody draws a night cover that is drawn by hand.</summary>
internal static class Forgetting
{
    // Who is away, ill or late, now and then (own choice, no source).
    private const double MostNights = 0.03;
    private const double HorizonDeg = 90;

    // Where the night lasts for days somebody comes by once in a day.
    private const int LongestNightHours = 24;

    /// <summary>The share of nights.</summary>
    public static DoubtfulFigure Figure { get; } = new(DoubtWords.Forgotten, 0, 0, MostNights, DoubtWords.ForgottenWhy, DoubtWords.ForgottenNights);

    /// <summary>Whether somebody has to draw a cover of this layout.</summary>
    /// <param name="built">The layout.</param>
    public static bool Matters(BuiltLayout built) => built.Installation.House is { NightCoverResistanceM2KPerW: > 0, NightCoverDrawnBy: CoverDrawing.Hand };

    /// <summary>A winter in which the cover stays open on so many of its nights, each as likely as any other.</summary>
    /// <param name="winter">The winter.</param>
    /// <param name="share">Share of its nights, 0 to 1.</param>
    /// <param name="seed">Any number; other nights by another.</param>
    public static Winter In(Winter winter, double share, int seed)
    {
        var random = new Random(seed);
        return winter with { CoverLeftOpen = [.. Nights(winter).Where(_ => random.NextDouble() < share)] };
    }

    /// <summary>Every night of a winter, from the hour in which it falls to the one in which it ends; what is dark for longer than a day is so many nights.</summary>
    internal static IEnumerable<HourSpan> Nights(Winter winter)
    {
        for (var hour = 0; hour < winter.Hours; hour++)
        {
            if (winter.SunZenithDeg[hour] < HorizonDeg)
                continue;
            var first = hour;
            while (hour + 1 < winter.Hours && winter.SunZenithDeg[hour + 1] >= HorizonDeg)
                hour++;
            // Dusk and dawn are dark in part.
            var (from, to) = (Math.Max(0, first - 1), Math.Min(winter.Hours - 1, hour + 1));
            if (to - from + 1 <= LongestNightHours)
                yield return new(from, to - from + 1);
            else
                for (var day = from; day <= to; day += LongestNightHours)
                    yield return new(day, Math.Min(LongestNightHours, to - day + 1));
        }
    }
}
