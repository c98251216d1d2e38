using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Words;
using P = DesignSearch.Layouts.Systems.Solar.SolarPurposes;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>The papers of a solar plant: what to try, from filling to turning, what to ask, what to write down.</summary>
internal static class SolarPaperWords
{
    // A closed loop is tried at half as much again as it works at (common practice, no source).
    private const double TriedAt = 1.5;

    // What runs empty does so in minutes (common practice, no source).
    private const double EmptyWithinMin = 5;
    private const double SecondsPerMinute = 60;
    private const string Bar = "bar";
    private const string Minutes = "min";
    private const string Percent = "%";
    private const string Stops = "stops at once";

    public static IEnumerable<LogColumn> Log(SolarLoop solar)
    {
        yield return new("tank, top", PaperWords.Celsius);
        yield return new("tank, bottom", PaperWords.Celsius);
        yield return new("hours of the collector's pump", "h");
        if (solar.ClosedCount > 0)
            yield return new("pressure, cold", Bar);
        else
            yield return new("water topped up", "L");
    }

    public static IEnumerable<CommissioningStep> Steps(SolarLoop solar, PaperGround ground) =>
    [
        .. solar.StaysFull ? [] : Falls(solar, ground),
        .. solar.ClosedLoop is { } loop ? Closed(loop, solar.Collector.MaxBar, (P.LoopRelief, P.LoopVessel, P.LoopFill), ground) : [],
        .. solar.ClosedTank is { } tank ? Closed(tank, solar.Tank.MaxBar, (P.TankRelief, P.TankVessel, P.TankFill), ground) : [],
        .. Filled(solar, ground),
        .. Controlled(solar, ground),
        .. solar.IsDrainedByValves ? Valves(ground) : [],
        .. Turned(solar, ground),
        .. Released(solar, ground),
    ];

    public static IEnumerable<EnquiryFact> Enquiry(SolarLoop solar)
    {
        if (solar.ClosedCount == 0)
            yield break;
        if (solar.ClosedLoop is { } loop)
            yield return Asked("Closed collector loop", Said(loop) + Written.Sentence($"; {solar.Count} × {solar.Collector.Name}"));
        if (solar.Fluid is { } fluid)
            yield return Asked("Fluid in the loop", fluid.Name);
        if (solar.ClosedTank is { } tank)
            yield return Asked("Closed tank", Written.Sentence($"{solar.TankCount} × {solar.Tank.Name}, each: ") + Said(tank));
        yield return Asked("Hottest", Written.Sentence(
            $"tank {solar.Heat.CeilingC:0} °C at its ceiling, pipes {solar.Heat.HottestC:0} °C,",
            $"the collector without flow {solar.Heat.StandsC:0} °C"));
        yield return Asked(
            "Filling", "through the fill set on the list; category 3 or 4 of EN 1717 by the antifreeze, as the waterworks decide");
        yield return Asked("The builder's own work", "stand, collectors, pipe and sleeves, tank in its place, sensors and pumps");
        yield return Asked(
            "Asked of you", "join and try what is closed, set vessel and relief valve, certify it where the local rule wants that");
    }

    private static EnquiryFact Asked(string what, string value) => new(Trade.Plumber, what, value);

    private static string Said(ClosedWater closed) => Written.Sentence(
        $"{closed.ContentL:0} L, relief valve {closed.Relief?.OpensAtBar ?? 0:0.#} bar, vessel {closed.Vessel?.Litres ?? 0:0} L",
        $"at {closed.ColdBar:0.0#} bar, filled cold to {closed.ColdBar + SolarSettingWords.FillOverBar:0.0#} bar");

