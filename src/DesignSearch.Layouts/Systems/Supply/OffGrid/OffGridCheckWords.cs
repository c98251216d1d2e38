using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.OffGrid;

namespace DesignSearch.Layouts.Systems.Supply.OffGrid;

/// <summary>What the checks of a supply without mains found, in words.</summary>
internal static class OffGridCheckWords
{
    private const double HoursPerDay = 24;

    public static FormattableString NoMains(IReadOnlyList<Circuit> unfed) => unfed.Count == 0
        ? (FormattableString)$"There are no mains, and nothing needs them."
        : $"There are no mains for the {string.Join(", ", unfed.Select(c => c.Device))}.";

    public static FormattableString DarkestRun(BatteryPlan plan) => Both(
        Both(
            $"From {plan.StandingW:0.0} W at every hour and {plan.DaylightW:0.0} W more by day,",
            $"{plan.RunHours / HoursPerDay:0.0} dark days of the winter \"{plan.RunWinter}\" leave {plan.RunWh:0} W·h to the battery:"),
        Both(
            $"{plan.NeededAmpHours:0} A·h at {plan.LowestC:0} °C and worn;",
            $"{Written.Count(plan.Batteries, "piece")} of {plan.Battery.Name} hold {plan.AmpHours:0} A·h at 24 V."));

    public static FormattableString Refill(BatteryPlan plan, double least) => Both(
        $"{Written.Count(plan.Panels, "piece")} of {plan.Panel.Name} through {plan.Controller.Name} into {plan.Battery.Name} bring",
        $"{plan.Refill:0.00} times what is drawn in the darkest thirty days; {least:0.0} is wanted.");

    public static FormattableString Cold(BatteryPlan plan) => Both(
        $"{plan.Battery.Name} may be charged down to {plan.Battery.LeastChargeC:0} °C and used down to {plan.Battery.LeastC:0} °C;",
        $"the winters fall to {plan.LowestC:0.0} °C, and so does the house when its heat fails. {Acid(plan)}");

    public static FormattableString Charge(BatteryPlan plan) => Both(
        $"The panels charge with up to {plan.ChargeA:0.0} A; {Written.Count(plan.BatteryStrings, "string")} of {plan.Battery.Name}",
        $"{(plan.BatteryStrings == 1 ? "bears" : "bear")} {plan.BatteryStrings * plan.Battery.MostChargeA:0} A.");

    private static string Acid(BatteryPlan plan) => BatterySize.ChargeAgainstFrost(plan.Battery.Chemistry, plan.LowestC) is > 0 and var left
        ? Written.Sentence($"With {100 * left:0} % of its charge left the acid does not freeze.")
        : Written.Sentence($"It has no acid to freeze, or no frost to fear.");

    private static FormattableString Both(FormattableString first, FormattableString second) => $"{first} {second}";
}
