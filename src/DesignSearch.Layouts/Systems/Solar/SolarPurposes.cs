using DesignSearch.Layouts.Design;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What the parts of a solar plant are for, and where they go.</summary>
internal static class SolarPurposes
{
    private const string CollectorSystem = "collector";
    private const string MountSystem = "mount";
    private const string DriveSystem = "drive";
    private const string PipeSystem = "pipe run";
    private const string TankSystem = "tank";
    private const string FrostSystem = "freeze protection";
    private const string PumpSystem = "pump and control";
    private const string ReleaseSystem = "heat release";

    private const string Opens = "Opens before pressure becomes dangerous.";
    private const string TakesUp = "Takes up the growth of what is warmed.";

    private const string FillsAndKeepsApart =
        "Fills what is closed and keeps it apart from drinking water (EN 1717: 3 or 4 by the antifreeze; the local rule decides).";

    public static Purpose Collector { get; } =
        new(CollectorSystem, "Turns sun into warm water.", "on its stand, free of shade at noon in midwinter");

    public static Purpose CollectorFittings { get; } = new(CollectorSystem, "Joins collector and pipe in metal.", "at the collectors");

    public static Purpose FixedMount { get; } =
        new(MountSystem, "Holds the collectors at their tilt against wind and snow.", "on its screws or footings");

    public static Purpose WallMount { get; } =
        new(MountSystem, "Holds the collectors at their tilt against wind and snow.", "on the wall");

    public static Purpose BallastMount { get; } =
        new(MountSystem, "Holds the collectors at their tilt against wind and snow.", "on its trays, on level ground");

    public static Purpose TurningMount { get; } = new(MountSystem, "Turns the collectors after the sun.", "on its screws or footing");

    public static Purpose Anchor { get; } = new(MountSystem, "Holds the frame down in a storm.", "under the frame's feet");

    public static Purpose Footing { get; } =
        new(MountSystem, "Its weight keeps the wind from tipping the frame.", "in the ground under post or feet, below the frost");

    public static Purpose Ballast { get; } =
        new(MountSystem, "Its weight keeps the wind from tipping, lifting and pushing the frame.", "on the trays, tied to them");

    public static Purpose WallBolt { get; } =
        new(MountSystem, "Holds the brackets to the wall in a storm.", "through the brackets' plates");

    public static Purpose Stops { get; } = new(MountSystem, "Take the storm where the frame comes to rest.", "at both ends of its turn");

    public static Purpose HandBolt { get; } =
        new(MountSystem, "Put in by hand before a gale: then the storm cannot turn the frame.", "through frame and stand");

    public static Purpose SpringBolt { get; } =
        new(MountSystem, "Falls home when the motor rests, and holds the frame there.", "at the frame, wired beside the motor");

    public static Purpose Drive { get; } = new(DriveSystem, "Turns the frame.", "at the frame's axis, under a rain hood");

    public static Purpose Timer { get; } =
        new(DriveSystem, "Swings the frame over by the clock, set month by month.", "in the control box");

    public static Purpose DelayRelay { get; } =
        new(DriveSystem, "Started by the light sensor at dawn, swings the frame over some hours later.", "in the control box");

    public static Purpose SunClock { get; } = new(DriveSystem, "Sends the frame after the sun.", "in the control box");

    public static Purpose LightSensor { get; } = new(DriveSystem, "Tells dawn from dusk and brings the frame home.", "facing the open sky");

    public static Purpose LimitSwitch { get; } = new(DriveSystem, "Cuts the motor at either end of the turn.", "one at each stop");

    public static Purpose Interlock { get; } = new(DriveSystem, "Keeps both directions from ever being on together.", "in the control box");

    public static Purpose HandSwitch { get; } =
        new(DriveSystem, "Turns the frame by hand, stops it, or leaves it to its control.", "in the control box");

    public static Purpose ValveSwitch { get; } =
        new(FrostSystem, "Opens the valves by hand, shuts them, or leaves them to their control.", "in the control box");

    public static Purpose Diode { get; } = new(
        DriveSystem,
        "Lets the motor come back past the end switch that stopped it; the two of a frame point opposite ways.",
        "across each end switch");

    public static Purpose ShaftSeal { get; } = new(DriveSystem, "Keeps rain and grit out of the bearing.", "on the shaft");

