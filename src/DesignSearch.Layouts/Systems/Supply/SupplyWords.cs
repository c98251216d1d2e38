using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>How a supply is said: what is looked for, what is dangerous, what returns.</summary>
internal static class SupplyWords
{
    public const string AlwaysOn = "always on";
    public const string Controls = "controls";
    public const string TheOthers = "other mains devices";

    public static Caution Mains { get; } = new("Mains voltage", """
        Mains in a wet greenhouse kills. A licensed person plans, joins and tests it after the local code: a 30 mA residual-current
        device and the breaker where the cable begins, splash-proof boxes, mechanical protection, mains and low voltage in separate
        boxes and ducts. Whether the dwelling's earth is carried out or the greenhouse has a rod of its own is theirs to choose after
        measuring.
        """.ReplaceLineEndings(" ")) { Harm = Harm.Kills };

    public static Caution LowVoltage { get; } = new("Low voltage", """
        A safety supply, a time-lag fuse right behind it that the cable bears, cable glands facing down with a drip loop. Low voltage
        still starts fires: no loose joints.
        """.ReplaceLineEndings(" "));

    public static Upkeep TestButton { get; } = new(
        "Press the test button of the residual-current device; it must trip.", "every month of the season", 0.2);

    public static Upkeep MainsLook { get; } = new(
        "Have a licensed person look at the mains: boxes, glands, joints and earth.", "as the local code says, and after any flood", 0)
    {
        LicensedHoursPerYear = 0.5,
    };

    public static Upkeep LowLook { get; } = new(
        "With the current off, look for damp in the control box, loose joints, green copper and bitten cables.", "every autumn", 0.5);

    public static string SupplyOf(double volts) => Written.Sentence($"supply of {volts:0} V");

    public static FormattableString WantedSupply(double volts, double watts) => $"a supply of {volts:0} V for {watts:0} W";

    public static FormattableString WantedFeeder(LowLine line) =>
        $"a cable for {line.RunningA:0.0} A at {line.Volts:0} V over {line.FeederM:0} m with at most 5 % drop";

    public static FormattableString WantedBranch(Circuit circuit) =>
        $"a cable of {circuit.Cores} cores for {circuit.StartA:0.0} A over {circuit.CableM:0} m";

    public static FormattableString WantedMainsCable(double amperes, double metres) =>
        $"a mains cable for {amperes:0.0} A over {metres:0} m";

    public static FormattableString WantedBreaker(double amperes, double cableA) =>
        $"a circuit breaker for {amperes:0.0} A that is not above the cable's {cableA:0} A";
}