    private static IEnumerable<CommissioningStep> Falls(SolarLoop solar, PaperGround ground)
    {
        var falls = Written.Sentence($"at least {solar.Protection.MinFallPercent:0.#} % everywhere, no sag and no rise");
        const string Level = "lay a spirit level on every metre of both pipes and on the collector's lower edge";
        return
        [
            .. ground.Try(P.FirstMetres, Level, falls, Percent),
            .. ground.Try(P.LongPipe, Level, falls, Percent),
            .. ground.Try(
                P.Protection,
                solar.IsDrainedByValves
                    ? "run the pump till all is full, pull the plug of the supply, and let the water out"
                    : "run the pump till all is full, switch it off, and watch pipes and collector run empty",
                Written.Sentence(
                    $"empty within {EmptyWithinMin:0} minutes; air blown in at the top comes out below without water;",
                    $"some {solar.LoopLitres:0} L come back"),
                Minutes),
            .. ground.Try(P.AirVent, "listen at the vent while the loop runs empty", "draws air in, and lets no water out while it runs"),
        ];
    }

    private static IEnumerable<CommissioningStep> Closed(
        ClosedWater closed, double? bearsBar, (Purpose Relief, Purpose Vessel, Purpose Fill) to, PaperGround ground)
    {
        // Never above what collector, tank or vessel is made for.
        var opens = closed.Relief?.OpensAtBar ?? 0;
        var weakest = Math.Min(bearsBar ?? double.PositiveInfinity, closed.Vessel?.MaxBar ?? double.PositiveInfinity);
        var tried = Math.Min(TriedAt * closed.FinalBar, weakest);
        return
        [
            .. ground.Try(
                to.Vessel, "read the gas with a tyre gauge before water is in", Written.Sentence($"{closed.ColdBar:0.0#} bar"), Bar),
            .. ground.Try(
                to.Fill,
                "before the relief valve is in and with water alone: press it, shut the tap, and read it again after half an hour",
                Written.Sentence($"{tried:0.0#} bar hold, never more; then let it down to {Filled(closed):0.0#} bar to work with"),
                Bar),
            .. ground.Try(
                to.Relief,
                "turn its cap till water comes, and let go",
                Written.Sentence($"marked {opens:0.#} bar, shuts tight again; its pipe leads down to where nobody stands")),
        ];
    }

    private static double Filled(ClosedWater closed) => closed.ColdBar + SolarSettingWords.FillOverBar;

    private static IEnumerable<CommissioningStep> Filled(SolarLoop solar, PaperGround ground) =>
    [
        .. ground.Try(
            P.Antifreeze, "measure a drop with a refractometer once it has gone round for an hour",
            Written.Sentence($"ice no sooner than {solar.ProtectsToC:0.#} °C"), PaperWords.Celsius),
        .. ground.Try(P.CheckValve, "feel the warm pipe on the first morning", "as cold as the air by the collector"),
        .. ground.Try(P.FreeOutlet, "look at the hose's end with the tank full", "two pipe bores of air between it and the water"),
        .. ground.Try(
            P.FlowIndicator, "read it with the pump running, and turn the regulating valve",
            Written.Sentence($"{solar.Flow.KgPerS * SecondsPerMinute:0.0} L/min; mark the valve"), "L/min"),
    ];

    private static IEnumerable<CommissioningStep> Controlled(SolarLoop solar, PaperGround ground)
    {
        var (dials, heat) = (solar.Dials, solar.Heat);
        return
        [
            .. ground.Try(
                P.Controller, "warm the collector's sensor in a cup of water, slowly",
                Written.Sentence(
                    $"the pump starts {dials.StartDifferenceK:0.#} K over the tank's bottom and stops at {dials.StopDifferenceK:0.#} K"),
                "K"),
            .. ground.Try(
                P.Controller, "try the lock-out: unplug the collector's sensor, then set its lock-out under the present reading",
                Written.Sentence($"the pump does not start either time; the lock-out is set back to {heat.LockOutC:0} °C"),
                PaperWords.Celsius),
            .. ground.Try(
                P.TankSensors, "warm the top one past the ceiling in hot water while the pump runs",
                Written.Sentence($"the pump stops; the ceiling is set to {heat.CeilingC:0} °C"), PaperWords.Celsius),
            .. ground.Try(
                P.TankCutOut, "turn its dial down under the tank's own warmth while the pump runs",
                Written.Sentence($"the pump stops, and only a hand resets it; set back to {heat.CutOutC:0} °C"), PaperWords.Celsius),
        ];
    }