    public static Purpose HoseLoop { get; } =
        new(MountSystem, "Lets the pipes follow the frame.", "between pipe and collector, with a slack loop");

    public static Purpose FirstMetres { get; } = new(
        PipeSystem,
        "Bears the heat of a collector that stands dry in the sun, as plastic would not; 5 % for cuts included.",
        "the first metres from the collector, both ways");

    public static Purpose LongPipe { get; } = new(
        PipeSystem,
        "Brings the warmth to the tank and the cool water back; 5 % for cuts included.",
        "from the collector to the tank, out and back");

    public static Purpose FirstInsulation { get; } = new(
        PipeSystem,
        "Bears the heat of a collector that stands dry; 5 % for cuts included.",
        "on the first metres from the collector, both ways");

    public static Purpose Insulation { get; } = new(
        PipeSystem,
        "Keeps the warmth in the pipe; 5 % for cuts included.",
        "over the pipe run, jacketed where sun or beaks reach it");

    public static Purpose PipeClip { get; } = new(PipeSystem, "Holds the pipe and lets it grow when it warms.", "one a metre");

    public static Purpose FirstClips { get; } = new(
        PipeSystem,
        "Holds the pipe where a dry collector heats it, and lets it grow.",
        "one a metre on the first metres from the collector");

    public static Purpose Tank { get; } = new(
        TankSystem,
        "Keeps the day's heat for the night; what it loses warms the house.",
        "inside the greenhouse, on firm ground");

    public static Purpose Jacket { get; } =
        new(TankSystem, "Keeps the tank's heat for the cold nights; 5 % for cuts included.", "all round the tank, under it too");

    public static Purpose Strap { get; } = new(TankSystem, "Holds the tank against tipping.", "round the tank, to the frame");

    public static Purpose WarningLabel { get; } =
        new(TankSystem, "Says what is hot, what may not be drunk and what may not be shut.", "on tank, taps and boxes");

    public static Purpose Lid { get; } = new(TankSystem, "Children and animals drown in open water.", "on the tank");

    public static Purpose FreeOutlet { get; } = new(
        TankSystem,
        "Fills the tank over a gap of air: nothing can be drawn back into drinking water (EN 1717, category 5; the local rule decides).",
        "above the tank's rim");

    public static Purpose MakeUp { get; } = new(
        TankSystem,
        "Makes up what the evening let out, over a gap of air (EN 1717, category 5; the local rule and the waterworks decide).",
        "in the tank, above its highest water");

    public static Purpose TankFittings { get; } =
        new(TankSystem, "Joins the tanks side by side, top to top and bottom to bottom.", "between the tanks");

    public static Purpose Protection { get; } =
        new(FrostSystem, "Keeps the collector from freezing and bursting.", "between collector and tank");

    public static Purpose AirVent { get; } =
        new(FrostSystem, "Lets air in, so that the pipes run empty, and steam out.", "at the highest place");

    public static Purpose Antifreeze { get; } =
        new(FrostSystem, "Fills the closed loop, a tenth more for spills and topping up.", "in collector and pipes");

    public static Purpose CheckValve { get; } = new(FrostSystem, "Stops the tank from warming the collector at night.", "on the warm pipe");

    public static Purpose LoopRelief { get; } =
        new(FrostSystem, Opens, "at the loop, nothing to shut before it; the outlet led down to a safe place");

    public static Purpose TankRelief { get; } =
        new(TankSystem, Opens, "at each closed tank, nothing to shut before it; the outlet led down to a safe place");

    public static Purpose LoopVessel { get; } = new(FrostSystem, TakesUp, "on the cool side of the loop, nothing to shut before it");

    public static Purpose TankVessel { get; } = new(TankSystem, TakesUp, "on the cool side of each closed tank, nothing to shut before it");

    public static Purpose LoopFill { get; } = new(FrostSystem, FillsAndKeepsApart, "at the loop's fill point");

    public static Purpose TankFill { get; } = new(TankSystem, FillsAndKeepsApart, "at the tank's fill point");

    public static Purpose ExchangerRelay { get; } =
        new(FrostSystem, "Lets the controller switch the exchanger's pump, which has another voltage.", "in the control box");

