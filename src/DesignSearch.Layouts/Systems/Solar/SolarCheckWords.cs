using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Words;
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

    public static FormattableString Storm(Stand stand, double holdsMPerS) => Both(
        $"A gust of {stand.GustMPerS:0} m/s takes each frame's {stand.AreaM2:0.#} m² with {stand.StormN / NPerKN:0.0} kN",
        $"(coefficient {stand.Wind.Worst:0.0#}), lifting as well as pressing; the stand is good for {holdsMPerS:0} m/s if its feet hold.");

    public static FormattableString Anchorage(Stand stand, bool isTested) => Both(
        $"With the wind once and a half, the most laden of the {Name(stand.Anchor)} is pulled with {stand.PullN:0} N by moment and lift,",
        $"of the {stand.HoldsN:0} N {(isTested ? $"that one stood in your test" : $"of the catalogue: test one by pulling")}.");

    public static FormattableString Footing(Stand stand, double hasM3) => Both(
        Both(
            $"The storm tips a frame with {stand.TipsNm / NPerKN:0.0} kN·m about its footing's foot, {stand.DepthM:0.0#} m down;",
            $"once and a half that is righted by {stand.ConcreteM3:0.0#} m³ of concrete, and {hasM3:0.0#} m³ are on the list."),
        stand.FrostGivenM is not null
            ? (FormattableString)$"The depth is below your own figure for frost; the soil's grip is not counted."
            : (FormattableString)Both(
                $"No depth of frost is given (frost_depth_m):",
                $"ask the building office, {SiteLimits.UsualFrostM:0.0} m is only a guess."));

    public static FormattableString Ballast(Stand stand, double hasKg) => Both(
        $"So that the storm neither tips ({stand.TipsNm / NPerKN:0.0} kN·m), lifts nor pushes it along, a frame wants",
        $"{stand.BallastKg:0} kg of ballast, and {hasKg:0} kg are on the list. Weigh it out, do not guess.");

    public static FormattableString StormLock(Stand stand, decimal stops, decimal bolts, int frames) => Both(
        Both(
            $"In the storm the wind turns a frame with {stand.TurnsNm:0} N·m; the stops hold {stand.Stops?.HoldsNm ?? 0:0} N·m,",
            $"the locking bolt {stand.Bolt?.HoldsNm ?? 0:0} N·m."),
        $"On the list for {frames} {Written.Noun(frames, "frame")}: {stops:0} pairs of stops, {bolts:0} bolts that hold it.");

    public static FormattableString Locking(Drive drive, Holdfast? bolt) => Both(
        $"The drive's gear passes on {100 * drive.GearEfficiency:0} % and is {(drive.IsSelfLocking ? "" : "not ")}sold as self-locking;",
        bolt is null
            ? Both(
                $"below {100 * WormGear.LocksBelow:0} % a worm gear holds by itself, above {100 * WormGear.SlipsAbove:0} % it does not.",
                $"Vibration defeats both: stops and a bolt take the storm.")
            : $"a bolt that falls home without current holds {bolt.HoldsNm:0} N·m in its stead.");

    public static FormattableString TurningTime(double turnDeg, double seconds, double most) =>
        $"From stop to stop, {turnDeg:0}°, the frame takes {seconds:0} of at most {most:0} s.";

    public static FormattableString Torque(double windMPerS, double neededNm, double hasNm) => Both(
        $"Turning in {windMPerS:0} m/s of wind, with half as much again in hand,",
        $"takes {neededNm:0.0} of the drive's {hasNm:0.0} N·m.");

    public static FormattableString Holding(double gustNm, double holdsNm, bool byBolt) => Both(
        $"A gust half as fast again as the working wind turns with {gustNm:0} N·m; {(byBolt ? "bolt" : "drive")}: {holdsNm:0} N·m.",
        $"In a storm end stops and a bolt must take the load.");

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

    private static string Name(Holdfast? anchor) => anchor?.Form switch
    {
        HoldfastForm.GroundScrew => "ground screws",
        HoldfastForm.WallBolt => "wall bolts",
        _ => "anchor bolts",
    };

    // Two halves of a sentence that is too long for one line; put into words only when it is read.
    private static FormattableString Both(FormattableString first, FormattableString second) => $"{first} {second}";
}
