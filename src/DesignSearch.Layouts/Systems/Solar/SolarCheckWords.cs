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

    public static FormattableString MountArea(CollectorMount mount, double areaM2) =>
        $"It carries {areaM2:0.#} m²; {mount.Name} is made for {mount.MaxAreaM2:0.#} m².";

    public static FormattableString TurnLimit(CollectorMount mount, double deg) =>
        $"It turns {deg:0.#}° to either side; {mount.Name} lets it turn {mount.LimitAngleDeg:0.#}°.";

    public static FormattableString Storm(Stand stand, CollectorMount mount) => Both(
        $"A gust of {stand.GustMPerS:0} m/s takes each frame's {stand.AreaM2:0.#} m² with {stand.StormN / NPerKN:0.0} kN",
        $"(coefficient {stand.Wind.Worst:0.0#}), lifting too; {mount.Name} is good for {mount.HoldsWindMPerS:0} m/s if its feet hold.");

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
            $"In the storm the wind turns a frame with {stand.TurnsNm:0} N·m.",
            $"{stand.Stops?.Name} hold {stand.Stops?.HoldsNm ?? 0:0} N·m, {stand.Bolt?.Name} {stand.Bolt?.HoldsNm ?? 0:0} N·m."),
        Both(
            $"On the list for {Written.Count(frames, "frame")}: {Written.Count((long)stops, "pair of stops", "pairs of stops")}",
            $"and {Written.Count((long)bolts, "bolt")} that hold it."));

    public static FormattableString Locking(Drive drive, Holdfast? bolt) => Both(
        $"The drive's gear passes on {100 * drive.GearEfficiency:0} % and is {(drive.IsSelfLocking ? "" : "not ")}sold as self-locking;",
        bolt is null
            ? Both(
                $"below {100 * WormGear.LocksBelow:0} % a worm gear holds by itself, above {100 * WormGear.SlipsAbove:0} % it does not.",
                $"Vibration defeats both: stops and a bolt take the storm.")
            : $"a bolt that falls home without current holds {bolt.HoldsNm:0} N·m in its stead.");

    public static FormattableString TurningTime(double turnDeg, double seconds, double most) =>
        $"From stop to stop, {turnDeg:0}°, the frame takes {seconds:0} of at most {most:0} s.";

    public static FormattableString Torque(double windMPerS, double neededNm, Drive drive) => Both(
        $"Turning in {windMPerS:0} m/s of wind, with half as much again in hand,",
        $"takes {neededNm:0.0} of the {drive.TorqueNm:0.0} N·m of {drive.Name}.");

    public static FormattableString Holding(double gustNm, double holdsNm, string by) => Both(
        $"A gust half as fast again as the working wind turns with {gustNm:0} N·m; {by} holds {holdsNm:0} N·m.",
        $"In a storm end stops and a bolt must take the load.");

    public static FormattableString Freezing(SolarLoop solar, double nightC)
    {
        if (solar.MayFreeze)
            return $"A clear sky takes the collector to about {nightC:0} °C; it and its plastic pipe are made to freeze without bursting.";
        if (!solar.StaysFull)
            return $"The collector stands empty at night, when a clear sky takes it to about {nightC:0} °C.";
        return solar.Fluid is { } fluid
            ? Both(
                $"A clear sky takes the collector to about {nightC:0.#} °C; the antifreeze holds to {solar.ProtectsToC:0.#} °C:",
                $"{fluid.Name} to {fluid.FreezesC:0.#} °C, {solar.Protection.Name} to {solar.Protection.ProtectsToC:0.#} °C.")
            : Both(
                $"A clear sky takes the collector to about {nightC:0.#} °C;",
                $"no antifreeze of the catalogue holds to the {solar.Protection.ProtectsToC:0.#} °C of {solar.Protection.Name}.");
    }

    public static FormattableString WorkingWind(double wantedMPerS, CollectorMount mount) =>
        $"It must still turn in {wantedMPerS:0} m/s of wind here; {mount.Name} may turn in up to {mount.WorkingWindMPerS:0}.";

    public static FormattableString UnpoweredFrost(bool isSafe, bool mayFreeze, double nightC) => isSafe
        ? mayFreeze
            ? (FormattableString)$"Without current it may freeze at about {nightC:0} °C: it and its plastic pipe are made for that."
            : $"Without current the collector is protected as with it, on a night that takes it to about {nightC:0} °C."
        : Both(
            $"When the current fails on a night that takes the collector to about {nightC:0} °C, its water does not run out and it bursts;",
            $"take a protection that works without current.");

    public static FormattableString Headroom(double tankM, double ridgeM) =>
        $"The tank is {tankM:0.0#} m high, the house {ridgeM:0.0#} m under its ridge.";

    public static FormattableString FirstMetres(double stagnationC, double bearsC) => Both(
        $"Dry in the sun the collector reaches {stagnationC:0} °C (from its certificate, not a formula);",
        $"the pipe next to it bears {bearsC:0} °C.");

    public static FormattableString PipeRating(LoopHeat heat, double bearsC) => heat.SteamC is { } steamC
        ? Both(
            $"In full sun, with the tank at its ceiling of {heat.CeilingC:0} °C, {heat.OutletC:0} °C come down the long pipe;",
            $"standing, the closed loop pushes steam of {steamC:0} °C into it; it bears {bearsC:0} °C.")
        : Both(
            $"In full sun, with the tank at its ceiling of {heat.CeilingC:0} °C, {heat.OutletC:0} °C come down the long pipe,",
            $"and {heat.StartsAtC:0} °C at a start on a hot collector; it bears {bearsC:0} °C.");

    public static FormattableString HotStart(LoopHeat heat, SolarController? controller, double volts)
    {
        var above = heat.LockOutC;
        if (!heat.IsLockedOut)
        {
            return controller is null
                ? Both(
                    $"No controller of {volts:0} V in the catalogue has three sensors and leaves the pump off above {above:0} °C,",
                    $"which is what a torn sensor reads.")
                : $"The {heat.StandsC:0} °C of a collector that stood in the sun harm nothing; above {above:0} °C a sensor is torn.";
        }

        return controller is { } has
            ? Both(
                $"The collector reaches {heat.StandsC:0} °C when it stands; the controller leaves the pump off above {above:0} °C",
                $"(it can be told {has.LockOutFromC:0} to {has.LockOutToC:0} °C).")
            : Both(
                $"The collector reaches {heat.StandsC:0} °C when it stands; pipe or sleeve want the pump left off above {above:0} °C:",
                $"no controller of {volts:0} V in the catalogue can be told so; take pipe and sleeve that bear more.");
    }

    public static FormattableString OpenTank(SolarLoop solar) => !solar.Tank.IsClosed
        ? (FormattableString)$"The tank stands open to the air."
        : solar.StaysFull || solar.Protection.ExchangerEffectiveness < 1
            ? $"The tank is closed; an exchanger keeps the loop's water apart from it."
            : Both(
                $"The tank is closed and under pressure, and the loop's water is its own: no air gets in, nothing runs out, and frost",
                $"bursts the collector. Take an open tank, or a protection with an exchanger.");

    public static FormattableString PumpInlet(double hotC, double hasM, double wantedM) => Both(
        $"At {hotC:0} °C the water stands {hasM:0.0} m above boiling at the pump's inlet, {wantedM:0.0} m are wanted;",
        $"the pump stands low beside the tank, its inlet pipe short and wide.");

    public static FormattableString Folds(Pipe pipe) =>
        $"{pipe.Name} keeps water in its folds and never drains quite empty: what stays freezes and bursts it.";

    public static FormattableString InsulationHeat(double bearsC, double hottestC, double stagnationC, double? nearBearsC)
    {
        FormattableString near = nearBearsC is { } sleeveC ? (FormattableString)$"the sleeve bears {sleeveC:0} °C" : $"the pipe stays bare";
        return Both(
            $"The long pipe's sleeve bears {bearsC:0} °C and meets {hottestC:0} °C;",
            $"next to the collector, where {stagnationC:0} °C may come, {near}.");
    }

    public static FormattableString InsulationFit(double outerMm, PipeInsulation sleeve) =>
        $"The pipe is {outerMm:0} mm thick; {sleeve.Name} is made for {sleeve.InnerFromMm:0} to {sleeve.InnerToMm:0} mm.";

    public static FormattableString Lift(double liftM, Pump pump) =>
        $"The empty loop must be filled {liftM:0.0} m up, half a metre more for safety; {pump.Name} lifts {pump.HeadAtNoFlowM:0.0} m.";

    public static FormattableString Flow(LoopFlow flow, Pump pump) => Both(
        $"{pump.Name} brings {flow.KgPerS * SecondsPerMinute:0.0} of the {flow.WantedKgPerS * SecondsPerMinute:0.0} L/min",
        $"the collectors want, at {flow.DropPa / PaPerKPa:0.0} kPa.");

    public static FormattableString RunsBack(FreezeProtection protection, double neededM, double fallM, double boreMm) => Both(
        $"Every pipe must fall at least {protection.MinFallPercent:0.#} cm a metre, {neededM:0.0} m over the run,",
        $"and the collector's lower edge stands {fallM:0.0} m above what it runs back to; {Bore(protection, boreMm)}");

    public static FormattableString LetOut(FreezeProtection protection, double boreMm) => Both(
        $"Every pipe must fall at least {protection.MinFallPercent:0.#} cm a metre to where the valves let it out;",
        Bore(protection, boreMm));

    public static FormattableString TankHeat(double highestC, double bearsC) =>
        $"The tank came to {highestC:0} °C at most; tank and heat release bear {bearsC:0} °C.";

    public static FormattableString Pressure(SolarLoop solar, (decimal Reliefs, decimal Litres, decimal Vents) has)
    {
        var first = solar.ClosedLoop is { } loop ? Vessel("loop", loop) : Vessel("tank", solar.ClosedTank!);
        var then = solar.ClosedLoop is not null && solar.ClosedTank is { } tank ? Both(first, Vessel("tank", tank)) : first;
        return Both(then, $"On the list: relief valves {has.Reliefs:0}, vessels of {has.Litres:0} L in all, vents {has.Vents:0}.");
    }

    private static FormattableString Vessel(string what, ClosedWater closed) => Both(
        $"The closed {what} of {closed.ContentL:0} L wants {closed.WantedL:0.0} L of expansion vessel:",
        $"p0 {closed.ColdBar:0.0#} bar, pe {closed.FinalBar:0.0#} bar, relief at {closed.Relief?.OpensAtBar ?? 0:0.#} bar.");

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