    public static Purpose ValveRelay { get; } =
        new(FrostSystem, "By day lets water into the collector only while it is warm enough there.", "in the control box");

    public static Purpose ValveSensor { get; } =
        new(FrostSystem, "Tells the valves' temperature relay how warm the collector is.", "on the metal at the collector's inlet");

    public static Purpose ValveLight { get; } = new(FrostSystem, "Shuts and drains the valves at dusk.", "facing the open sky");

    public static Purpose ValveChangeover { get; } =
        new(FrostSystem, "Gives the valves to the temperature relay by day and to the light sensor by night.", "in the control box");

    public static Purpose ValveContactor { get; } =
        new(FrostSystem, "Switches the mains valves from the low-voltage side; licensed work.", "in the mains box");

    public static Purpose DrainPoint { get; } =
        new(FrostSystem, "Takes the water that the valves let out every evening.", "indoors, at the lowest place of both pipes");

    public static Purpose Pump { get; } =
        new(PumpSystem, "Moves the water between collector and tank.", "at the lowest place beside the tank");

    public static Purpose SunWrap { get; } = new(
        PipeSystem, "Keeps sun and rain off what neither stands for long.", "round pipe or sleeve wherever daylight reaches it");

    public static Purpose TankCutOut { get; } = new(
        PumpSystem,
        "Stops the pump by itself when the tank grows too hot, even if its sensor is dead; reset by hand.",
        "in the tank's top, in the pump's own circuit");

    public static Purpose Controller { get; } =
        new(PumpSystem, "Runs the pump only while the collector is warmer than the tank.", "in the control box");

    public static Purpose CollectorSensor { get; } =
        new(PumpSystem, "Tells how hot the collector is.", "on the metal at the collector's outlet");

    public static Purpose TankSensors { get; } =
        new(PumpSystem, "Tell the tank's bottom, and its top, which has a ceiling.", "one at the tank's bottom, one at its top");

    public static Purpose Strainer { get; } =
        new(PumpSystem, "Keeps grit out of the pump.", "before the pump, coarse and easily opened");

    public static Purpose Throttle { get; } =
        new(PumpSystem, "Sets the flow; never shut, as the water runs back through it.", "behind the pump, on the cool pipe");

    public static Purpose FlowIndicator { get; } = new(PumpSystem, "Shows the flow that is set.", "beside the regulating valve, upright");

    public static Purpose BallValve { get; } =
        new(PumpSystem, "To fill and to drain.", "beside the tank; never between collector and relief");

    public static Purpose ReleasePipe { get; } =
        new(ReleaseSystem, "Joins tank and heat release; 5 % for cuts included.", "inside the greenhouse, out and back");

    public static Purpose Release { get; } = new(ReleaseSystem, "Gives the tank's heat to the air.", "low down, where the cold air lies");

    public static Purpose ReleasePump { get; } = new(ReleaseSystem, "Moves the tank's water through the heat release.", "beside the tank");

    public static Purpose ReleaseStrainer { get; } =
        new(ReleaseSystem, "Keeps grit out of the pump.", "before the pump of the release");

    public static Purpose Thermostat { get; } =
        new(ReleaseSystem, "Starts the heat release when the air falls to its setting.", "at plant height, out of the sun");

    public static Purpose TankThermostat { get; } = new(
        ReleaseSystem,
        "Lets the heat release run only while the tank's top has heat to give; in line with the house's thermostat.",
        "in the control box; one on mains beside it, in a case of its own");

    public static Purpose TankThermostatSensor { get; } =
        new(ReleaseSystem, "Tells that thermostat the tank's top.", "at the tank's top, beside the controller's own");

    public static Purpose Relay { get; } = new(
        ReleaseSystem,
        "Lets one thermostat switch a fan and a pump of different voltage and keeps the two apart.",
        "in the control box");

    public static Purpose FluidTest { get; } =
        new(PipeSystem, "Shows whether the antifreeze still holds; a new set every year.", "with the tools");

    public static Purpose Grease { get; } = new(MountSystem, "For bearing and screw, every autumn.", "with the tools");

    public static Purpose Anode { get; } =
        new(TankSystem, "Rusts in the tank's place.", "in the tank; the one it came with is used up first");
}
