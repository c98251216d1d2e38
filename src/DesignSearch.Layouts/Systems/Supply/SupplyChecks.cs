using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>
/// Checks of supply, cables and fuses. Rated currents of the catalogue are orders of magnitude; a licensed person decides.
/// </summary>
internal static class SupplyChecks
{
    private const double Tiny = 1e-9;

    // A line without a fuse misses by something, however small its load.
    private const double LeastMiss = -1e-3;

    /// <summary>The checks.</summary>
    /// <param name="plan">The supply.</param>
    /// <param name="parts">Everything that the layout needs.</param>
    /// <param name="limitA">Current that the dwelling can spare [A]; null without a limit.</param>
    public static List<Check> Of(SupplyPlan plan, IReadOnlyList<NeededPart> parts, double? limitA)
    {
        var checks = new List<Check>(SupplyRules.All.Count);
        if (plan.Lines.Count > 0)
        {
            // Of several low voltages the tightest is told.
            checks.Add(Worst(SupplyRules.CableDrop, plan, DropShare, SupplyCheckWords.Drop));
            checks.Add(Worst(SupplyRules.StartDrop, plan, StartDropShare, SupplyCheckWords.StartDrop));
            checks.Add(Worst(SupplyRules.CableFuse, plan, LoadShare, SupplyCheckWords.Fuse, l => l.FuseA is not null));
            checks.Add(Worst(SupplyRules.SupplyPower, plan, l => l.Watts / l.Supply?.Watts, SupplyCheckWords.Power));
            checks.Add(Worst(SupplyRules.StartCurrent, plan, l => l.StartA * l.Volts / l.Supply?.Watts, SupplyCheckWords.StartCurrent));
            checks.Add(Apart(plan, parts));
        }

        if (limitA is { } limit)
        {
            var words = SupplyCheckWords.Mains(plan.DwellingA, plan.DwellingStartA, limit);
            checks.Add(SupplyRules.MainsCurrent.Found(plan.DwellingStartA <= limit, 1 - (plan.DwellingStartA / limit), words));
        }

        return checks;
    }

    private static double? DropShare(LowLine line) => line.Feeder is null ? null : line.WorstDrop / CableDrop.UsualLimit;

    private static double? StartDropShare(LowLine line) => line.Feeder is null ? null : line.WorstStartDrop / CableChooser.LargestStartDrop;

    private static double? LoadShare(LowLine line) => line.Feeder is null ? null : line.RunningA / line.CablesBearA;

    private static Check Apart(SupplyPlan plan, IReadOnlyList<NeededPart> parts)
    {
        var (volts, wanted, boxes) = (plan.LowVolts, plan.MainsW > 0 ? 2 : 1, 0m);
        foreach (var needed in parts)
            boxes += needed.Part is SmallPart { Role: SmallPartRole.ControlBox } ? needed.Quantity : 0;
        var passed = ExtraLowVoltage.Includes(volts, false) && boxes >= wanted;
        var words = SupplyCheckWords.Apart(volts, plan.MainsW > 0);
        return SupplyRules.VoltagesApart.Found(passed, 1 - (volts / ExtraLowVoltage.DirectV), words);
    }

    // The share of its limit that each line takes; null for a line that lacks a part: that fails another check, and is left out here.
    private static Check Worst(
        CheckRule rule,
        SupplyPlan plan,
        Func<LowLine, double?> share,
        Func<LowLine, FormattableString> words,
        Func<LowLine, bool>? holds = null)
    {
        LowLine? worst = null;
        var (most, held) = (double.NaN, true);
        foreach (var line in plan.Lines)
        {
            var holding = holds?.Invoke(line) ?? true;
            // A line that does not hold is worse than any that does.
            if (share(line) is { } used && (worst is null || (held && !holding) || (held == holding && used > most)))
                (worst, most, held) = (line, used, holding);
        }

        if (worst is null)
            return rule.Found(true, 0, SupplyCheckWords.Lacking);
        var passed = most <= 1 + Tiny && held;
        return rule.Found(passed, passed ? 1 - most : Math.Min(1 - most, LeastMiss), words(worst));
    }
}
