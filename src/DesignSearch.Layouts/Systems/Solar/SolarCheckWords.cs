using DesignSearch.Parts.Mechanics;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What the checks of a solar plant found, in words.</summary>
internal static class SolarCheckWords
{
    private const double NPerKN = 1000;
    private const double PaPerKPa = 1000;
    private const double SecondsPerMinute = 60;

    public static FormattableString Storm(double gustMPerS, double forceN, double holdsMPerS) => Both(
        $"A gust of {gustMPerS:0} m/s pulls at the collectors with {forceN / NPerKN:0.0} kN, up as well as sideways;",
        $"the stand is good for {holdsMPerS:0} m/s if its feet hold.");

    public static FormattableString Anchorage(
        double gustMPerS, double liftN, double weightN, int anchors, double eachN, double holdsN) => Both(
        $"A gust of {gustMPerS:0} m/s may lift with {liftN / NPerKN:0.0} kN, the collectors weigh {weightN / NPerKN:0.0} kN:",
        $"each of {anchors} anchors must stand {eachN:0} N of the {holdsN:0} N it holds. Test one by pulling.");

    public static FormattableString Locking(Drive drive) => Both(
        $"The drive's gear passes on {100 * drive.GearEfficiency:0} % and is {(drive.IsSelfLocking ? "" : "not ")}sold as self-locking;",
        Both(
            $"below {100 * WormGear.LocksBelow:0} % a worm gear holds by itself, above {100 * WormGear.SlipsAbove:0} % it does not.",
            $"Vibration defeats both: stops or a bolt take the storm."));

    public static FormattableString TurningTime(double turnDeg, double seconds, double most) =>
        $"From stop to stop, {turnDeg:0}°, the frame takes {seconds:0} of at most {most:0} s.";

    public static FormattableString Torque(double windMPerS, double neededNm, double hasNm) => Both(
        $"Turning in {windMPerS:0} m/s of wind, with half as much again in hand,",
        $"takes {neededNm:0.0} of the drive's {hasNm:0.0} N·m.");

    public static FormattableString Holding(double gustNm, double holdsNm) => Both(
        $"A gust half as fast again as the working wind pulls with {gustNm:0} N·m; the drive holds {holdsNm:0} N·m.",
        $"In a storm end stops or a bolt must take the load, never the gear.");

    public static FormattableString Freezing(FreezeProtection protection, double nightC) => protection.Method == FreezeMethod.Antifreeze
        ? Both(
            $"A clear sky takes the collector to about {nightC:0} °C;",
            $"the antifreeze holds to {protection.ProtectsToC:0} °C.")
        : $"The collector stands empty at night, when a clear sky takes it to about {nightC:0} °C.";

    public static FormattableString WorkingWind(double wantedMPerS, double turnsMPerS) =>
        $"It must still turn in {wantedMPerS:0} m/s of wind here; the maker lets it turn in up to {turnsMPerS:0}.";

    public static FormattableString UnpoweredFrost(bool isSafe, double nightC) => isSafe
        ? (FormattableString)$"Without current the collector is protected as with it, on a night that takes it to about {nightC:0} °C."
        : Both(
            $"When the current fails on a night that takes the collector to about {nightC:0} °C, its water does not run out and it bursts;",
            $"take a protection that works without current.");

    public static FormattableString Headroom(double tankM, double ridgeM) =>
        $"The tank is {tankM:0.0#} m high, the house {ridgeM:0.0#} m under its ridge.";

    public static FormattableString FirstMetres(double stagnationC, double bearsC) => Both(
        $"Dry in the sun the collector reaches {stagnationC:0} °C (from its certificate, not a formula);",
        $"the pipe next to it bears {bearsC:0} °C.");

    public static FormattableString PipeRating(double ceilingC, double bearsC) =>
        $"The pump stops at {ceilingC:0} °C in the tank; the long pipe bears {bearsC:0} °C.";

    public static FormattableString InsulationHeat(double bearsC, double ceilingC, double stagnationC, double? nearBearsC)
    {
        FormattableString near = nearBearsC is { } sleeveC ? (FormattableString)$"the sleeve bears {sleeveC:0} °C" : $"the pipe stays bare";
        return Both(
            $"The long pipe's sleeve bears {bearsC:0} °C, the tank's ceiling is {ceilingC:0} °C;",
            $"next to the collector, where {stagnationC:0} °C may come, {near}.");
    }

    public static FormattableString InsulationFit(double outerMm, PipeInsulation sleeve) =>
        $"The pipe is {outerMm:0} mm thick, the sleeve is made for {sleeve.InnerFromMm:0} to {sleeve.InnerToMm:0} mm.";

    public static FormattableString Lift(double liftM, double headM) =>
        $"The empty loop must be filled {liftM:0.0} m up, half a metre more for safety; the pump lifts {headM:0.0} m.";

    public static FormattableString Flow(LoopFlow flow) => Both(
        $"The pump brings {flow.KgPerS * SecondsPerMinute:0.0} of the {flow.WantedKgPerS * SecondsPerMinute:0.0} L/min",
        $"the collectors want, at {flow.DropPa / PaPerKPa:0.0} kPa.");

    public static FormattableString RunsBack(FreezeProtection protection, double neededM, double fallM, double boreMm) => Both(
        $"Every pipe must fall at least {protection.MinFallPercent:0.#} cm a metre, {neededM:0.0} m over the run,",
        $"and the collector stands {fallM:0.0} m above the tank; {Bore(protection, boreMm)}");

    public static FormattableString LetOut(FreezeProtection protection, double boreMm) => Both(
        $"Every pipe must fall at least {protection.MinFallPercent:0.#} cm a metre to where the valves let it out;",
        Bore(protection, boreMm));

    public static FormattableString TankHeat(double highestC, double bearsC) =>
        $"The tank came to {highestC:0} °C at most; tank and heat release bear {bearsC:0} °C.";

    public static FormattableString Pressure(
        double litres, double growsL, double vesselL, int closed, (decimal Reliefs, decimal Vessels, decimal Vents) has) => Both(
        $"What is closed holds {litres:0} L, which grow by some {growsL:0.0} L when they warm and want {vesselL:0} L of expansion vessel",
        $"in all; relief valves {has.Reliefs:0}, vessels {has.Vessels:0} for {closed:0}, vents {has.Vents:0}.");

    public static FormattableString FacesSun(double azimuthDeg, double offDeg, double noonDeg, bool isNorthern) => Both(
        $"It faces {azimuthDeg:0}° clockwise from true north, {offDeg:0}° away from the noon sun,",
        $"which stands in the {(isNorthern ? "south" : "north")} here ({noonDeg:0}°).");

    private static FormattableString Bore(FreezeProtection protection, double boreMm) =>
        $"the pipe's bore is {boreMm:0} mm, {protection.MinBoreMm:0} mm are needed.";

    // Two halves of a sentence that is too long for one line; put into words only when it is read.
    private static FormattableString Both(FormattableString first, FormattableString second) => $"{first} {second}";
}
