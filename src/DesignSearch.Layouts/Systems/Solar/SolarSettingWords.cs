using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What to dial in on a solar plant, in words.</summary>
internal static class SolarSettingWords
{
    /// <summary>Water in the warm pipe when its loss is felt for [°C].</summary>
    public const double HotC = 40;

    private const double SecondsPerMinute = 60;
    private const double DegPerFacing = 45;

    // The vessel takes a little water at once: its reserve (own choice).
    public const double FillOverBar = 0.1;

    // A collector may lose 4 K more to a clear sky than its sensor tells (see the freezing check); shutting earlier is an own choice.
    public const double ValvesOpenC = 9;
    public const double ValvesShutC = 6;

    private const string Full = "The loop is filled with antifreeze and stays full.";
    private const string LetOut = "Every evening the loop's water leaves through the drain point, and the make-up refills the tank.";
    private const string InVessel = "The loop's water stands in its own vessel while the pump rests: fill to the mark on the sight glass.";
    private const string InTank = "The loop's water stands in the tank while the pump rests: leave that much room in it.";

    private static readonly string[] Facings = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];

    public static Setting DriveOrder { get; } = new(
        "Order of the drives",
        "one after the other, ten seconds apart",
        "Each draws its starting current alone; the supply is laid out for that.");

    public static Setting ValveRelay { get; } = Of(
        "Temperature relay of the drain valves",
        $"lets water in above {ValvesOpenC:0} °C at the collector's inlet, shuts again at {ValvesShutC:0} °C",
        "Water goes up only while nothing up there can freeze it, with a clear sky's cold in hand.");

    public static Setting ValveLight { get; } = new(
        "Light sensor of the drain valves",
        "goes over at dusk, before the collector is as cold as the air",
        "At night the changeover relay takes the valves from the temperature relay: they shut the loop off and drain it.");

    public static Setting MakeUp { get; } = new(
        "Make-up of the tank",
        "float a hand's breadth under the overflow",
        "What the valves let out in the evening is made up by itself; look at the float every month.");

    public static Setting SunClock { get; } = new(
        "Sun clock of the frame",
        "the place's latitude and longitude, the date, and standard time all year",
        "It reckons where the sun stands; summer time would send the frame an hour astray.");

    public static Setting FrameLight { get; } = new(
        "Light sensor of the frame",
        "goes over at dusk, slow enough that a cloud does not turn the frame",
        "It brings the frame back to its morning side for the next day.");

    public static Setting RunsEmpty(bool byValves) => new(
        "Before the first frost",
        "watch the collector run empty",
        byValves
            ? "Cover the light sensor and see that all water comes out at the drain point; a sag in the pipe bursts it."
            : "Stop the pump and see that all water comes back; a sag in the pipe bursts it.");

    public static Setting LockOut(LoopHeat heat) => Of(
        "No start above",
        $"collector {heat.LockOutC:0} °C",
        heat.IsLockedOut
            ? Written.Sentence(
                $"Standing in the sun it reaches {heat.StandsC:0} °C: water let in then is steam. The controller waits till it cools.")
            : "A sensor with a torn cable reads hotter than any sun makes it: then the pump must not run all night.");

    public static Setting Vessel(string what, ClosedWater closed) => Of(
        what == "loop" ? "Pressure of the loop" : "Pressure of the tank",
        $"vessel {closed.ColdBar:0.0#} bar before filling, then filled cold to {closed.ColdBar + FillOverBar:0.0#} bar",
        Written.Sentence(
            $"Warm it rises to {closed.FinalBar:0.0#} bar; relief opens at {closed.Relief?.OpensAtBar ?? 0:0.#}. Read it monthly."));

    public static Setting DrainVessel(double aboveM) => Of(
        "Drain-back vessel",
        $"its bottom {aboveM:0.0} m above the tank's water",
        "High, so that the pump lifts little; low enough that everything above falls to it.");

    public static Setting Summer { get; } = new(
        "In summer",
        "cover the collectors or drain them and leave the vent open",
        "A dry collector in summer sun is the hottest thing on the place.");

    public static Setting Tilt(double deg) => Of("Tilt of the collector", $"{deg:0}° from flat", "Steep, for the low winter sun.");

    public static Setting Direction(double deg) => Of(
        "Direction of the collector",
        $"{deg:0}° from true north, faces {Facings[(int)Math.Round(deg / DegPerFacing) % Facings.Length]}",
        "True north, not the compass: correct the needle by the local declination.");

    public static Setting LimitSwitches(double deg) => Of(
        "Limit switches",
        $"{deg:0}° to either side of the middle",
        "The switches end the turn; the stops behind them take the wind.");

    public static Setting Footing(Stand stand, bool isPost) => Of(
        "Footing of a frame",
        isPost
            ? (FormattableString)$"{stand.DepthM:0.0#} m deep, {stand.BaseM:0.0#} m square, {stand.ConcreteM3:0.0#} m³ of concrete"
            : $"{stand.DepthM:0.0#} m deep, {stand.BaseM:0.0#} m over its feet, {stand.ConcreteM3:0.0#} m³ of concrete in all",
        "Its weight alone keeps the storm from tipping the frame about the foot of the concrete.");

    public static Setting Stops(double deg) => Of(
        "Stops of the frame",
        $"just beyond {deg:0}° to either side of the middle",
        "They take the wind where the frame comes to rest.");

    public static Setting Gale(double aboveMPerS, bool isDriven, bool fallsHome) => Of(
        "Before a gale",
        $"above gusts of {aboveMPerS:0} m/s leave the frame at a stop with its bolt home",
        fallsHome
            ? "The spring drives it home when the current stops: see that it is, and switch the drive off."
            : isDriven
                ? "Nothing on the list feels the wind: hear the forecast, switch the drive off, and put the bolt in by hand."
                : "Nothing on the list feels the wind: hear the forecast, and put the bolt in by hand.");

    public static Setting Delay(double hours) => Of(
        "Delay relay of the frame",
        $"{hours:0.#} h after dawn",
        "Started by the light sensor; swings to the afternoon side, and the sensor brings it home at dusk.");

    public static Setting Timer(IReadOnlyList<(int Month, int Minutes)> times) => new(
        "Timer of the frame",
        Clock(times),
        "The timer goes by the clock, and dawn moves: set it anew each month. The light sensor brings the frame home at dusk.");

    public static Setting ByHand(IReadOnlyList<(int Month, int Minutes)> times) => new(
        "Turning the frame by hand",
        Clock(times),
        "To the afternoon side at that time, back to the morning side at dusk, with the bolt in its hole each time.");

    public static Setting PumpStarts(double differenceK) => Of(
        "Pump starts",
        $"collector {differenceK:0.#} K above the tank's bottom",
        "Enough to be worth the pump's current and the cold pipe.");

    public static Setting PumpStops(double differenceK) => Of(
        "Pump stops",
        $"collector {differenceK:0.#} K above the tank's bottom",
        "Well below the start, so that it does not chatter; shortest run three to five minutes.");

    public static Setting Flow(double kgPerS) => Of(
        "Flow",
        $"{kgPerS * SecondsPerMinute:0.0} L/min through all collectors",
        "Set with the regulating valve behind the pump and read on the flow indicator while the pump runs; mark it.");

    public static Setting WarmPipe(double lostK) => Of(
        "Check of the warm pipe",
        $"loses about {lostK:0.0} K from collector to tank at {HotC:0} °C on a day of 0 °C",
        "Feel or measure both ends on a sunny day; much more means wet or missing insulation.");

    public static Setting Fill(SolarLoop solar)
    {
        var (loopL, tankL, tanks) = (solar.LoopLitres, solar.TankCount * solar.Tank.VolumeL, Written.Noun(solar.TankCount, "tank"));
        var reason = solar.StaysFull ? Full
            : solar.IsDrainedByValves ? LetOut
            : solar.Protection.ExchangerEffectiveness < 1 ? InVessel : InTank;
        return Of("Fill of the loop", $"{loopL:0} L in collectors and pipes, {tankL:0} L in the {tanks}", reason);
    }

    public static Setting Ceiling(double ceilingC) => Of(
        "Tank's ceiling",
        $"{ceilingC:0} °C",
        "Above it, at the sensor on the tank's top, the pump stops: tank, pipe and heat release bear no more.");

    public static Setting CutOut(double cutOutC) => Of(
        "Cut-out in the tank's top",
        $"{cutOutC:0} °C",
        "If the sensor there is dead, the pump would run on: this one stops it by itself. Find out why before you reset it.");

    public static Setting Thermostat(double setC, double limitC) => Of(
        "Thermostat of the heat release",
        $"{setC:0.#} °C",
        Written.Sentence(
            $"Above the limit of {limitC:0.#} °C and above the stand-by heater, so that the sun's heat goes first."));

    public static Setting Band(double bandK) => Of(
        "Band of that thermostat",
        $"{bandK:0.#} K",
        "Wide enough that pump and fan do not start every few minutes.");

    public static Setting ReleaseStops(double stopC, double restartK) => Of(
        "Tank's top at which the release stops",
        $"{stopC:0.#} °C",
        Written.Sentence(
            $"Starts again {restartK:0.#} K above it.",
            $"Set lower, it spends colder water while that is still warmer than the air."));

    public static Setting Steps(int steps) => Of(
        "Steps of the frame",
        $"{steps:0} through the day",
        "More steps gain little and wear the drive.");

    public static Setting Antifreeze(double glycolPercent, double protectsToC) => Of(
        "Antifreeze",
        $"{glycolPercent:0} % propylene glycol by mass, good to {protectsToC:0.#} °C, tested every autumn",
        "It ages; weak antifreeze freezes.");

    private static string Clock(IReadOnlyList<(int Month, int Minutes)> times) =>
        Written.Joined([.. times.Select(t => Written.Month(t.Month) + " " + Written.OClock(t.Minutes))]) + ", standard time";

    private static Setting Of(string what, FormattableString value, string reason) => new(what, Written.Sentence(value), reason);
}
