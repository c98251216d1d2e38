using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>How a solar plant is named.</summary>
internal static class SolarWords
{
    public const string ComesWith = " with mount, pipe, tank and heat release";
    public const string Store = "tank";

    public static string Title(SolarLoop solar)
    {
        var collectors = Written.Count(solar.Count, "collector");
        var tanks = solar.TankCount == 1
            ? Written.Sentence($"a {solar.Tank.VolumeL:0} L tank")
            : Written.Sentence($"{solar.TankCount} {solar.Tank.VolumeL:0} L tanks");
        return Written.Sentence($"{collectors} ({solar.AreaM2:0.0} m², {Turning(solar.Mount.Turning)}) with {tanks}");
    }

    public static string Turning(TurningKind turning) => turning switch
    {
        TurningKind.Fixed => "fixed",
        TurningKind.TwoPosition => "two-position",
        TurningKind.Stepped => "stepped",
        _ => "continuous",
    };

    public static FormattableString MetalPipe(double bearsC) => $"a metal pipe for the first metres that bears {bearsC:0} °C";

    public static FormattableString Relief => $"a relief valve";

    public static FormattableString Fluid(double coldC) => $"an antifreeze that holds to {coldC:0.#} °C";

    public static FormattableString Vessel(double litres, double bar) => $"an expansion vessel of {litres:0} L for {bar:0.#} bar";

    public static FormattableString Controller(double volts, double lockOutC) =>
        $"a solar controller of {volts:0} V with three sensors that holds the pump back above {lockOutC:0} °C";

    public static FormattableString ReleasePump(double volts) => $"a pump of {volts:0} V for the heat release";

    public const string Hand = "turning by hand";
    public const string HandWhy = "Nobody turns a frame every day of a winter (estimate, no source).";

    public static string LeftStanding(double share) => Written.Sentence(
        $"the frame is turned by hand on two days of three: the collector gives {100 * share:0} % of what it would");

    public static FormattableString Anchor(bool onWall) => onWall ? (FormattableString)$"a wall bolt" : $"a ground screw or an anchor bolt";

    public static FormattableString Stops(double momentNm) => $"stops for a frame that hold {momentNm:0} N·m";

    public static FormattableString Bolt(double momentNm) => $"a locking bolt for a frame that holds {momentNm:0} N·m";
}
