using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Wiring;

namespace DesignSearch.Layouts.Systems.Supply.OffGrid;

/// <summary>Checks of a supply without mains.</summary>
internal static class OffGridChecks
{
    private const double Tiny = 1e-9;
    private const double LeastMiss = -1e-3;

    // What a margin of cold counts as plenty.
    private const double PlentyK = 10;

    /// <summary>The checks.</summary>
    /// <param name="plan">The supply.</param>
    public static IEnumerable<Check> Of(SupplyPlan plan)
    {
        var unfed = plan.Unfed.Count;
        yield return OffGridRules.NoMains.Found(unfed == 0, unfed == 0 ? 1 : -unfed, OffGridCheckWords.NoMains(plan.Unfed));
        if (plan.Battery is not { } battery)
            yield break;
        yield return Spare(OffGridRules.DarkestRun, 1 - (battery.NeededAmpHours / battery.AmpHours), OffGridCheckWords.DarkestRun(battery));
        var refill = (battery.Refill / BatterySizing.LeastRefill) - 1;
        yield return Spare(OffGridRules.Refill, Math.Min(1, refill), OffGridCheckWords.Refill(battery, BatterySizing.LeastRefill));
        yield return Spare(OffGridRules.Cold, Math.Min(1, ColdSpareK(battery) / PlentyK), OffGridCheckWords.Cold(battery));
        var charge = battery.BatteryStrings * battery.Battery.MostChargeA;
        yield return Spare(OffGridRules.Charge, 1 - (battery.ChargeA / charge), OffGridCheckWords.Charge(battery));
    }

    // Frost that would burst it is kept off by what is left in it: that counts in the darkest run.
    private static double ColdSpareK(BatteryPlan plan) => plan.LowestC - Math.Max(plan.Battery.LeastChargeC, plan.Battery.LeastC);

    private static Check Spare(CheckRule rule, double spare, FormattableString words)
    {
        var bounded = Math.Max(spare, -Unbounded);
        return rule.Found(spare >= -Tiny, spare >= -Tiny ? bounded : Math.Min(bounded, LeastMiss), words);
    }

    private const double Unbounded = 10;
}
