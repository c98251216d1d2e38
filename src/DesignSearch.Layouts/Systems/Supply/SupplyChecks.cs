using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Systems.Supply.OffGrid;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>
/// Checks of supply, cables and fuses. Rated currents of the catalogue are orders of magnitude; a licensed person decides.
/// </summary>
internal static class SupplyChecks
{
    private const double Tiny = 1e-9;

    // A line for which no fuse is made.
    private const double Unbounded = 10;

    // A line without a fuse misses by something, however small its load.
    private const double LeastMiss = -1e-3;

    /// <summary>The checks.</summary>
    /// <param name="plan">The supply.</param>
    /// <param name="parts">Everything that the layout needs.</param>
    /// <param name="site">What the site allows.</param>
    public static List<Check> Of(SupplyPlan plan, IReadOnlyList<NeededPart> parts, SiteLimits site)
    {
        var checks = new List<Check>(SupplyRules.All.Count);
        if (site.HasNoMains)
            checks.AddRange(OffGridChecks.Of(plan));
        if (plan.Lines.Count > 0)
        {
            // Of several low voltages the tightest is told.
            checks.Add(Worst(SupplyRules.CableDrop, plan, DropShare, SupplyCheckWords.Drop));
            checks.Add(Worst(SupplyRules.StartDrop, plan, StartDropShare, SupplyCheckWords.StartDrop));
            checks.Add(Worst(SupplyRules.CableFuse, plan, LoadShare, SupplyCheckWords.Fuse));
            if (plan.Lines.Any(l => !l.IsBatterys))
            {
                checks.Add(Worst(SupplyRules.SupplyPower, plan, l => l.Watts / l.Supply?.Watts, SupplyCheckWords.Power));
                checks.Add(Worst(SupplyRules.StartCurrent, plan, l => l.StartA * l.Volts / l.Supply?.Watts, SupplyCheckWords.StartCurrent));
            }

            checks.Add(Apart(plan, parts));
        }

        if (!site.HasNoMains && site.MainsLimitA is { } limit)
        {
            var words = SupplyCheckWords.Mains(plan.DwellingA, plan.DwellingStartA, limit);
            checks.Add(SupplyRules.MainsCurrent.Found(plan.DwellingStartA <= limit, 1 - (plan.DwellingStartA / limit), words));
        }

        if (plan.Loop is { } loop)
        {
            var spare = loop.LargestOhm > 0 ? 1 - (loop.Ohm / loop.LargestOhm) : -1;
            checks.Add(SupplyRules.LoopImpedance.Found(spare >= 0, spare, SupplyCheckWords.Loop(loop, site.MainsLoopOhm)));
        }

        return checks;
    }

    private static double? DropShare(LowLine line) => line.Feeder is null ? null : line.WorstDrop / CableDrop.UsualLimit;

    private static double? StartDropShare(LowLine line) => line.Feeder is null ? null : line.WorstStartDrop / CableChooser.LargestStartDrop;

    private static double? LoadShare(LowLine line) => line.Feeder is null ? null : Math.Min(line.WorstFuseShare, Unbounded);

    private static Check Apart(SupplyPlan plan, IReadOnlyList<NeededPart> parts)
    {
        var (volts, wanted, boxes, supplies) = (plan.LowVolts, plan.MainsW > 0 ? 2 : 1, 0m, 0m);
        foreach (var needed in parts)
        {
            boxes += needed.Part is SmallPart { Role: SmallPartRole.ControlBox } ? needed.Quantity : 0;
            supplies += needed.Part is SmallPart { Role: SmallPartRole.SupplyBox } ? needed.Quantity : 0;
        }

        var passed = ExtraLowVoltage.Includes(volts, false) && boxes >= wanted && supplies >= plan.Lines.Count;
        var words = SupplyCheckWords.Apart(volts, plan.MainsW > 0);
        return SupplyRules.VoltagesApart.Found(passed, 1 - (volts / ExtraLowVoltage.DirectV), words);
    }

    // The share of its limit that each line takes; null for a line that lacks a part: that fails another check, and is left out here.
    private static Check Worst(
        CheckRule rule,
        SupplyPlan plan,
        Func<LowLine, double?> share,
        Func<LowLine, FormattableString> words)
    {
        LowLine? worst = null;
        var most = double.NaN;
        foreach (var line in plan.Lines)
        {
            if (share(line) is { } used && (worst is null || used > most))
                (worst, most) = (line, used);
        }

        if (worst is null)
            return rule.Found(true, 0, SupplyCheckWords.Lacking);
        var passed = most <= 1 + Tiny;
        return rule.Found(passed, passed ? 1 - most : Math.Min(1 - most, LeastMiss), words(worst));
    }
}