    private static IEnumerable<CommissioningStep> Valves(PaperGround ground) =>
    [
        .. ground.Try(
            P.ValveRelay, "cool its sensor in ice water by day",
            Written.Sentence(
                $"shuts and drains at {SolarSettingWords.ValvesShutC:0} °C, lets in again above {SolarSettingWords.ValvesOpenC:0} °C"),
            PaperWords.Celsius),
        .. ground.Try(P.ValveLight, "cover it with a cap at noon", "both valves go over and the loop runs empty, however warm it is"),
        .. ground.Try(P.ValveChangeover, "watch it while the light sensor is covered and uncovered", "goes over each time"),
        .. ground.Try(P.ValveSwitch, "turn it through its three places", "opens, shuts, and leaves the valves to their control"),
        .. ground.Try(P.ValveContactor, "switch the valves on and off at the control box", "pulls in and drops out", "", isLicensed: true),
        .. ground.Try(P.DrainPoint, "let the whole loop out at once", "it swallows all, and the trap holds water"),
        .. ground.Try(P.MakeUp, "draw a bucket from the tank", "fills up to its mark and stops, with a gap of air over the water"),
    ];

    private static IEnumerable<CommissioningStep> Turned(SolarLoop solar, PaperGround ground) =>
    [
        .. ground.Try(
            P.Stops, "turn the frame by hand from stop to stop",
            Written.Sentence($"rests just beyond {solar.Dials.LimitDeg:0}° to either side; no hose is pulled"), "°"),
        .. ground.Try(
            P.LimitSwitch, "run the frame to each end; half-way, push each switch with a stick, hands clear of the frame",
            Written.Sentence($"{Stops}, at {solar.Dials.LimitDeg:0}°, and comes back from there by itself")),
        .. ground.Try(
            P.Interlock, "ask for one way by the hand switch and the other by the light sensor", "only one of its coils is ever in"),
        .. ground.Try(P.HandSwitch, "turn it through its places", "one way, off, the other way, and left to its control"),
        .. ground.Try(P.LightSensor, "cover it with a cap", "the frame goes home to its morning side"),
        .. ground.Try(
            P.DelayRelay, "set it to a minute and uncover the light sensor",
            Written.Sentence($"the frame swings over after that minute; set back to {solar.Dials.SwitchHours:0.#} h"), "h"),
        .. ground.Try(P.Timer, "set it a minute ahead", "the frame swings over at that minute; clock and time of the month set back"),
        .. ground.Try(P.SunClock, "compare the frame with the shadow of a plumb line at noon by the sun", "square to it, within a hand"),
        .. ground.Try(P.HandBolt, "put it in at each place of rest, and lean on the frame", "home without a hammer, and nothing moves"),
        .. ground.Try(P.SpringBolt, "switch the current off while the frame stands", "falls home by itself, and nothing moves"),
    ];

    private static IEnumerable<CommissioningStep> Released(SolarLoop solar, PaperGround ground)
    {
        var (set, half) = (solar.Dials.ReleaseSetC, solar.Dials.ReleaseBandK / 2);
        return
        [
            .. ground.Try(
                P.Thermostat, PaperWords.Cooled(solar.ThermostatVolts),
                Written.Sentence($"while the tank is warm the release starts at {set - half:0.#} °C and stops at {set + half:0.#} °C"),
                PaperWords.Celsius),
            .. ground.Try(
                P.TankThermostat, "put its sensor into cold water while the house calls for heat",
                Written.Sentence($"the release stops below {set + solar.Dials.ReleaseStopK:0.#} °C"), PaperWords.Celsius),
            .. Gathering.Steps(solar, ground),
        ];
    }
}
