using System.Runtime.Intrinsics;
using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.Kernel;

/// <summary>Carries layouts through a winter. A layout gets the same bits in any block, at any place in it, at any lane width, on any thread.</summary>
public static class SeasonSimulator
{
    /// <summary>Step used unless another is asked for [s]; the step-halving test says what it costs.</summary>
    public const double UsualStepSeconds = 300;

    /// <summary>Lanes this machine works on at once: 8, 4 or 1.</summary>
    public static int LaneWidth => Vector512.IsHardwareAccelerated ? 8 : Vector256.IsHardwareAccelerated ? 4 : 1;

    /// <summary>Simulates a block of layouts.</summary>
    /// <param name="winter">The winter.</param>
    /// <param name="block">The layouts.</param>
    /// <param name="outcomes">One outcome a layout, in the order of the block.</param>
    /// <param name="stepSeconds">Step; a whole number of them makes an hour [s].</param>
    /// <exception cref="ArgumentException">The step does not divide the hour, a plane belongs to another winter, or there is less
    /// room for outcomes than there are layouts.</exception>
    public static void Run(WinterForcing winter, ReadOnlySpan<LayoutCase> block, Span<Outcome> outcomes, double stepSeconds = UsualStepSeconds) =>
        Run(winter, block, outcomes, null, stepSeconds, LaneWidth);

    /// <summary>Simulates one layout.</summary>
    /// <param name="winter">The winter.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="hourly">Takes every hour, warm-up included; null where nobody wants them.</param>
    /// <param name="stepSeconds">Step; a whole number of them makes an hour [s].</param>
    /// <returns>What the winter did to it.</returns>
    /// <exception cref="ArgumentException">The step does not divide the hour, or the plane belongs to another winter.</exception>
    public static Outcome Run(WinterForcing winter, LayoutCase layout, Action<HourRow>? hourly = null, double stepSeconds = UsualStepSeconds)
    {
        var outcome = new Outcome[1];
        Run(winter, [layout], outcome, hourly, stepSeconds, 1);
        return outcome[0];
    }

    internal static void Run(WinterForcing winter, ReadOnlySpan<LayoutCase> block, Span<Outcome> outcomes, Action<HourRow>? hourly, double stepSeconds, int width)
    {
        if (!(stepSeconds > 0) || Math.Abs(Math.Round(3600 / stepSeconds) * stepSeconds - 3600) > 1e-9)
            throw new ArgumentException("A whole number of steps must make an hour.", nameof(stepSeconds));
        if (outcomes.Length < block.Length)
            throw new ArgumentException("Every layout needs room for its outcome.", nameof(outcomes));
        foreach (var layout in block)
        {
            if (layout.Plane is { } plane && plane.BeamWPerM2.Length != winter.Winter.Hours)
                throw new ArgumentException("The plane's irradiance must have one entry for each hour of the winter.", nameof(block));
        }

        if (block.Length > width * BatchRunner<Lane1>.Most && AlikeFirst.Order(block) is { } order)
        {
            var (cases, sorted) = (new LayoutCase[order.Length], new Outcome[order.Length]);
            for (var i = 0; i < order.Length; i++)
                cases[i] = block[order[i]];
            InTurn(winter, cases, sorted, hourly, stepSeconds, width);
            for (var i = 0; i < order.Length; i++)
                outcomes[order[i]] = sorted[i];
            return;
        }

        InTurn(winter, block, outcomes, hourly, stepSeconds, width);
    }

    private static void InTurn(
        WinterForcing winter,
        ReadOnlySpan<LayoutCase> block,
        Span<Outcome> outcomes,
        Action<HourRow>? hourly,
        double stepSeconds,
        int width)
    {
        for (var done = 0; done < block.Length;)
        {
            var take = Math.Min(width * BatchRunner<Lane1>.Most, block.Length - done);
            var cases = block.Slice(done, take);
            var room = outcomes.Slice(done, take);
            if (width == 8)
                BatchRunner<Lane8>.Run(winter, cases, room, hourly, stepSeconds);
            else if (width == 4)
                BatchRunner<Lane4>.Run(winter, cases, room, hourly, stepSeconds);
            else
                BatchRunner<Lane1>.Run(winter, cases, room, hourly, stepSeconds);
            done += take;
        }
    }
}
