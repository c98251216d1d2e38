using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Words;
using P = DesignSearch.Layouts.Systems.Supply.OffGrid.OffGridPurposes;

namespace DesignSearch.Layouts.Systems.Supply.OffGrid;

/// <summary>The papers of a plant without mains: what to try on panel and battery, what to write down.</summary>
internal static class OffGridPaperWords
{
    private const string Volt = "V";

    public static LogColumn AtSunrise { get; } = new("battery before sunrise", Volt);

    public static IEnumerable<CommissioningStep> Steps(BatteryPlan plan, PaperGround ground)
    {
        var (most, keep, off, on) = OffGridWords.Limits(plan.Battery.Chemistry);
        return
        [
            .. ground.Try(
                P.Battery, "before anything is joined to it: measure it at rest, and look for plus and minus twice",
                Written.Sentence($"over {on:0.0} V at rest"), Volt),
            .. ground.Try(
                P.Panel, "switched off from the charge controller, in the sun: measure plus against minus with insulated probes",
                Written.Sentence($"plus is plus; never over {plan.ColdOpenV:0} V, which a clear frosty morning gives"), Volt),
            .. ground.Try(P.PanelSwitch, "turn it off at noon", "the charge controller shows no current, and shows it again when it is on"),
            .. ground.Try(
                P.Controller, "read the battery on the first sunny afternoon that fills it",
                Written.Sentence($"ends at {most:0.0} V, then keeps {keep:0.0} V"), Volt),
            .. ground.Try(
                P.Guard, "set it for a minute above what the battery has, with a pump running",
                Written.Sentence($"everything goes off; set back to off at {off:0.0} V and on at {on:0.0} V"), Volt),
        ];
    }
}
