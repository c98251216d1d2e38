using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Electrics;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>What the checks of a supply found, in words.</summary>
internal static class SupplyCheckWords
{
    public static FormattableString Lacking { get; } = $"The catalogue lacks a part for it; see there.";

    public static FormattableString Drop(LowLine line) => Both(
        $"At {line.Volts:0} V the worst placed device loses {100 * line.WorstDrop:0.0} of at most 5 % of its voltage",
        $"over {line.FeederM:0} m of {line.Feeder?.SectionMm2 ?? 0:0.##} mm² and its own cable.");

    public static FormattableString StartDrop(LowLine line) =>
        $"At {line.Volts:0} V a starting motor loses {100 * line.WorstStartDrop:0} of at most 20 % of its voltage.";

    public static FormattableString Fuse(LowLine line)
    {
        FormattableString fuse = line.MainFuseA > 0
            ? (FormattableString)$"its time-lag fuse is {line.MainFuseA:0.##} A"
            : $"no fuse size serves";
        FormattableString draws = $"everything together draws {line.RunningA:0.00} A, {line.StartA:0.0} A at a start";
        return Both(
            $"At {line.Volts:0} V {draws}; {fuse}, each device has its own.",
            $"The worst cable must bear {100 * line.WorstFuseShare:0} % of what it may, to stand until its fuse melts.");
    }

    public static FormattableString Loop(FaultLoop loop, double beforeOhm)
    {
        var amperes = EarthFault.ShortA(SupplyPlan.MainsVolts, loop.Ohm);
        return Both(
            $"A dead short at the {loop.To} finds {loop.Ohm:0.00} Ω ({beforeOhm:0.00} Ω of it before the cable) and draws {amperes:0} A;",
            $"the breaker of {loop.BreakerA:0} A trips at once up to {loop.LargestOhm:0.00} Ω.");
    }

    public static FormattableString Power(LowLine line) =>
        $"Everything at {line.Volts:0} V draws {line.Watts:0} W; {line.Supply?.Name} gives {line.Supply?.Watts ?? 0:0} W.";

    public static FormattableString StartCurrent(LowLine line) => Both(
        $"While the hungriest at {line.Volts:0} V start, {line.StartA:0.0} A are drawn;",
        $"{line.Supply?.Name} gives {(line.Supply?.Watts ?? 0) / line.Volts:0.0} A. What one control switches starts together.");

    public static FormattableString Apart(double volts, bool hasMains) => hasMains
        ? (FormattableString)$"The highest low voltage is {volts:0} V, in a box and ducts apart from the mains."
        : $"The highest low voltage is {volts:0} V, and no mains stands in the greenhouse.";

    public static FormattableString Mains(double runningA, double startA, double limitA) => Both(
        $"Heater and everything else draw {runningA:0.0} A of the dwelling's mains,",
        $"{startA:0.0} A while a motor starts; it can spare {limitA:0.#} A.");

    // Two halves of a sentence that is too long for one line; put into words only when it is read.
    private static FormattableString Both(FormattableString first, FormattableString second) => $"{first} {second}";
}
